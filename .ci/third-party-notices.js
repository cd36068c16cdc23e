import { existsSync, readdirSync, readFileSync } from 'node:fs';

/**
 * The licences of everything that the built files may contain, as one text: of each package that is installed for use
 * and not only for development, its name, version, licence and what it says of that licence itself.
 * @param {string} root folder of the project, with a separator at its end
 */
export function thirdPartyNotices(root) {
  const { packages } = JSON.parse(readFileSync(`${root}package-lock.json`, 'utf8'));
  const parts = Object.entries(packages)
    .filter(([folder, { dev, devOptional }]) => folder !== '' && !dev && !devOptional && existsSync(root + folder))
    .map(([folder, { version, license }]) => {
      const name = folder.replace(/^.*node_modules\//, '');
      const texts = readdirSync(root + folder)
        .filter((file) => /^(licen[cs]e|copying|notice)(\.|-|$)/i.test(file))
        .map((file) => readFileSync(`${root}${folder}/${file}`, 'utf8').trim());
      const own = license ?? JSON.parse(readFileSync(`${root}${folder}/package.json`, 'utf8')).license;
      return { head: `${name} ${version}, ${own ?? 'licence in its text'}`, text: [...new Set(texts)].join('\n\n') };
    })
    .sort((a, b) => (a.head < b.head ? -1 : 1));
  // Many packages share one text word for word.
  const byText = new Map();
  for (const { head, text } of parts) byText.set(text, [...(byText.get(text) ?? []), head]);
  const line = '-'.repeat(80);
  return [
    'Solebench is made with these packages. Each stands here with its licence.',
    ...[...byText].map(([text, heads]) =>
      [line, ...heads, '', text || 'The package brings no text of its licence.'].join('\n'),
    ),
    '',
  ].join('\n\n');
}
