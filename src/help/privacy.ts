import type { Page } from './frame';

const BODY = `<p>Solebench works everything out on your own machine: in the browser, or in Excel on your machine. It has no account, no server
that calculates, no cookies and no counting of visits.</p>
<h2>What goes out</h2>
<ul>
<li>Your tables, figures, drawings and documents are sent nowhere.</li>
<li>The address that serves Solebench sees, as any address on the network does, that a browser fetches its files. It is told nothing of
what is done with them.</li>
<li>Inside Excel, Excel’s own script comes from its maker’s address, and Excel itself may tell its maker that an add-in runs: its maker’s own
statement on privacy holds for that.</li>
</ul>
<h2>What is kept</h2>
<ul>
<li>The page keeps your workbooks, and how you like to see them, in this browser’s own storage until you clear it.</li>
<li>Inside Excel, your tables are in your workbook. In its settings Solebench notes which sheets and tables it has made.</li>
<li>Files that you save are where you save them.</li>
</ul>
<h2>Help and links</h2>
<p>The pages of the help come from the same address. They lead out only where a link names another.</p>`;

/** What becomes of the maker's data. Lists of add-ins ask for such a page. */
export function privacy(): Page {
  return { file: 'privacy.html', title: 'Privacy', body: BODY };
}
