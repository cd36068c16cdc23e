import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { InParts, PaperJob } from '../drawing/paper/chosen';
import { layoutFiles } from '../drawing/paper/cutting-pages';
import { type DocumentKind, DOCUMENTS } from '../drawing/paper/documents';
import { pieceFiles } from '../drawing/paper/piece-files';
import { besideSheets } from '../drawing/paper/beside-sheets';
import { shoppingList, shoppingText } from '../drawing/paper/shopping-list';
import { writeDxf } from '../exchange/dxf';
import { type PdfFonts, writePdf } from '../exchange/pdf';
import { FileNames } from '../exchange/plain-words';
import { shoppingCsv } from '../exchange/shopping-csv';
import { writeSvg } from '../exchange/svg';
import type { Cell } from '../tables/cell';
import { worksheet } from '../workings/paper/worksheet-pages';
import { DRAWINGS } from './document-kinds';
import { writeWhole } from './write-whole';

/** What documents are made of, and where they go. */
export interface Documents {
  readonly job: PaperJob;
  /** The input tables as the plan functions take them, for the worksheet. */
  readonly tables: readonly Cell[];
  readonly fonts: PdfFonts;
  readonly kinds: readonly string[];
  /** Folder; made where there is none. */
  readonly out: string;
}

/**
 * Writes what the bench needs on paper: one PDF a kind of document, pieces and layouts as SVG and DXF.
 * @param say told of each file that is written
 */
export async function writeDocuments(documents: Documents, say: (sentence: string) => void): Promise<void> {
  const { job, tables, fonts, kinds, out } = documents;
  mkdirSync(out, { recursive: true });
  const all: readonly DocumentKind[] = [...DOCUMENTS, worksheet(tables)];
  for (const kind of all.filter(({ id }) => kinds.includes(id))) {
    const pages = whole(kind.pages(job));
    if (pages.length === 0) continue;
    const { bytes, lacking } = await writePdf(pages, { title: `${kind.name}, ${job.run}` }, fonts);
    writeWhole(join(out, `${kind.id}.pdf`), bytes);
    say(`${kind.id}.pdf: ${pages.length} ${pages.length === 1 ? 'page' : 'pages'}`);
    if (lacking.length > 0) say(`  The font lacks ${lacking.join(' ')}; □ is in their place.`);
  }
  if (kinds.includes('shopping')) {
    const { money = '' } = job;
    const lists = shoppingList(job);
    writeWhole(join(out, 'shopping.csv'), shoppingCsv(lists, money, true, besideSheets(job)));
    writeWhole(join(out, 'shopping.txt'), `${shoppingText(lists, money, true, besideSheets(job))}\n`);
  }
  if (kinds.includes(DRAWINGS)) writeDrawings(job, join(out, DRAWINGS), say);
}

function writeDrawings(job: PaperJob, folder: string, say: (sentence: string) => void): void {
  mkdirSync(folder, { recursive: true });
  const files = [...whole(pieceFiles(job)), ...whole(layoutFiles(job))];
  const names = new FileNames();
  for (const { name, box, draw } of files) {
    const marks = draw();
    const file = join(folder, names.of(name));
    writeWhole(`${file}.svg`, writeSvg(marks, name, box));
    writeWhole(`${file}.dxf`, writeDxf(marks));
  }
  say(`drawings: ${files.length} in SVG and DXF`);
}

/** Does all parts of some work at once. */
function whole<T>(parts: InParts<T>): T {
  for (;;) {
    const { done, value } = parts.next();
    if (done) return value;
  }
}
