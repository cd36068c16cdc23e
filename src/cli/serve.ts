import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { whatWentWrong } from '../core/what-went-wrong';
import { listen, site } from './site';

/** `npm start`: serves the built files on this machine. PORT names the port; 3000 without it. */

const folder = fileURLToPath(new URL('../../dist', import.meta.url));
const given = process.env['PORT'] || '3000';
const port = /^\d+$/.test(given) ? Number(given) : NaN;

try {
  if (!(port <= 65535)) throw new Error(`PORT is "${given}", which is no port. Give a whole number from 0 to 65535.`);
  if (!existsSync(`${folder}/index.html`)) throw new Error('There is nothing to serve yet. Run "npm run build" first.');
  const at = await listen(() => site(folder), port);
  console.log(`Solebench is ready on http://localhost:${at}\nPress Ctrl+C to stop.`);
} catch (error) {
  console.error(inWords(error));
  process.exit(1);
}

function inWords(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  const other = `PORT=${port < 65535 && port > 1023 ? port + 1 : 3001} npm start`;
  if (code === 'EADDRINUSE')
    return `Port ${port} is taken by another program. End it, or choose another port: ${other}`;
  if (code === 'EACCES') return `Port ${port} is not for programs without more rights. Choose another port: ${other}`;
  return whatWentWrong(error);
}
