import type { Stock } from '../../src/core/stock/stock';
import type { Style } from '../../src/core/bottom/style';
import type { Last } from '../../src/core/last/last';
import type { PlanInput, Rate } from '../../src/core/plan/inputs';
import { lastsTable, toLast } from '../../src/tables/lasts';
import { readPlan } from '../../src/tables/plan-input';
import { ratesTable, toRate } from '../../src/tables/rates';
import { type Reading, readTable } from '../../src/tables/read';
import type { Columns, Table } from '../../src/tables/schema';
import { stockTable, toStock } from '../../src/tables/stock';
import { stylesTable, toStyle } from '../../src/tables/styles';

/**
 * Records for the tests, read from cells by the tables' own reader: what a test does not name is what a blank cell means.
 * All lasts, styles and stocks are invented.
 */
export type Named = Readonly<Record<string, unknown>>;

/** A table of cells from records by heading. */
export function cellsOf(records: readonly Named[]): unknown[][] {
  const headings = [...new Set(records.flatMap((record) => Object.keys(record)))];
  return [
    // Headings that are sizes are numbers in a sheet.
    headings.map((heading) => (/^\d+(\.\d+)?$/.test(heading) ? Number(heading) : heading)),
    ...records.map((record) => headings.map((heading) => record[heading] ?? '')),
  ];
}

function rowOf<C extends Columns>(table: Table<C>, named: Named): Reading<C>['rows'][number] {
  const { rows, problems } = readTable(table, cellsOf([named]));
  if (problems[0]) throw problems[0];
  if (!rows[0]) throw new Error('The record is blank.');
  return rows[0];
}

export const ROUND: Named = {
  Last: 'Round',
  System: 'EU',
  'Base size': 38,
  'Bottom length': 252,
  'Heel height': 45,
  'Toe spring': 8,
  Tread: 84,
  Waist: 56,
  Seat: 58,
  Swing: 3,
  'Pairs on hand': 2,
};

export function lastOf(named: Named = {}): Last {
  return toLast(rowOf(lastsTable, { ...ROUND, ...named }));
}

export function styleOf(named: Named = {}): Style {
  return toStyle(rowOf(stylesTable, { Style: 'Betony', Last: 'Round', ...named }));
}

export const CORK_6: Named = { Stock: 'Cork 6', Material: 'cork', Thick: 6, Width: 500, Length: 1000, Density: 250 };
const CORK_4: Named = { ...CORK_6, Stock: 'Cork 4', Thick: 4 };
const FOAM_10: Named = { ...CORK_6, Stock: 'Foam 10', Material: 'foam', Thick: 10, Density: 200 };
const BEND_4: Named = { ...CORK_6, Stock: 'Bend 4', Material: 'leather', Thick: 4, Density: 1000 };
export const RUBBER_4: Named = { ...CORK_6, Stock: 'Rubber 4', Material: 'rubber', Thick: 4, Density: 1150 };
const RUBBER_6: Named = { ...RUBBER_4, Stock: 'Rubber 6', Thick: 6 };
const CALF_1: Named = { ...BEND_4, Stock: 'Calf 1', Thick: 1.2 };
const BOARD_2: Named = { ...CORK_6, Stock: 'Board 2', Material: 'board', Thick: 2, Density: 900 };
export const STOCKS: readonly Named[] = [CORK_6, CORK_4, FOAM_10, BEND_4, RUBBER_4, RUBBER_6, CALF_1, BOARD_2];

/** In no plan's tables: three of it and two of 6 are the 45 of heel, with nothing to rasp. */
const CORK_11: Named = { ...CORK_6, Stock: 'Cork 11', Thick: 11 };

export function stockOf(named: Named = {}): Stock {
  return toStock(rowOf(stockTable, { ...CORK_6, ...named }));
}

/** Finds a sample stock by its code, as a style's build asks for it. */
export function findSample(code: string): Stock {
  const named = [...STOCKS, CORK_11].find(({ Stock }) => Stock === code);
  if (!named) throw new Error(`There is no sample ${code}.`);
  return stockOf(named);
}

export function ratesOf(...named: readonly Named[]): readonly Rate[] {
  return named.map((one, i) => toRate({ ...rowOf(ratesTable, { Item: `Rate ${i}`, ...one }), row: i + 1 }));
}

/** The tables of a plan by their argument, as records by heading. */
/** One rate of each kind that a pair's cost has: of work, adhesive, sundries and what is spoiled. */
export const RATES: readonly Named[] = [
  { Item: 'Work', Value: 30, Unit: 'money an hour' },
  { Item: 'Adhesive', Value: 14, Unit: 'money a litre' },
  { Item: 'Adhesive', Value: 3.5, Unit: 'm² a litre' },
  { Item: 'Spoilage', Value: 0.04, Unit: 'share spoiled' },
  { Item: 'Sock', Value: 1.5, Unit: 'money a pair' },
  { Item: 'Shank', Value: 0.8, Unit: 'money a pair', For: 'Betony' },
  { Item: 'Finishing', Value: 20, Unit: 'minutes a pair' },
];

export interface NamedTables {
  readonly pairage?: readonly Named[];
  readonly styles?: readonly Named[];
  readonly lasts?: readonly Named[];
  readonly stock?: readonly Named[];
  readonly rates?: readonly Named[];
  readonly outlines?: readonly Named[];
  readonly layouts?: readonly Named[];
  readonly offcuts?: readonly Named[];
  readonly offers?: readonly Named[];
}

/** A wedge on platform and outsole, and the usual stocks. */
export const USUAL_TABLES: Required<NamedTables> = {
  pairage: [{ Style: 'Betony', 37: 2, 38: 3, 39: 1 }],
  styles: [
    {
      Style: 'Betony',
      Last: 'Round',
      Raise: 'wedge',
      Lifts: 'Cork 6, Cork 4',
      Platform: 'Foam 10',
      Outsole: 'Rubber 4',
      'Most rasping': 2,
    },
  ],
  lasts: [ROUND],
  stock: STOCKS,
  rates: [
    { Item: 'Work', Value: 30, Unit: 'money an hour' },
    { Item: 'Adhesive', Value: 14, Unit: 'money a litre' },
    { Item: 'Adhesive', Value: 3.5, Unit: 'm² a litre' },
  ],
  outlines: [],
  layouts: [],
  offcuts: [],
  offers: [],
};

/** Tables as a host hands them over, the usual ones where nothing else is given. */
export function planCells(tables: NamedTables = {}) {
  const { pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers } = { ...USUAL_TABLES, ...tables };
  return {
    pairage: cellsOf(pairage),
    styles: cellsOf(styles),
    lasts: cellsOf(lasts),
    stock: cellsOf(stock),
    rates: cellsOf(rates),
    outlines: cellsOf(outlines),
    layouts: cellsOf(layouts),
    offcuts: cellsOf(offcuts),
    offers: cellsOf(offers),
  };
}

/** The input of a plan from tables without a slip. */
export function inputOf(tables: NamedTables = {}): PlanInput {
  const { plan, problems } = readPlan(planCells(tables));
  if (problems[0]) throw problems[0];
  return plan.input;
}
