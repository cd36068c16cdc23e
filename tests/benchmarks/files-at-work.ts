import { readFileSync, writeFileSync } from 'node:fs';
import { type FunctionsBundle, loadFunctions } from '../../src/cli/functions-bundle';
import { recompute } from '../../src/cli/recompute-workbook';
import type { Book, BookCell, BookSheet, BookValue } from '../../src/exchange/xlsx/book';
import { writeBook } from '../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../src/host/grid/book-of-grid';
import { snapshotOf } from '../../src/host/grid/snapshot';
import { cellAddress } from '../../src/tables/cell-address';
import { sheetInFormula } from '../../src/workbook/address';
import { blank } from '../../src/workbook/blank';
import { demo } from '../../src/workbook/demo';
import { planArguments } from '../../src/workbook/table-cells';
import { workshop } from './plan-workshop';
import { SHELF, STANDARD } from './standard-formulas';

/**
 * What the benchmark of files measures, each in a process of its own: the grid's packages run in Node in their older form
 * alone, so that this is bundled first. Its only word says what to do; it answers with JSON.
 */

/** Plan functions of a planning workbook, with what they take. */
const PLANNED = ['SUMMARY', 'ORDER', 'CHECKS', 'COST', 'PIECES', 'CUTTING', 'BATCHES'];

type Cells = readonly (readonly unknown[])[];

const ARGUMENTS = ['Pairage', 'Styles', 'Lasts', 'Bottom stock', 'Costs and times'];

/** A workbook of tables, each on its own sheet, and a sheet for each plan function. */
function bookOf(tables: readonly Cells[]): Book {
  const sheets = tables.map((rows, at) => sheetOf(ARGUMENTS[at] as string, rows.flatMap(cellsOfRow)));
  const given = tables
    .map((rows, at) => {
      const last = cellAddress(rows.length - 1, Math.max(...rows.map((row) => row.length)) - 1);
      return `${sheetInFormula(ARGUMENTS[at] as string)}!$A$1:${last}`;
    })
    .join(',');
  const results = PLANNED.map((name) =>
    sheetOf(`By ${name}`, [{ row: 0, column: 0, formula: `=SOLEBENCH.${name}(${given})` }]),
  );
  return { sheets: [...sheets, ...results], names: [], properties: {} };
}

function cellsOfRow(row: readonly unknown[], at: number): BookCell[] {
  return row.flatMap((value, column) => (value === '' ? [] : [{ row: at, column, value: value as BookValue }]));
}

function sheetOf(name: string, cells: readonly BookCell[]): BookSheet {
  const frozen = { rows: 0, columns: 0 };
  const none = { columns: [], rows: new Map(), merged: [], rules: [], comments: [], kept: {} };
  return { name, cells, frozen, gridLines: true, ...none };
}

/** The tables of a run as the functions take them, and the same as a file. */
function runNamed(name: string): { readonly tables: readonly Cells[]; readonly file: Uint8Array } {
  if (name === 'demo') return { tables: planArguments(), file: writeBook(bookOfGrid(snapshotOf(demo, 'workbook'))) };
  const { pairage, styles, lasts, stock, rates } = workshop(40, 11);
  const tables = [pairage, styles, lasts, stock, rates];
  return { tables, file: writeBook(bookOf(tables)) };
}

/** Time of the processor on all threads of this process, ms. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** The plan's functions called one after the other, with nothing between. */
async function direct(functions: FunctionsBundle, tables: readonly Cells[]): Promise<void> {
  for (const name of PLANNED) {
    const described = functions.metadata.functions.find((one) => one.name === name);
    const call = described && functions.associated.get(described.id);
    if (!described || !call) throw new Error(`There is no function ${name}.`);
    const given = described.parameters.map((_, at) => tables[at] ?? null);
    await (call as (...all: unknown[]) => unknown)(...given, { functionName: described.id });
  }
}

async function timed(work: () => Promise<unknown>): Promise<{ readonly work: number; readonly whole: number }> {
  const start = processorTime();
  await work();
  const end = processorTime();
  return { work: end - start, whole: end };
}

/** What is held after so many files, bytes. */
async function memory(functions: FunctionsBundle, count: number): Promise<readonly number[]> {
  const gc = (globalThis as { gc?: () => void }).gc;
  if (!gc) throw new Error('Run it with --expose-gc.');
  const held: number[] = [];
  const file = writeBook(bookOfGrid(snapshotOf(blank, 'workbook')));
  for (let at = 0; at < count; at++) {
    // Each file is another run: its pairs and its sheet's price.
    const change = (row: number, column: number, sheet: string, content: number) => ({ sheet, row, column, content });
    const { book } = await recompute(
      file,
      [change(7, 5, 'Run', 1 + (at % 7)), change(3, 7, 'Bottom stock', 10 + at)],
      functions,
    );
    writeBook(book);
    if (at % 5 !== 4) continue;
    for (let i = 0; i < 3; i++) gc();
    const { heapUsed, external } = process.memoryUsage();
    held.push(heapUsed + external);
  }
  return held;
}

/** Formulas of the spreadsheets' own functions as the grid works them out, and the same file without any values. */
async function standard(functions: FunctionsBundle, to: string): Promise<readonly unknown[]> {
  const formulas = STANDARD.map((formula, row): BookCell => ({ row: 10 + row, column: 0, formula: `=${formula}` }));
  const book: Book = {
    sheets: [sheetOf('Shelf', [...SHELF.flatMap(cellsOfRow), ...formulas])],
    names: [],
    properties: {},
  };
  writeFileSync(to, writeBook(book));
  const { book: worked } = await recompute(readFileSync(to), [], functions);
  return STANDARD.map((_, row) => {
    const value = worked.sheets[0]?.cells.find((cell) => cell.row === 10 + row && cell.column === 0)?.value;
    return typeof value === 'object' ? value.fault : value;
  });
}

async function main([what = '', more = '']: readonly string[]): Promise<unknown> {
  const functions = loadFunctions('dist');
  if (what === 'memory') return memory(functions, Number(more));
  if (what === 'standard') return standard(functions, more);
  const { tables, file } = runNamed(more);
  if (what === 'direct') return timed(() => direct(functions, tables));
  return timed(async () => writeBook((await recompute(file, [], functions)).book));
}

main(process.argv.slice(2)).then(
  (answer) => console.log(JSON.stringify(answer)),
  (error: unknown) => {
    console.error(error);
    process.exitCode = 1;
  },
);
