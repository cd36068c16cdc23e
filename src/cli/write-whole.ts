import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import process from 'node:process';

/** Writes a file that is either the old one or the whole new one, whatever happens meanwhile. */
export function writeWhole(to: string, content: Uint8Array | string): void {
  const draft = join(dirname(resolve(to)), `.${basename(to)}.${process.pid}.tmp`);
  try {
    writeFileSync(draft, content);
    renameSync(draft, to);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  }
}
