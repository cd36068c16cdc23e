import { itemAt } from '../core/item-at';
import process from 'node:process';
import { whatWentWrong } from '../core/what-went-wrong';
import type { PaperJob } from '../drawing/paper/chosen';
import { paperOf, PAPERS } from '../drawing/paper/page';
import type { Cells } from '../tables/cell';
import { planCells } from '../tables/plan-cells';
import { readPlan } from '../tables/plan-input';
import { demo } from '../workbook/demo';
import { planArguments, tableCells } from '../workbook/table-cells';
import { DOCUMENT_KINDS, documentKinds, ticketsFor } from './document-kinds';
import { packagedFonts } from './fonts';
import { writeDocuments } from './write-documents';

/**
 * `npm run paper -- --demo --out DIR [--only templates,nest,…,drawings] [--paper A4|A3|Letter|WxH] [--styles …]
 * [--sizes …] [--stocks …] [--tickets size|style] [--run NAME] [--date WORDS]`: writes what the bench needs on paper, one PDF a kind of document, and
 * the pieces as drawings in SVG and DXF.
 */

const USAGE = [
  'npm run paper -- --demo --out DIR [--only KINDS] [--paper A4|A3|Letter|WxH] [--styles CODES] [--sizes SIZES]',
  '                 [--stocks CODES] [--tickets size|style] [--run NAME] [--date WORDS]',
  `KINDS are ${DOCUMENT_KINDS.join(', ')}; lists are separated by commas. W and H are in mm.`,
  'Of a workbook file: npm run recompute -- IN.xlsx OUT.xlsx --paper DIR',
].join('\n');

type Options = Readonly<
  Partial<Record<'out' | 'only' | 'paper' | 'styles' | 'sizes' | 'stocks' | 'tickets' | 'run' | 'date', string>>
>;
const NAMES: ReadonlySet<string> = new Set([
  'out',
  'only',
  'paper',
  'styles',
  'sizes',
  'stocks',
  'tickets',
  'run',
  'date',
]);

try {
  await main(process.argv.slice(2));
} catch (error) {
  console.error(whatWentWrong(error));
  process.exitCode = 1;
}

async function main(words: readonly string[]): Promise<void> {
  const { options, demo } = optionsOf(words);
  if (!demo || !options.out) throw new Error(`Give --demo and --out.\n${USAGE}`);
  const kinds = options.only === undefined ? DOCUMENT_KINDS : documentKinds(options.only);
  const documents = { job: jobOf(options), tables: planArguments(), fonts: packagedFonts(), kinds, out: options.out };
  await writeDocuments(documents, (sentence) => console.log(sentence));
}

function jobOf(options: Options): PaperJob {
  const paper = options.paper === undefined ? PAPERS.A4 : paperOf(options.paper);
  if (!paper) throw new Error(`--paper ${options.paper} is none of A4, A3, Letter or WxH in mm, such as 300x400.`);
  const { plan, problems, money } = readPlan(planCells(new Map(Object.entries(tableCells() as Record<string, Cells>))));
  if (problems[0]) throw problems[0];
  return {
    plan,
    paper,
    money,
    run: options.run ?? demo.name,
    date: options.date ?? '',
    styles: listOf(options.styles),
    sizes: listOf(options.sizes)?.map(Number),
    stocks: listOf(options.stocks),
    tickets: ticketsFor(options.tickets ?? 'size'),
  };
}

function optionsOf(words: readonly string[]): { readonly options: Options; readonly demo: boolean } {
  const options: Record<string, string> = {};
  let demo = false;
  for (let i = 0; i < words.length; i++) {
    const name = (words[i] ?? '').replace(/^--/, '');
    if (name === 'demo') demo = true;
    else if (NAMES.has(name) && words[i + 1] !== undefined) options[name] = itemAt(words, ++i);
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
