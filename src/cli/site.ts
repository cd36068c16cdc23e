import { createReadStream, type Stats } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type RequestListener, type ServerResponse } from 'node:http';
import { createServer as createSecureServer } from 'node:https';
import type { Server } from 'node:net';
import { basename, dirname, extname, join, normalize, sep } from 'node:path';
import { whatWentWrong } from '../core/what-went-wrong';
import { LIST_OF_FUNCTIONS, responseHeaders } from './response-headers';

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.xml': 'application/xml; charset=utf-8',
};

/**
 * A server of one folder of built files, for this machine alone: it answers GET and HEAD, sends the content security
 * policy, and lets the browser keep nothing without asking, so that a new build shows at once.
 */
export function site(folder: string) {
  return createServer(answering(folder));
}

/** The same by HTTPS, without which the office suite loads nothing. */
export function secureSite(folder: string, certificate: { readonly key: Buffer; readonly cert: Buffer }) {
  return createSecureServer(certificate, answering(folder));
}

function answering(folder: string): RequestListener {
  return (request, response) => {
    answer(folder, request, response).catch((error: unknown) => {
      if (response.headersSent) response.destroy();
      else refuse(response, 500, `The file could not be read: ${whatWentWrong(error)}`);
    });
  };
}

async function answer(folder: string, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405, 'Only reading is possible.');
  const asked = fileFor(folder, request.url ?? '/');
  const file = asked === undefined || (await fileAt(asked)) ? asked : todays(asked);
  const found = file === undefined ? undefined : await fileAt(file);
  if (file === undefined || !found) return refuse(response, 404, 'There is no such file.');
  const tag = `"${found.size.toString(36)}-${found.mtimeMs.toString(36)}"`;
  for (const [header, value] of Object.entries(responseHeaders(basename(file)))) response.setHeader(header, value);
  response.setHeader('ETag', tag);
  if (request.headers['if-none-match'] === tag) {
    response.writeHead(304).end();
    return;
  }
  response.writeHead(200, {
    'Content-Type': types[extname(file)] ?? 'application/octet-stream',
    'Content-Length': found.size,
  });
  if (request.method === 'HEAD') response.end();
  else
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response);
}

async function fileAt(path: string): Promise<Stats | undefined> {
  const found = await stat(path).catch(() => undefined);
  return found?.isFile() ? found : undefined;
}

/** What stands for a file that is no longer there: manifests of before name the list of functions by their version. */
function todays(file: string): string {
  return LIST_OF_FUNCTIONS.test(basename(file)) ? join(dirname(file), 'functions.json') : file;
}

/** The file that an address names, or undefined where the address is malformed or leads out of the folder. */
function fileFor(folder: string, url: string): string | undefined {
  try {
    const path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
    return file.startsWith(normalize(folder) + sep) && !file.includes('\0') ? file : undefined;
  } catch {
    return undefined;
  }
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(`${sentence}\n`);
}

/**
 * Listens on this machine only, at both of its own addresses, since "localhost" may mean either.
 * @param make makes a server for each address
 * @param port 0 lets the system choose one
 * @returns the port
 * @throws Error with the system's code, such as EADDRINUSE
 */
export async function listen(make: () => Server, port: number): Promise<number> {
  const first = await listenAt(make(), port, '127.0.0.1');
  // A machine without the newer addresses has no ::1.
  await listenAt(make(), first, '::1').catch((error: NodeJS.ErrnoException) => {
    if (error.code !== 'EADDRNOTAVAIL' && error.code !== 'EAFNOSUPPORT') throw error;
  });
  return first;
}

function listenAt(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      const address = server.address();
      resolve(typeof address === 'object' && address ? address.port : port);
    });
  });
}
