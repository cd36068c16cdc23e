import { X509Certificate } from 'node:crypto';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureCertificatesAreInstalled, generateCertificates } from 'office-addin-dev-certs';
import * as trusted from 'office-addin-dev-certs/lib/defaults';
import { whatWentWrong } from '../core/what-went-wrong';

/** What an HTTPS server on this machine needs. */
export interface Certificates {
  readonly key: Buffer;
  readonly cert: Buffer;
  /** File of the authority that signed the certificate: what a machine has to trust. */
  readonly authority: string;
  readonly trusted: boolean;
  /** Why the machine does not trust them, where it said so. */
  readonly reason?: string;
}

const HOSTS = ['localhost', '127.0.0.1'];
const DAYS = 365;
/** Anew when fewer days are left. */
const LEAST_DAYS = 2;

/**
 * Certificates for serving to the office suite. On Windows and the Mac the system is asked to trust them; where it does
 * not, and elsewhere, they are only made.
 * @param folder where those that are only made are kept
 */
export async function certificates(folder: string): Promise<Certificates> {
  if (process.platform !== 'win32' && process.platform !== 'darwin') return untrusted(folder);
  try {
    await ensureCertificatesAreInstalled();
    return {
      key: readFileSync(trusted.localhostKeyPath),
      cert: readFileSync(trusted.localhostCertificatePath),
      authority: trusted.caCertificatePath,
      trusted: true,
    };
  } catch (error) {
    return untrusted(folder, whatWentWrong(error));
  }
}

/** Certificates that the machine does not trust yet: made where there are none, or where theirs have run out. */
export async function untrusted(folder: string, reason?: string): Promise<Certificates> {
  const [authority, cert, key] = ['ca.crt', 'localhost.crt', 'localhost.key'].map((name) => join(folder, name)) as [
    string,
    string,
    string,
  ];
  if (![authority, cert, key].every((file) => existsSync(file)) || daysLeft(cert) < LEAST_DAYS) {
    for (const file of [authority, cert, key]) rmSync(file, { force: true });
    await generateCertificates(authority, cert, key, DAYS, HOSTS);
  }
  return {
    key: readFileSync(key),
    cert: readFileSync(cert),
    authority,
    trusted: false,
    ...(reason !== undefined && { reason }),
  };
}

function daysLeft(certificate: string): number {
  try {
    return (Date.parse(new X509Certificate(readFileSync(certificate)).validTo) - Date.now()) / 86_400_000;
  } catch {
    return 0;
  }
}

/** What to do on each system so that it trusts the certificates. */
export function howToTrust(authority: string, address: string): string {
  return [
    'This machine does not trust its certificate yet. Until it does, Excel shows nothing of Solebench.',
    `Excel on the web: open ${address}taskpane.html in the same browser and let it go on to the page.`,
    `Windows: certutil -user -addstore Root "${authority}"`,
    `Mac: security add-trusted-cert -r trustRoot -k ~/Library/Keychains/login.keychain-db "${authority}"`,
    `Chromium on Linux: certutil -d sql:$HOME/.pki/nssdb -A -t C,, -n Solebench -i "${authority}"`,
    'Trust it only while you use it: whoever has its key could pass for this machine.',
  ].join('\n');
}
