import { columnsInWords } from '../tables/heading-in-words';
import { INPUT_TABLES } from '../tables/input-tables';
import { type Page, plain } from './frame';

/** The page of the tables: what stands in each of their columns. */
export function tablesPage(): Page {
  const columns = columnsInWords();
  const parts = Object.values(INPUT_TABLES).map(({ name, meaning }) => {
    const own = columns.filter(({ table }) => table === name);
    const rows = own.map(({ heading, say }) => `<dt><b>${plain(heading)}</b></dt>\n<dd>${plain(say)}</dd>`);
    return `<h2 id="${idOf(name)}">${plain(name)}</h2>\n<p>${plain(meaning)}.</p>\n<dl>\n${rows.join('\n')}\n</dl>`;
  });
  const list = Object.values(INPUT_TABLES).map(({ name }) => `<a href="#${idOf(name)}">${plain(name)}</a>`);
  const body = `<p>What you fill in, table by table. Columns are found by their headings, in any order; columns of your own may stand among them. ${list.join(', ')}.</p>\n${parts.join('\n')}`;
  return { file: 'tables.html', title: 'Tables and their columns', body };
}

function idOf(name: string): string {
  return name.toLowerCase().replaceAll(' ', '-');
}
