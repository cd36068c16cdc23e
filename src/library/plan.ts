import { readPlan } from '../tables/plan-input';
import { type ResultTable, writeTable } from '../tables/result';
import { batchesTable } from '../tables/results/batches';
import { checksTable } from '../tables/results/checks';
import { costTable } from '../tables/results/cost';
import { cuttingTable } from '../tables/results/cutting';
import { orderTable } from '../tables/results/order';
import { piecesTable } from '../tables/results/pieces';
import { sizeWriter } from '../tables/sizes-in-words';

/** A cell; blank text, null and undefined are blank. */
export type Cell = string | number | boolean | null | undefined;

/** Rows of cells, headings in the first. */
export type TableRows = readonly (readonly Cell[])[];

/** The tables of a run as the sheets have them: columns are found by their headings, in any order. */
export interface PlanTables {
  readonly pairage: TableRows;
  readonly styles: TableRows;
  readonly lasts: TableRows;
  readonly stock: TableRows;
  /** Costs and times. */
  readonly rates?: TableRows;
  readonly outlines?: TableRows;
  readonly layouts?: TableRows;
  readonly offcuts?: TableRows;
  readonly offers?: TableRows;
}

/** What a run comes to, each as a table with headings. */
export interface PlannedTables {
  readonly pieces: TableRows;
  readonly cutting: TableRows;
  readonly order: TableRows;
  readonly cost: TableRows;
  readonly checks: TableRows;
  readonly batches: TableRows;
  /** Slips in the tables, each a sentence; what they stand for is not in the results. */
  readonly problems: readonly string[];
}

/** Plans a run. Each result is worked out when it is first read. @throws Problem where a result cannot be worked out */
export function plan(tables: PlanTables): PlannedTables {
  const {
    plan: run,
    problems,
    money,
  } = readPlan({
    ...tables,
    rates: tables.rates ?? [],
    outlines: tables.outlines,
    layouts: tables.layouts,
    offcuts: tables.offcuts,
    offers: tables.offers,
  });
  const written = <T>(table: ResultTable<T>, lines: readonly T[]) => writeTable(table, lines, money) as TableRows;
  return {
    get pieces() {
      return written(piecesTable(sizeWriter(run.runs.styles)), run.pieces);
    },
    get cutting() {
      return written(cuttingTable, run.cutting.stocks);
    },
    get order() {
      return writeTable(orderTable, run.possible.orders, money, run.possible.notOrdered) as TableRows;
    },
    get cost() {
      return writeTable(costTable, run.possible.costs, money, run.possible.notCosted) as TableRows;
    },
    get checks() {
      return written(checksTable, run.checks);
    },
    get batches() {
      return written(batchesTable, run.batches);
    },
    problems: problems.map(({ message }) => message),
  };
}
