import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';

/**
 * Stands for what bundles keep between plans and share in a page, which core and tables make and shape: only those that
 * were built from the same may.
 * @param {string} root folder of the project, with a separator at its end
 */
export const keepsVersion = (root) =>
  hashOf(root, [...filesIn(root, 'src/core', '.ts'), ...filesIn(root, 'src/tables', '.ts'), 'package-lock.json']);

/** Stands for what shapes files on their way into bundles: what was kept of them under another is of no use. */
export const buildVersion = (root) =>
  hashOf(root, ['webpack.config.js', ...filesIn(root, '.ci', '.js'), 'package-lock.json']);

/** Files of a folder and those below it, by where they stand in the project. */
function filesIn(root, folder, end) {
  return readdirSync(root + folder, { recursive: true })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((name) => name.endsWith(end))
    .sort();
}

function hashOf(root, files) {
  const hash = createHash('sha256');
  for (const file of files) hash.update(file).update(readFileSync(root + file));
  return hash.digest('hex').slice(0, 16);
}
