import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { certificates, howToTrust } from './certificates';
import { localAddress } from './local-address';
import { listen, secureSite } from './site';

/** `npm run serve:office`: serves the built files to Excel, by HTTPS and on this machine, where the manifest names it. */

const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));
const folder = path('../../dist');
const manifest = `${folder}/manifest.xml`;

try {
  if (!existsSync(manifest)) throw new Error('There is nothing to serve yet. Run "npm run build" first.');
  const address = localAddress(readFileSync(manifest, 'utf8'));
  const { authority, trusted, reason, ...tls } = await certificates(path('../../.cache/certificates'));
  await listen(() => secureSite(folder, tls), Number(address.port || 443));
  console.log(`\nSolebench is ready for Excel on ${address.href}\nManifest to load in Excel: ${manifest}`);
  if (!trusted) console.log(`\n${reason ? `${reason}\n` : ''}${howToTrust(authority, address.href)}`);
  console.log('\nPress Ctrl+C to stop.');
} catch (error) {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  console.error(
    code === 'EADDRINUSE'
      ? 'The port is taken by another program. End it, or choose another: SOLEBENCH_ADDRESS=https://localhost:3444/ npm run serve:office'
      : error instanceof Error
        ? error.message
        : String(error),
  );
  process.exit(1);
}
