import { type LaidSheet, laidSheets } from '../cutting/sheet/layout';
import { leftover, SMALLEST_OFFCUT } from '../cutting/sheet/leftover';
import type { SheetName } from '../cutting/sheet/sheet';
import { Problem } from '../problem';
import { purchase } from '../stock/purchase';
import { sheetArea, type Stock } from '../stock/stock';
import { fold } from './codes';
import { stockOfRow } from './cost/stock-cut';
import type { StockCutting } from './cutting';
import { askedOf, type OffcutRow, type PairageRow } from './inputs';
import { limitsOf } from './limits';
import type { Plan } from './plan';

/** Whole sheets of one offer of a stock, before and after they are cut. */
export interface BookedSheets {
  /** With the stock as this offer has it. */
  readonly offer: Stock;
  readonly cut: number;
  /** As the order has it: they have come in by then. */
  readonly bought: number;
  /** On the shelf afterwards: what was on hand and bought, less what is cut. */
  readonly onHand: number;
}

/** A rectangle that is left of a sheet, whole mm. */
export interface LeftOfSheet {
  readonly cutting: StockCutting;
  readonly from: SheetName;
  readonly length: number;
  readonly width: number;
}

/** Where the area of the sheets and offcuts of one stock and format goes, mm²; the last four make up the first (derived). */
export interface AreaAccount {
  readonly cutting: StockCutting;
  readonly taken: number;
  readonly pieces: number;
  /** Between the pieces: knife room and gaps. */
  readonly between: number;
  readonly offcuts: number;
  readonly waste: number;
}

/** What cutting a plan's sheets changes in the store and in the run. */
export interface Booking {
  readonly sheets: readonly BookedSheets[];
  /** Offcuts that are cut up. */
  readonly used: readonly OffcutRow[];
  /** Of each stock the largest first. */
  readonly left: readonly LeftOfSheet[];
  /** Stocks of which the plan does not know where what is left lies: hides, and sheets that are not sound all over. */
  readonly byHand: readonly Stock[];
  readonly accounts: readonly AreaAccount[];
  readonly rows: readonly BookedRow[];
}

/** A row of Pairage of which all pairs are cut then. */
export interface BookedRow {
  readonly row: PairageRow;
  readonly pairs: number;
  /** What their stock costs as it is planned, money; undefined where a price is missing. */
  readonly stock: number | undefined;
}

/**
 * Books a plan's cutting: what goes off the shelf, what comes back to it, and which pairs are cut.
 * @throws Problem where not all of the run can be cut, or nothing is left to cut
 */
export function booking(plan: Plan): Booking {
  const { stocks } = plan.cutting;
  const { pairage, offcuts, rates } = plan.input;
  if (stocks.length === 0) {
    throw new Problem('unavailable', { argument: 'pairage', table: 'Pairage' }, 'all of its pairs are cut already');
  }
  const side = Math.max(SMALLEST_OFFCUT, limitsOf(rates).offcutSide);
  const pieces = stocks.map((cutting) => ({ cutting, left: leftOf(cutting, side) }));
  return {
    sheets: stocks.flatMap(sheetsOf),
    used: stocks.flatMap((cutting) => usedOf(cutting, offcuts)),
    left: pieces.flatMap(({ left }) => left),
    byHand: [...new Set(stocks.filter(isByHand).map(({ stock }) => stock))],
    accounts: pieces.map(({ cutting, left }) => accountOf(cutting, left)),
    rows: pairage
      .filter((row) => !row.cut && askedOf(row).pairs > 0)
      .map((row) => ({ row, pairs: askedOf(row).pairs, stock: stockOf(row, plan) })),
  };
}

function stockOf(row: PairageRow, { runs, possible: { orders } }: Plan): number | undefined {
  const run = runs.styles.find(({ style: { code } }) => fold(code) === fold(row.style));
  return run && stockOfRow(row, run, orders);
}

/** Where the area goes if only some of what is left is kept. */
export function accountOf(cutting: StockCutting, left: readonly LeftOfSheet[]): AreaAccount {
  const { sheets, stock, offcuts: used, net, ground } = cutting;
  const taken = sheets * sheetArea(stock) + areaOf(used);
  const offcuts = areaOf(left);
  return { cutting, taken, pieces: net, between: ground - net, offcuts, waste: taken - ground - offcuts };
}

function sheetsOf({ offers, sheets }: StockCutting): readonly BookedSheets[] {
  return purchase(offers, sheets)
    .filter(({ need, buy }) => need > 0 || buy > 0)
    .map(({ offer, need, buy }) => ({ offer, cut: need, bought: buy, onHand: offer.onHand + buy - need }));
}

function usedOf({ stock, offcuts }: StockCutting, all: readonly OffcutRow[]): readonly OffcutRow[] {
  const used = new Set(offcuts.map(({ code }) => fold(code)));
  return all.filter((one) => fold(one.stock) === fold(stock.code) && used.has(fold(one.code)));
}

/** Whether nothing says where what is left of a stock's sheets lies. */
function isByHand({ stock: { natural, usableShare } }: StockCutting): boolean {
  return natural !== undefined || usableShare < 1;
}

/** Offcuts of sheets without an outline of their own; of offcuts that were cut up too. */
function leftOf(cutting: StockCutting, side: number): readonly LeftOfSheet[] {
  const { layout, format, pieces } = cutting;
  const ofSheet = ({ format: own, placements }: LaidSheet) => leftover(pieces, own, placements, side);
  const all = laidSheets(layout, format)
    .filter(({ name }) => !isByHand(cutting) || 'offcut' in name)
    .flatMap((sheet) =>
      ofSheet(sheet).map(({ length, width }): LeftOfSheet => {
        return { cutting, from: sheet.name, length: Math.floor(length), width: Math.floor(width) };
      }),
    );
  return all.sort((a, b) => b.length * b.width - a.length * a.width);
}

function areaOf(rectangles: readonly { readonly length: number; readonly width: number }[]): number {
  return rectangles.reduce((sum, { length, width }) => sum + length * width, 0);
}
