import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { get } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Certificates, howToTrust, untrusted } from '../../src/cli/certificates';
import { localAddress } from '../../src/cli/local-address';
import { listen, secureSite } from '../../src/cli/site';

describe('serving to the office suite', () => {
  let folder: string;
  let made: Certificates;
  let port = 0;
  const servers: ReturnType<typeof secureSite>[] = [];

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'solebench-certificates-'));
    made = await untrusted(folder);
    port = await listen(() => {
      const server = secureSite('dist', made);
      servers.push(server);
      return server;
    }, 0);
  }, 60_000);
  afterAll(() => {
    for (const server of servers) {
      server.closeAllConnections();
      server.close();
    }
    rmSync(folder, { recursive: true, force: true });
  });

  const headersOf = (name: string, host = 'localhost') =>
    new Promise<Readonly<Record<string, string>> & { readonly status: string }>((resolve, reject) => {
      // Only its own authority is trusted: a certificate that does not fit ends in an error.
      get({ host, port, path: `/${name}`, ca: readFileSync(made.authority), agent: false }, (response) => {
        response.resume();
        resolve({ ...(response.headers as Record<string, string>), status: String(response.statusCode) });
      }).on('error', reject);
    });

  it('is by HTTPS with a certificate for this machine by name and by number', async () => {
    expect((await headersOf('taskpane.html')).status).toBe('200');
    expect((await headersOf('taskpane.html', '127.0.0.1')).status).toBe('200');
    const days = (Date.parse(new X509Certificate(made.cert).validTo) - Date.now()) / 86_400_000;
    expect(days).toBeGreaterThan(300);
  });

  it.each([
    'taskpane.html',
    'help/index.html',
    'help/layers.html',
    'index.html',
    'functions.js',
    'functions.json',
    'icon-32.png',
  ])('sends %s without leave for inline scripts or eval, and lets itself be framed', async (name) => {
    const headers = await headersOf(name);
    expect(headers.status).toBe('200');
    const policy = headers['content-security-policy'] ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|frame-ancestors| \*/);
    expect(headers['x-frame-options']).toBeUndefined();
    expect(headers['x-content-type-options']).toBe('nosniff');
  });

  it('lets the pane’s page load the suite’s script, and no other page', async () => {
    const scripts = async (name: string) =>
      /script-src ([^;]*)/.exec((await headersOf(name))['content-security-policy'] ?? '')?.[1];
    expect(await scripts('taskpane.html')).toBe("'self' https://appsforoffice.microsoft.com");
    expect(await scripts('index.html')).toBe("'self'");
    expect(await scripts('help/office.html')).toBe("'self'");
  });

  it('lets the suite read the list of functions from its own pages', async () => {
    for (const name of ['functions.json', 'functions-0.0.1.0.json']) {
      expect((await headersOf(name))['access-control-allow-origin']).toBe('*');
    }
    expect((await headersOf('index.html'))['access-control-allow-origin']).toBeUndefined();
  });

  // "The server hosting an image resource must not add any CACHE-CONTROL directives": the suite's maker on Image.
  it('says nothing of keeping icons, and that all else is to be asked for anew', async () => {
    expect((await headersOf('icon-16.png'))['cache-control']).toBeUndefined();
    expect((await headersOf('functions.js'))['cache-control']).toBe('no-cache');
  });

  it('keeps certificates that are good, and makes them anew when they are not', async () => {
    const before = statSync(made.authority).mtimeMs;
    expect((await untrusted(folder)).cert.equals(made.cert)).toBe(true);
    expect(statSync(made.authority).mtimeMs).toBe(before);
    writeFileSync(join(folder, 'localhost.crt'), 'not a certificate');
    const anew = await untrusted(folder, 'The system said no.');
    expect(new X509Certificate(anew.cert).checkHost('localhost')).toBe('localhost');
    expect(anew.reason).toBe('The system said no.');
  }, 60_000);

  it('is where the built manifest says, and nowhere but on this machine', () => {
    const manifest = (page: string) => `<SourceLocation DefaultValue="${page}" />`;
    expect(localAddress(readFileSync('manifest.xml', 'utf8')).href).toBe('https://localhost:3443/');
    expect(localAddress(manifest('https://localhost:4000/taskpane.html')).port).toBe('4000');
    for (const page of ['https://example.org/bottoms/taskpane.html', 'https://localhost:3443/sub/taskpane.html']) {
      expect(() => localAddress(manifest(page))).toThrow(/were built for .* Build them without SOLEBENCH_ADDRESS/);
    }
    expect(() => localAddress('<OfficeApp />')).toThrow('names no page');
  });

  it('says how to trust the certificate on each system', () => {
    const words = howToTrust('/kept/ca.crt', 'https://localhost:3443/');
    for (const part of [
      'https://localhost:3443/taskpane.html',
      'Windows: certutil',
      'Mac: security',
      '"/kept/ca.crt"',
    ]) {
      expect(words).toContain(part);
    }
  });
});
