import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { whatWentWrong } from '../core/what-went-wrong';
import { type DocumentKind, DOCUMENTS } from '../drawing/paper/documents';
import type { InParts, PaperJob } from '../drawing/paper/chosen';
import { paperOf, PAPERS } from '../drawing/paper/page';
import { layoutFiles } from '../drawing/paper/cutting-pages';
import { pieceFiles } from '../drawing/paper/piece-files';
import { shoppingList, shoppingText } from '../drawing/paper/shopping-list';
import { writeDxf } from '../exchange/dxf';
import { writePdf } from '../exchange/pdf';
import { fileName } from '../exchange/plain-words';
import { shoppingCsv } from '../exchange/shopping-csv';
import { writeSvg } from '../exchange/svg';
import type { Cells } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';
import { type PlanCells, readPlan } from '../tables/plan-input';
import { planArguments, tableCells } from '../workbook/table-cells';
import { worksheet } from '../workings/paper/worksheet-pages';
import { packagedFonts } from './fonts';

/**
 * `npm run paper -- --demo --out DIR [--only templates,nest,…,drawings] [--paper A4|A3|Letter|WxH] [--styles …]
 * [--sizes …] [--stocks …] [--run NAME] [--date WORDS]`: writes what the bench needs on paper, one PDF a kind of document, and
 * the pieces as drawings in SVG and DXF.
 */

const ALL: readonly DocumentKind[] = [...DOCUMENTS, worksheet(planArguments())];
const KINDS = [...ALL.map(({ id }) => id), 'drawings'];

const USAGE = [
  'npm run paper -- --demo --out DIR [--only KINDS] [--paper A4|A3|Letter|WxH] [--styles CODES] [--sizes SIZES]',
  '                 [--stocks CODES] [--run NAME] [--date WORDS]',
  `KINDS are ${KINDS.join(', ')}; lists are separated by commas. W and H are in mm.`,
].join('\n');

type Options = Readonly<
  Partial<Record<'out' | 'only' | 'paper' | 'styles' | 'sizes' | 'stocks' | 'run' | 'date', string>>
>;
const NAMES: ReadonlySet<string> = new Set(['out', 'only', 'paper', 'styles', 'sizes', 'stocks', 'run', 'date']);

try {
  await main(process.argv.slice(2));
} catch (error) {
  console.error(whatWentWrong(error));
  process.exitCode = 1;
}

async function main(words: readonly string[]): Promise<void> {
  const { options, demo } = optionsOf(words);
  if (!demo || !options.out) throw new Error(`Give --demo and --out.\n${USAGE}`);
  const only = listOf(options.only) ?? KINDS;
  const unknown = only.filter((kind) => !KINDS.includes(kind));
  if (unknown.length > 0) throw new Error(`--only does not know ${unknown.join(', ')}.\n${USAGE}`);
  const job = jobOf(options);
  mkdirSync(options.out, { recursive: true });
  for (const kind of ALL.filter(({ id }) => only.includes(id))) {
    const pages = whole(kind.pages(job));
    if (pages.length === 0) continue;
    const { bytes, lacking } = await writePdf(pages, { title: `${kind.name}, ${job.run}` }, packagedFonts());
    writeFileSync(join(options.out, `${kind.id}.pdf`), bytes);
    console.log(`${kind.id}.pdf: ${pages.length} ${pages.length === 1 ? 'page' : 'pages'}`);
    if (lacking.length > 0) console.log(`  The font lacks ${lacking.join(' ')}; □ is in their place.`);
  }
  if (only.includes('shopping')) {
    const { money = '' } = job;
    const lists = shoppingList(job);
    writeFileSync(join(options.out, 'shopping.csv'), shoppingCsv(lists, money, true));
    writeFileSync(join(options.out, 'shopping.txt'), `${shoppingText(lists, money, true)}\n`);
  }
  if (only.includes('drawings')) writeDrawings(job, options.out);
}

function jobOf(options: Options): PaperJob {
  const paper = options.paper === undefined ? PAPERS.A4 : paperOf(options.paper);
  if (!paper) throw new Error(`--paper ${options.paper} is none of A4, A3, Letter or WxH in mm, such as 300x400.`);
  const { plan, problems, money } = readPlan(demoCells());
  if (problems[0]) throw problems[0];
  return {
    plan,
    paper,
    money,
    run: options.run ?? 'Demo run',
    date: options.date ?? '',
    styles: listOf(options.styles),
    sizes: listOf(options.sizes)?.map(Number),
    stocks: listOf(options.stocks),
  };
}

function demoCells(): PlanCells {
  const cells = tableCells() as Readonly<Record<string, Cells>>;
  const of = ({ name }: { readonly name: string }) => cells[name] ?? [];
  const { pairage, styles, lasts, stock, rates, outlines, layouts, offcuts } = INPUT_TABLES;
  return {
    pairage: of(pairage),
    styles: of(styles),
    lasts: of(lasts),
    stock: of(stock),
    rates: of(rates),
    outlines: of(outlines),
    layouts: of(layouts),
    offcuts: of(offcuts),
  };
}

function writeDrawings(job: PaperJob, out: string): void {
  const folder = join(out, 'drawings');
  mkdirSync(folder, { recursive: true });
  const files = [...whole(pieceFiles(job)), ...whole(layoutFiles(job))];
  for (const { name, box, draw } of files) {
    const marks = draw();
    writeFileSync(join(folder, `${fileName(name)}.svg`), writeSvg(marks, name, box));
    writeFileSync(join(folder, `${fileName(name)}.dxf`), writeDxf(marks));
  }
  console.log(`drawings: ${files.length} in SVG and DXF`);
}

function optionsOf(words: readonly string[]): { readonly options: Options; readonly demo: boolean } {
  const options: Record<string, string> = {};
  let demo = false;
  for (let i = 0; i < words.length; i++) {
    const name = (words[i] ?? '').replace(/^--/, '');
    if (name === 'demo') demo = true;
    else if (NAMES.has(name) && words[i + 1] !== undefined) options[name] = words[++i] as string;
    else throw new Error(`${words[i]} is not understood.\n${USAGE}`);
  }
  return { options, demo };
}

function listOf(words: string | undefined): string[] | undefined {
  return words
    ?.split(',')
    .map((word) => word.trim())
    .filter(Boolean);
}

/** Does all parts of some work at once. */
function whole<T>(parts: InParts<T>): T {
  for (;;) {
    const { done, value } = parts.next();
    if (done) return value;
  }
}
