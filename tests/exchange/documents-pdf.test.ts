import { describe, expect, it } from 'vitest';
import { packagedFonts } from '../../src/cli/fonts';
import { laidSheets } from '../../src/core/cutting/sheet/layout';
import { order } from '../../src/core/plan/order';
import { chosenCuttings } from '../../src/drawing/paper/cutting-pages';
import { chosenPieces, type PaperJob } from '../../src/drawing/paper/chosen';
import { DOCUMENTS } from '../../src/drawing/paper/documents';
import { gridFault, usualGrid } from '../../src/drawing/paper/label-grid';
import { PAPERS } from '../../src/drawing/paper/page';
import { shoppingList, shoppingText } from '../../src/drawing/paper/shopping-list';
import { writePdf } from '../../src/exchange/pdf';
import { besideSheets } from '../../src/drawing/paper/beside-sheets';
import { shoppingCsv } from '../../src/exchange/shopping-csv';
import { stepInWords } from '../../src/tables/step-in-words';
import { demoJob, whole } from '../drawing/paper/jobs';
import { type ReadPage, readPdf } from '../read-pdf';

const fonts = packagedFonts();

async function read(id: string, job: PaperJob): Promise<readonly ReadPage[]> {
  const kind = DOCUMENTS.find((one) => one.id === id)!;
  return readPdf((await writePdf(whole(kind.pages(job)), { title: kind.name }, fonts)).bytes);
}

/** All words of a document, without the blanks at which lines are broken. */
const solid = (pages: readonly ReadPage[]) =>
  pages
    .flatMap((page) => page.texts.map(({ words }) => words))
    .join('')
    .replace(/\s/g, '');
const bare = (words: string) => words.replace(/\s/g, '');

describe('documents on paper', { timeout: 120_000 }, () => {
  it('a ticket has every step in its order, with its words, and the cautions that concern it', async () => {
    const job = demoJob({ styles: ['Tansy'], sizes: [39] });
    const pages = await read('tickets', job);
    const steps = job.plan.ticket('Tansy', 39);
    // The reader may join neighbours of a line: a number stands first in its piece of lettering.
    const numbers = pages.flatMap(({ texts }) =>
      texts.flatMap(({ words, x }) => (x > 9.5 && x < 17 && /^\d+(\s|$)/.test(words) ? [parseInt(words, 10)] : [])),
    );
    let next = 1;
    for (const number of numbers) if (number === next) next++;
    expect(next - 1).toBe(steps.length);
    const words = solid(pages);
    for (const step of steps) expect(words).toContain(bare(stepInWords(step)));
    expect(words).toContain(bare('Glue in moving air, away from flame'));
    expect(words).toContain(bare('Tansy'));
    pages.forEach(({ texts }, i) => expect(texts.map((text) => text.words)).toContain(`${i + 1} of ${pages.length}`));
  });

  it('a cutting plan has every piece where it lies, each once, and adds up', async () => {
    const job = demoJob({ styles: ['Betony'], stocks: ['Foam 10', 'Bend 4'] });
    const pages = await read('cutting', job);
    const cuttings = chosenCuttings(job);
    const sheets = cuttings.flatMap((one) => laidSheets(one.layout, one.format));
    const names = pages.flatMap(({ texts }) =>
      texts.filter(({ words }) => /^[A-Z]\w+ [\w ]+ \d+, [\d.]+ [LR]$/.test(words)),
    );
    expect(names).toHaveLength(sheets.reduce((sum, { placements }) => sum + placements.length, 0));
    // In the drawing each piece has its number in the list below.
    sheets.forEach(({ placements }, at) => {
      const { texts } = pages[at + 1]!;
      const list = Math.min(...texts.filter(({ words }) => words === 'Turned').map(({ y }) => y));
      const drawn = texts.filter(({ words, y }) => y < list && /^\d+$/.test(words)).map(({ words }) => Number(words));
      for (let number = 1; number <= placements.length; number++) expect(drawn).toContain(number);
    });
    const words = solid(pages);
    for (const { stock, count } of cuttings) {
      expect(words).toContain(bare(stock.code));
      expect(words).toContain(String(count));
    }
    expect(pages.length).toBeGreaterThanOrEqual(sheets.length + 1);
  });

  it('labels are one a cut piece and one a pair', async () => {
    const job = demoJob({ styles: ['Betony'], sizes: [36, 37] });
    const heads = (pages: readonly ReadPage[]) =>
      pages.flatMap(({ texts }) => texts.filter(({ words }) => /^Betony EU \d+/.test(words)));
    const pieces = chosenPieces(job);
    expect(heads(await read('labels', job))).toHaveLength(pieces.reduce((sum, { count }) => sum + count, 0));
    const pairs = new Set(pieces.map(({ sizeRun }) => sizeRun));
    const wanted = [...pairs].reduce((sum, one) => sum + one.pairs, 0);
    expect(heads(await read('pairs', job))).toHaveLength(wanted);
    // Begun at the twentieth label of a sheet of 24, five fit on it.
    const begun = await read('pairs', { ...job, labels: { ...usualGrid(PAPERS.A4), first: 20 } });
    expect(heads(begun.slice(0, 1))).toHaveLength(Math.min(wanted, 5));
    expect(heads(begun)).toHaveLength(wanted);
  });

  it('a sheet of labels that the paper does not hold is refused in a sentence', () => {
    const grid = usualGrid(PAPERS.A4);
    expect(gridFault(grid, PAPERS.A4)).toBeUndefined();
    expect(gridFault({ ...grid, columns: 4 }, PAPERS.A4)).toContain('give fewer or smaller ones');
    expect(gridFault({ ...grid, first: 25 }, PAPERS.A4)).toContain('24 labels');
    expect(gridFault({ ...grid, rows: NaN }, PAPERS.A4)).toContain('number');
    expect(gridFault({ ...grid, height: 5 }, PAPERS.A4)).toContain('12 mm');
  });

  it('a shopping list holds what is to be bought, by supplier, with its sum, as text and CSV too', async () => {
    const plain = demoJob({ money: '€' });
    const supplied = <T extends { readonly material: string }>(one: T) => ({
      ...one,
      supplier: one.material === 'cork' ? '=Cork, "north"' : undefined,
    });
    const layouts = {
      ...plain.plan.layouts,
      stocks: plain.plan.layouts.stocks.map((one) => ({
        ...one,
        stock: supplied(one.stock),
        offers: one.offers.map(supplied),
      })),
    };
    const job: PaperJob = {
      ...plain,
      plan: {
        input: plain.plan.input,
        runs: plain.plan.runs,
        buildable: plain.plan.buildable,
        layouts,
        ticket: () => [],
        benchDays: () => plain.plan.benchDays(),
      },
    };
    const lists = shoppingList(job);
    const wanted = order(layouts.stocks).filter(({ buy }) => buy > 0);
    expect(lists.at(-1)?.supplier).toBe('');
    expect(lists.flatMap(({ lines }) => lines)).toHaveLength(wanted.length);
    const total = wanted.reduce((sum, { toPay }) => sum + (toPay ?? 0), 0);
    expect(lists.reduce((sum, list) => sum + list.total, 0)).toBeCloseTo(total, 9);
    const beside = besideSheets(job);
    const rows = parseCsv(shoppingCsv(lists, '€', true, beside));
    expect(rows).toHaveLength(wanted.length + 1 + beside.length);
    expect(rows.every((row) => row.length === 11)).toBe(true);
    expect(rows.slice(-beside.length).map((row) => row[1])).toContain('Paste');
    // A text that begins as a formula is made text.
    expect(rows[1]?.[0]).toBe('\'=Cork, "north"');
    const sheets = rows.slice(1, wanted.length + 1);
    expect(sheets.reduce((sum, row) => sum + Number(row[10]), 0)).toBeCloseTo(total, 1);
    expect(parseCsv(shoppingCsv(lists, '€', false, beside))[0]).toHaveLength(9);
    // What is ordered by area or weight is that amount at the price of its unit.
    for (const { cutting, toPay } of wanted) {
      const { code, soldBy, price = NaN } = cutting.stock;
      if (soldBy === 'sheet' || toPay === undefined) continue;
      const { amount = NaN } = lists.flatMap(({ lines }) => lines).find((one) => one.stock === code) ?? {};
      expect(amount * price, code).toBeCloseTo(toPay, 2);
    }
    expect(wanted.some(({ cutting: { stock } }) => stock.soldBy === 'ft²')).toBe(true);
    // Sheets hold pieces of all styles, so that a list for one style alone would lack some.
    expect(shoppingList({ ...job, styles: ['Clover'], sizes: [38] })).toEqual(lists);
    expect(besideSheets({ ...job, styles: ['Clover'], sizes: [38] })).toEqual(beside);
    expect(shoppingText(lists, '€', true)).toContain(`${wanted[0]!.buy} × ${wanted[0]!.cutting.stock.code}`);
    const words = solid(await read('shopping', job));
    for (const { cutting } of wanted) expect(words).toContain(bare(cutting.stock.code));
    expect(words).toContain(total.toFixed(2));
    expect(solid(await read('shopping', { ...job, prices: false }))).not.toContain(total.toFixed(2));
  });
});

/** Reads CSV by the grammar of RFC 4180, section 2. */
function parseCsv(csv: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^,"\r\n]*))(,|\r\n|$)/g)) {
    if (quoted === undefined && plain === '' && end === '') break;
    rows.at(-1)!.push(quoted?.replaceAll('""', '"') ?? plain ?? '');
    if (end === '\r\n') rows.push([]);
  }
  return rows.filter(({ length }) => length > 0);
}
