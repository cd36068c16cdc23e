import { type Page, plain } from './frame';
import { type Description, type DescribedFunction, pageOf, signature } from './metadata';

/** The first page: every function with what it answers, found by any word of its description. */
export function list({ functions }: Description): Page {
  const sorted = [...functions].sort((a, b) => a.name.localeCompare(b.name));
  const body = `<p>All functions stand under <code>SOLEBENCH.</code> and take numbers, cells or whole tables with their headings. Each has a page with a worked example.</p>
<label class="find">Find a function
<input type="search" id="find" autocomplete="off" spellcheck="false"></label>
<p id="found" role="status">${sorted.length} functions</p>
<dl id="functions">
${sorted.map(entry).join('\n')}
</dl>`;
  return { file: 'index.html', title: 'Functions', body, script: 'find.js' };
}

function entry(one: DescribedFunction): string {
  const words = [one.name, one.description, ...one.parameters.flatMap(({ name, description }) => [name, description])];
  const text = words.join(' ').toLowerCase().replace(/\s+/g, ' ');
  return `<div data-words="${plain(text)}"><dt><a href="${pageOf(one.name)}"><b>${one.name}</b>${plain(signature(one).slice(one.name.length))}</a></dt>
<dd>${plain(one.description)}</dd></div>`;
}
