import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';

/** What makes and shapes all that bundles keep between plans. */
const FOLDERS = ['src/core', 'src/tables'];

/**
 * Stands for what bundles keep between plans and share in a page: only those that were built from the same may.
 * @param {string} root folder of the project, with a separator at its end
 */
export function keepsVersion(root) {
  const sources = FOLDERS.flatMap((folder) =>
    readdirSync(root + folder, { recursive: true })
      .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
      .filter((name) => name.endsWith('.ts')),
  );
  const hash = createHash('sha256');
  for (const file of [...sources.sort(), 'package-lock.json']) hash.update(file).update(readFileSync(root + file));
  return hash.digest('hex').slice(0, 16);
}
