/** Text within HTML. */
export function plain(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] as string);
}

/** Pages that every page links to, with the words of the link. */
const SECTIONS = [
  ['tables.html', 'Tables'],
  ['index.html', 'Functions'],
  ['worked-by-hand.html', 'A style worked by hand'],
  ['runs.html', 'Runs and files'],
  ['office.html', 'In the office suite'],
] as const;

export interface Page {
  /** The file, such as layers.html. */
  readonly file: string;
  readonly title: string;
  /** HTML of all below the title. */
  readonly body: string;
  /** A script of the help's own folder. */
  readonly script?: string;
}

/** A whole page of the help. Nothing in it is inline: the policy that it is served under allows no such thing. */
export function framed({ file, title, body, script }: Page): string {
  const links = SECTIONS.map(
    ([to, words]) => `<a href="${to}"${to === file ? ' aria-current="page"' : ''}>${words}</a>`,
  ).join('\n');
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${plain(title)} – Solebench help</title>
<link rel="icon" href="../icon-32.png">
<link rel="stylesheet" href="../theme.css">
<link rel="stylesheet" href="help.css">
${script === undefined ? '' : `<script defer src="${script}"></script>\n`}</head>
<body>
<header>
<a class="name" href="index.html">Solebench help</a>
<nav aria-label="Help">
${links}
</nav>
</header>
<main>
<h1>${plain(title)}</h1>
${body}
</main>
<footer><a href="privacy.html">Nothing leaves this machine.</a> Makers, styles and prices in examples are invented. The numbers are planning aids, not a certificate of strength or safety.</footer>
</body>
</html>
`;
}
