import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import type { Server } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listen, site } from '../../src/cli/site';

describe('the server of the built files', () => {
  const folder = mkdtempSync(join(tmpdir(), 'site-'));
  const servers: Server[] = [];
  let port = 0;
  const at = (path: string, init?: RequestInit) => fetch(`http://127.0.0.1:${port}${path}`, init);

  beforeAll(async () => {
    writeFileSync(join(folder, 'index.html'), '<!doctype html>');
    writeFileSync(join(folder, 'page.js'), '1');
    writeFileSync(join(folder, 'functions.json'), '{}');
    port = await listen(() => {
      const server = site(folder);
      servers.push(server);
      return server;
    }, 0);
  });
  afterAll(() => {
    for (const server of servers) {
      server.closeAllConnections();
      server.close();
    }
    rmSync(folder, { recursive: true });
  });

  it('sends files with their type and a content security policy', async () => {
    const response = await at('/');
    expect([response.status, await response.text()]).toEqual([200, '<!doctype html>']);
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(response.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect((await at('/page.js?v=1')).headers.get('content-type')).toBe('text/javascript; charset=utf-8');
  });

  it('answers with 304 to a browser that has the file already', async () => {
    const tag = (await at('/page.js')).headers.get('etag') ?? '';
    expect((await at('/page.js', { headers: { 'If-None-Match': tag } })).status).toBe(304);
  });

  it('has today’s list of functions for manifests of before, which name another version of it', async () => {
    const response = await at('/functions-0.0.1.0.json');
    expect([response.status, await response.text()]).toEqual([200, '{}']);
    expect(response.headers.get('access-control-allow-origin')).toBe('*');
    expect((await at('/functions-old.json')).status).toBe(404);
  });

  it('hands out nothing from outside the folder', async () => {
    for (const path of [
      '/nothing.js',
      '/..%2f..%2fetc%2fpasswd',
      '/%2e%2e/%2e%2e/etc/passwd',
      '/%00',
      '/%',
      '//etc/passwd',
    ]) {
      expect((await at(path)).status).toBe(404);
    }
  });

  it('only reads', async () => {
    expect((await at('/', { method: 'POST' })).status).toBe(405);
    const head = await at('/', { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
  });

  it('says so when the port is taken', async () => {
    await expect(listen(() => site(folder), port)).rejects.toMatchObject({ code: 'EADDRINUSE' });
  });
});
