import { Marked } from 'marked';
import { responseHeaders } from '../cli/response-headers';
import { type Page, plain } from './frame';

/** Where the guide has the headers written. */
const HEADERS = '<!-- The build puts the response headers here. -->';

/** The guide to the office suite, from its Markdown. */
export function guide(markdown: string): Page {
  if (!markdown.includes(HEADERS)) throw new Error('The guide has no place for the response headers.');
  const { title, body } = inHtml(markdown);
  return written(
    'office.html',
    title,
    body.replace(HEADERS, () => headers()),
  );
}

/** A page from its Markdown. */
export function pageOfMarkdown(file: string, markdown: string): Page {
  const { title, body } = inHtml(markdown);
  return written(file, title, body);
}

/** Markdown with its title as the first line. Headings take ids of their words, so that they can be linked to. */
function inHtml(markdown: string): { readonly title: string; readonly body: string } {
  const [first = '', ...rest] = markdown.split('\n');
  const marked = new Marked({
    renderer: {
      heading({ tokens, depth, text }) {
        return `<h${depth} id="${slug(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
      },
      table(token) {
        const cells = (list: typeof token.header, tag: string) =>
          list.map(({ tokens }) => `<${tag}>${this.parser.parseInline(tokens)}</${tag.split(' ')[0]}>`).join('');
        const body = token.rows.map((row) => `<tr>${cells(row, 'td')}</tr>`).join('\n');
        return `<div class="wide" role="group" aria-label="Table" tabindex="0"><table><thead><tr>${cells(token.header, 'th scope="col"')}</tr></thead>\n<tbody>${body}</tbody></table></div>\n`;
      },
    },
  });
  return { title: first.replace(/^# /, ''), body: marked.parse(rest.join('\n'), { async: false }) };
}

/** A page with its chapters listed at its head. */
function written(file: string, title: string, body: string): Page {
  const chapters = [...body.matchAll(/<h2 id="([^"]+)">(.*?)<\/h2>/g)]
    .map(([, id, words]) => `<li><a href="#${id}">${words}</a></li>`)
    .join('\n');
  return { file, title, body: `<ul class="chapters">${chapters}</ul>\n${body}` };
}

function slug(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** Files that are sent with headers of their own, and last one for all others. */
const FILES = {
  'taskpane.html': 'taskpane.html',
  'functions.json': 'functions.json',
  'search.js': 'search.js',
  'icon-32.png': 'Pictures (.png)',
  'index.html': 'All other files',
} as const;

/** What a server is to send with each file: the same as our own server sends. */
function headers(): string {
  const sent = Object.entries(FILES).map(([file, title]) => ({
    title,
    headers: Object.entries(responseHeaders(file)),
  }));
  const usual = JSON.stringify(sent[sent.length - 1]?.headers);
  return sent
    .filter((one, at) => at === sent.length - 1 || JSON.stringify(one.headers) !== usual)
    .map(({ title, headers: list }) => {
      const lines = list.map(([name, value]) => `${name}: ${value}`);
      return `<h3>${plain(title)}</h3>\n<pre tabindex="0" role="group" aria-label="Headers of ${plain(title)}">${plain(lines.join('\n'))}</pre>`;
    })
    .join('\n');
}
