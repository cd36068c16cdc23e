import { fold } from '../../core/plan/codes';
import { cuttingName } from '../../core/plan/cutting';
import { order } from '../../core/plan/order';
import type { PieceLine } from '../../core/plan/pieces';
import type { StyleRun } from '../../core/plan/runs';
import { chosenRuns, type InParts, type PaperJob, sizeWords } from '../../drawing/paper/chosen';
import { WORKSHEET } from '../../drawing/paper/document-names';
import type { DocumentKind } from '../../drawing/paper/documents';
import { gap, heading, paragraph } from '../../drawing/paper/blocks';
import { type Block, flowPages, textWidth } from '../../drawing/paper/flow';
import { figuresIn, tableBlocks, wordsIn } from '../../drawing/paper/table-blocks';
import type { Page } from '../../drawing/paper/page';
import type { Cell } from '../../tables/cell';
import { decimals } from '../../tables/figures';
import type { ResultTable } from '../../tables/result';
import { costTable } from '../../tables/results/cost';
import { cuttingTable } from '../../tables/results/cutting';
import { orderTable } from '../../tables/results/order';
import { piecesTable } from '../../tables/results/pieces';
import { PART_WORDS } from '../../tables/words';
import { inFigures, measure } from '../in-figures';
import type { Working } from '../working';
import { working } from '../workings';

/** A style worked from its measures to the order and the cost with the maker's own numbers, to be followed with a pencil. */
export function worksheet(tables: readonly Cell[]): DocumentKind {
  return {
    ...WORKSHEET,
    pages: (job) => worksheetPages(job, tables),
  };
}

/**
 * @param tables as the plan functions take them: pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers
 */
export function* worksheetPages(job: PaperJob, tables: readonly Cell[]): InParts<readonly Page[]> {
  const pages: Page[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    const [sizeRun] = sizes;
    if (!sizeRun) continue;
    const width = textWidth(job.paper);
    const own = job.plan.buildable.filter((line) => line.run === run && line.sizeRun === sizeRun);
    const boxes = [
      { head: 'Worksheet', say: run.style.code, share: 4 },
      { head: 'Size', say: sizeWords(sizeRun), share: 2 },
      { head: 'Pairs', say: `${sizeRun.pairs} of ${run.pairs}`, share: 2 },
      { head: 'Last', say: run.last.code, share: 3 },
      { head: 'Name', say: ' ', share: 5 },
    ];
    const blocks: readonly Block[] = [
      paragraph(
        'Work each step out with a pencil, then compare. Figures are those of the workbook; six digits are shown where more are kept.',
        width,
      ),
      ...pieceBlocks(job, own, tables, width),
      ...stockBlocks(job, run, tables, width),
      ...columnsOf('COST', costTable, rowOfStyle(job, run), tables, width, 'Cost of a pair'),
    ];
    pages.push(...flowPages(job, run.style.code, boxes, blocks));
    yield run.style.code;
  }
  return pages;
}

/** The first piece of each part worked in full, and all pieces with a column for one's own figures. */
function pieceBlocks(
  job: PaperJob,
  own: readonly PieceLine[],
  tables: readonly Cell[],
  width: number,
): readonly Block[] {
  const first = own.filter(({ layer }, i) => own.findIndex((one) => one.layer.part === layer.part) === i);
  const rowOf = (line: PieceLine) => 1 + job.plan.buildable.indexOf(line);
  return [
    heading('Pieces'),
    ...tableBlocks(
      [
        figuresIn('No.', 8),
        wordsIn('Piece', 24),
        wordsIn('Stock', 24),
        figuresIn('Thick mm', 16),
        figuresIn('Length mm', 18),
        figuresIn('Width mm', 18),
        figuresIn('Area cm²', 18),
        figuresIn('Skive mm', 18),
        figuresIn('Cut', 12),
        wordsIn('Yours', 34),
      ],
      own.map(({ layer, area, count }) => [
        String(layer.item),
        PART_WORDS[layer.part],
        layer.stock,
        decimals(layer.thickness, 2),
        decimals(layer.length, 1),
        decimals(layer.width, 1),
        decimals(area / 100, 1),
        layer.skive ? decimals(layer.skive.width, 1) : '–',
        String(count),
        '',
      ]),
      width,
    ),
    ...first.flatMap((line) =>
      columnsOf(
        'PIECES',
        piecesTable(),
        rowOf(line),
        tables,
        width,
        `${PART_WORDS[line.layer.part]} ${line.layer.item}`,
      ),
    ),
  ];
}

/** Sheets and money of every stock that the style takes. */
function stockBlocks(job: PaperJob, run: StyleRun, tables: readonly Cell[], width: number): readonly Block[] {
  const used = new Set(run.sizes.flatMap(({ bottom }) => bottom.layers.map(({ stock }) => fold(stock))));
  const orders = order(job.plan.layouts.stocks);
  return job.plan.layouts.stocks.flatMap((cutting, i) => {
    const { stock, content } = cutting;
    if (!used.has(fold(stock.code))) return [];
    const bought = orders.flatMap((line, at) => (line.cutting.content === content ? [at + 1] : []));
    return [
      ...columnsOf('CUTTING', cuttingTable, i + 1, tables, width, `Sheets of ${cuttingName(cutting)}`, [
        'Sheets',
        'Least possible',
        'Area use',
      ]),
      ...bought.flatMap((row) =>
        columnsOf('ORDER', orderTable, row, tables, width, `To buy of ${cuttingName(cutting)}`, [
          'Buy',
          'Price',
          'To pay',
        ]),
      ),
    ];
  });
}

function rowOfStyle(job: PaperJob, run: StyleRun): number {
  return 1 + job.plan.runs.styles.indexOf(run);
}

/** Every figure of a row of a table of results that has a working, each worked out. */
function columnsOf<T>(
  name: string,
  { columns }: ResultTable<T>,
  row: number,
  tables: readonly Cell[],
  width: number,
  title: string,
  only?: readonly string[],
): readonly Block[] {
  const blocks = columns.flatMap(({ heading: column, align }, at): readonly Block[] => {
    if (align !== 'right' || (only && !only.includes(column))) return [];
    let found: Working | undefined;
    try {
      found = working(name, tables, { row, column: at });
    } catch {
      // What a table cannot answer for is told in Checks; a worksheet has what can be worked out.
      return [];
    }
    return found && found.steps.some(({ formula }) => formula !== undefined) ? workingBlocks(column, found, width) : [];
  });
  return blocks.length > 0 ? [heading(title), ...blocks] : [];
}

function workingBlocks(column: string, found: Working, width: number): readonly Block[] {
  const given = found.given
    .map(({ symbol, meaning, value, unit }) => `${symbol ? `${symbol} = ` : ''}${measure(value, unit)}, ${meaning}`)
    .join('; ');
  const line = (words: string) => paragraph(inLetters(words), width, 3);
  const steps = inFigures(found).flatMap(({ what, symbols, numbers, result }) => [
    line(`${what}: ${symbols ?? ''}`),
    ...(numbers ? [line(`${numbers} ${result ?? ''}`)] : result ? [line(result)] : []),
  ]);
  return [
    { ...paragraph(`${column}. Given: ${given || 'what stands above'}.`, width, 3, true), keep: 8 },
    ...steps,
    gap(1.5),
  ];
}

/** Formulas in signs that the lettering of documents has: rounding up is written out. */
function inLetters(formula: string): string {
  return formula.replaceAll('⌈', 'roundup(').replaceAll('⌉', ')').replaceAll('⌊', 'rounddown(').replaceAll('⌋', ')');
}
