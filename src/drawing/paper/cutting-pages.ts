import { leftover } from '../../core/cutting/sheet/leftover';
import { laidSheets, type NamedSheet } from '../../core/cutting/sheet/layout';
import { boxMoved } from '../../core/geometry/box';
import { rectangle } from '../../core/geometry/rectangle';
import { itemAt } from '../../core/item-at';
import { cuttingName, type StockCutting } from '../../core/plan/cutting';
import { decimals, figuresOf } from '../../tables/figures';
import { usableInWords } from '../../tables/usable-in-words';
import { PART_WORDS } from '../../tables/words';
import type { Marks } from '../mark';
import { movedMarks } from '../move-marks';
import { sheetName, sheetNumber } from '../sheet-name';
import { lineOf } from '../line-of-piece';
import { sheetPicture } from '../sheet-picture';
import { chosenRuns, type InParts, isChosenStock, type PaperJob } from './chosen';
import { drawingBlock, gap, heading, paragraph } from './blocks';
import { type Block, flowPages, textWidth } from './flow';
import { figuresIn, tableBlocks, wordsIn } from './table-blocks';
import type { FileDrawing } from './piece-files';
import type { Page } from './page';

const figures = figuresOf('metric');

/** The chosen stocks that are cut for any of the chosen styles, as they are laid. */
export function chosenCuttings(job: PaperJob): readonly StockCutting[] {
  const styles = new Set(chosenRuns(job).map(({ run }) => run));
  return job.plan.layouts.stocks.filter(
    ({ stock, lines }) => isChosenStock(job, stock.code) && lines.some(({ run }) => styles.has(run)),
  );
}

/** A summary by stock, then a page a sheet: the layout to scale, and where every piece lies. */
export function* cuttingPages(job: PaperJob): InParts<readonly Page[]> {
  const cuttings = chosenCuttings(job);
  if (cuttings.length === 0) return [];
  const pages: Page[] = [...summaryPages(job, cuttings)];
  for (const cutting of cuttings) {
    for (const sheet of laidSheets(cutting.layout, cutting.format)) {
      pages.push(...sheetPages(job, cutting, sheet));
    }
    yield cutting.stock.code;
  }
  return pages;
}

function summaryPages(job: PaperJob, cuttings: readonly StockCutting[]): readonly Page[] {
  const width = textWidth(job.paper);
  const left = job.plan.layouts.problems.map((problem) => paragraph(`Not laid: ${problem.message}`, width, 3.2));
  const blocks = [
    heading('Sheets to cut'),
    ...tableBlocks(SUMMARY, summaryRows(cuttings), width, { sum: true, size: 3 }),
    gap(3),
    ...left,
    ...cuttings.flatMap((one) => {
      const usable = usableInWords(one);
      return usable === undefined ? [] : [paragraph(`${cuttingName(one)}: ${usable}`, width, 3)];
    }),
    paragraph(
      'Lay templates with the foot side up; L and R are marked on every piece. Keep the knife room between them.',
      width,
    ),
    paragraph('Cut away from the hand, on a firm ground, with a sharp blade; cover it when it rests.', width),
  ];
  const boxes = [
    { head: 'Cutting plan', say: job.run, share: 5 },
    { head: 'Stocks', say: String(cuttings.length), share: 1.5 },
    {
      head: 'Sheets and offcuts',
      say: sumOf(cuttings, (one) => laidSheets(one.layout, one.format).length),
      share: 2.5,
    },
    { head: 'Date', say: job.date || '–', share: 2.5 },
  ];
  return flowPages(job, 'Summary', boxes, blocks);
}

const SUMMARY = [
  wordsIn('Stock', 30),
  figuresIn('Thick mm', 14),
  figuresIn('Sheet mm', 26),
  figuresIn('Pieces', 15),
  figuresIn('Sheets', 15),
  wordsIn('Offcuts used', 24),
  figuresIn('Least possible', 18),
  figuresIn('Area use', 18),
  wordsIn('Direction', 24),
];

/** A row a stock, and one of sums. */
function summaryRows(cuttings: readonly StockCutting[]): readonly (readonly string[])[] {
  const rows = cuttings.map((one) => [
    one.stock.code,
    `${decimals(one.stock.thickness, 2)}`,
    `${decimals(one.format.length, 0)} × ${decimals(one.format.width, 0)}`,
    String(one.count),
    String(one.sheets),
    one.offcuts.map(({ code }) => code).join(', ') || '–',
    String(one.least),
    `${decimals(100 * one.areaUse, 1)} %`,
    one.stock.direction,
  ]);
  const sum = (of: (one: StockCutting) => number) => sumOf(cuttings, of);
  const sums = [sum(({ count }) => count), sum(({ sheets }) => sheets), '', sum(({ least }) => least)];
  return [...rows, ['All', '', '', ...sums, '', '']];
}

function sumOf(cuttings: readonly StockCutting[], of: (one: StockCutting) => number): string {
  return String(cuttings.reduce((all, one) => all + of(one), 0));
}

function sheetPages(job: PaperJob, cutting: StockCutting, sheet: NamedSheet): readonly Page[] {
  const { paper } = job;
  const { stock } = cutting;
  const { format, placements } = sheet;
  const width = textWidth(paper);
  // No higher than the page leaves room for the list under it.
  const across = Math.min(format.length, format.width) / Math.max(format.length, format.width);
  const wide = Math.min(width, (0.5 * paper.height) / Math.max(0.05, across));
  const rows = inRows(cutting, sheet);
  const numbers = new Map(rows.map(({ at }, i) => [at, i + 1]));
  const picture = sheetPicture({ cutting, sheet, figures, numbers }, wide);
  const scale = picture.scale ?? 0;
  const left = leftover(cutting.pieces, format, placements);
  const usable = 'offcut' in sheet.name ? undefined : usableInWords(cutting);
  const blocks: readonly Block[] = [
    drawingBlock(picture.height + 2, (x, y) => movedMarks(picture.marks, 0, x + (width - wide) / 2, y)),
    paragraph(
      `Scale 1 : ${decimals(1 / Math.max(scale, 1e-9), 1)}. A piece has its number in the list, size and foot. x and y: from the lower left corner of the sheet to that of the rectangle about a piece, mm. Knife room ${decimals(format.knifeRoom, 1)}, edge trim ${decimals(format.edgeTrim, 1)} mm.`,
      width,
      2.8,
    ),
    ...(usable === undefined ? [] : [paragraph(usable, width, 2.8)]),
    ...left.map((one, i) =>
      paragraph(
        `Left over ${String.fromCharCode(65 + i)}: ${decimals(one.length, 0)} × ${decimals(one.width, 0)} mm, at x ${decimals(one.x, 0)}, y ${decimals(one.y, 0)}. Write stock and size on it.`,
        width,
        3,
      ),
    ),
    gap(1.5),
    ...twoUp(placementRows(cutting, rows), width),
  ];
  const boxes = [
    { head: 'Stock', say: stock.code, share: 4 },
    { head: 'Sheet', say: sheetNumber(cutting, sheet.name), share: 2.5 },
    { head: 'Size, mm', say: `${decimals(format.length, 0)} × ${decimals(format.width, 0)}`, share: 3 },
    { head: 'Pieces', say: String(placements.length), share: 1.6 },
    { head: 'Direction', say: stock.direction, share: 2.4 },
    { head: 'Laid by', say: cutting.source === 'rows' ? 'quick rows' : 'search', share: 2.4 },
  ];
  return flowPages(job, `${cuttingName(cutting)}, ${sheetName(cutting, sheet.name)}`, boxes, blocks);
}

/** What lies where, row by row of the sheet: from below, then from the left; `at` is its place in the layout. */
function inRows({ pieces }: StockCutting, { placements }: NamedSheet) {
  return placements
    .map(({ piece, turn, x, y }, at) => ({ at, piece, turn, box: boxMoved(itemAt(pieces, piece).ring, turn, x, y) }))
    .sort((a, b) => Math.round(a.box.bottom - b.box.bottom) || a.box.left - b.box.left);
}

function placementRows(cutting: StockCutting, rows: ReturnType<typeof inRows>): readonly (readonly string[])[] {
  return rows.map(({ piece, turn, box }, i) => {
    const line = lineOf(cutting, piece);
    const name = line
      ? `${line.line.run.style.code} ${PART_WORDS[line.line.layer.part].toLowerCase()} ${line.line.layer.item}, ${line.line.sizeRun.size} ${line.foot}`
      : '';
    return [
      String(i + 1),
      name,
      decimals(box.left, 0),
      decimals(box.bottom, 0),
      `${decimals(((turn % 360) + 360) % 360, 0)}°`,
    ];
  });
}

/** Rows in two columns side by side, read down the left one first, page by page. */
function twoUp(rows: readonly (readonly string[])[], width: number): readonly Block[] {
  const half = Math.ceil(rows.length / 2);
  const columns = [
    figuresIn('No.', 8),
    wordsIn('Piece', 48),
    figuresIn('x', 12),
    figuresIn('y', 12),
    figuresIn('Turned', 13),
  ];
  const blank = ['', '', '', '', ''];
  const paired = Array.from({ length: half }, (_, i) => [...itemAt(rows, i), '', ...(rows[half + i] ?? blank)]);
  return tableBlocks([...columns, wordsIn('', 5), ...columns], paired, width, { size: 2.6 });
}

/** One drawing a sheet, at true size: its edge and the pieces as they lie, knife room and all. */
export function* layoutFiles(job: PaperJob): InParts<readonly FileDrawing[]> {
  const files: FileDrawing[] = [];
  for (const cutting of chosenCuttings(job)) {
    for (const sheet of laidSheets(cutting.layout, cutting.format)) {
      const { length, width } = sheet.format;
      files.push({
        name: `${cuttingName(cutting)}, ${sheetName(cutting, sheet.name)}`,
        box: { left: -1, right: length + 1, bottom: -width - 1, top: 1 },
        draw: () => layoutMarks(cutting, sheet),
      });
    }
    yield cutting.stock.code;
  }
  return files;
}

function layoutMarks(cutting: StockCutting, { format, placements }: NamedSheet): Marks {
  const up = ([x, y]: readonly [number, number]): readonly [number, number] => [x, -y];
  const edges = format.natural
    ? [format.natural.outline, ...format.natural.holes]
    : [rectangle(format.length, format.width)];
  return [
    ...edges.map((ring) => ({ kind: 'area', pen: 'narrow', rings: [ring.map(up)], layer: 'mark' }) as const),
    ...placements.flatMap(({ piece, turn, x, y }): Marks => {
      const { ring, key } = itemAt(cutting.pieces, piece);
      const { left, right, bottom, top } = boxMoved(ring, turn, x, y);
      const cut = { kind: 'area', pen: 'wide', rings: [ring.map(up)], layer: 'cut' } as const;
      const words = {
        kind: 'text',
        at: [(left + right) / 2, -(bottom + top) / 2],
        words: key,
        lettering: 'plain',
        anchor: 'middle',
        size: 5,
        layer: 'text',
      } as const;
      return [...movedMarks([cut], turn, x, -y), words];
    }),
  ];
}
