import { demo } from '../../src/workbook/demo';
import { tableCells } from '../demo-cells';

/** Rows below the headings of a table, by heading without its unit. */
export type Records = readonly Readonly<Record<string, unknown>>[];

function recordsOf(table: string): Records {
  const [headings = [], ...rows] = tableCells(demo)[table] ?? [];
  const names = headings.map((heading) => String(heading).split('\n')[0] as string);
  return rows
    .filter((row) => row.some((cell) => cell !== ''))
    .map((row) =>
      Object.fromEntries(names.map((name, column) => [name, row[column]]).filter(([, cell]) => cell !== '')),
    );
}

const found = (table: string, heading: string, code: string) => {
  const record = recordsOf(table).find((one) => one[heading] === code);
  if (!record) throw new Error(`The demo has no ${code} in ${table}.`);
  return record;
};

/** A run of a maker's own, typed in from nothing: nine stocks and ten styles, all on one last and all invented. */
export const ownStocks: Records = [
  'Cork 6',
  'Cork 4',
  'Foam 6',
  'Foam 10',
  'Foam 18',
  'Rubber 4',
  'Bend 4',
  'Lift 3',
  'Foam 12 M',
].map((code, at) => ({ ...found('Bottom stock', 'Stock', code), Stock: `Own ${at + 1}`, 'On hand': 0 }));
export const ownLast = { ...found('Lasts', 'Last', 'Sandal 0'), Last: 'Own last' };
export const ownStyles: Records = Array.from({ length: 10 }, (_, at) => ({
  Style: `Style ${at + 1}`,
  Last: 'Own last',
  Sole: `Own ${(at % 9) + 1}`,
  'Lasted substance': 0,
}));
/** Two pairs of each style in 38, one in 39. */
export const ownPairs: Records = ownStyles.map(({ Style }) => ({ Style, 38: 2, 39: 1 }));
