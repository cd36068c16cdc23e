import { describe, expect, it } from 'vitest';
import { isBlank } from '../../src/tables/cell';
import { columnsIn } from '../../src/tables/headings';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { blankIsNoNought, type Columns, partsBlankFromNought, type Table } from '../../src/tables/schema';
import { type CellError, loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';
import { sampleCalls } from '../office/sample-calls';

/** How hosts hand over blank cells, by version: office-js 4702, 5262, 1951. */
const BLANKS = ['', null, 0] as const;

const { call, metadata } = loadBundle();
const tables: readonly Table<Columns>[] = Object.values(INPUT_TABLES);
const demo = planArguments();
const PLANS = ['SUMMARY', 'PIECES', 'CUTTING', 'ORDER', 'COST', 'CHECKS', 'BATCHES', 'BENCHDAYS', 'TICKET'];

const planned = (name: string, args: readonly unknown[], blank: unknown = null): unknown =>
  name === 'TICKET' ? call(name, 'Betony', ...args.slice(0, 7), blank, args[7]) : call(name, ...args);

/** The demo's tables with something in each blank cell. */
const filled = (blankAt: (table: Table<Columns>, heading: string | undefined) => unknown): unknown[][][] =>
  demo.map((cells, i) => {
    const known = tables[i]!;
    const at = new Map([...columnsIn(known, cells[0]!)].map(([name, column]) => [column, name]));
    return cells.map((line) => line.map((cell, c) => (isBlank(cell) ? blankAt(known, at.get(c)) : cell)));
  });

describe('the plan of the demo', { timeout: 120_000 }, () => {
  const answers = new Map(PLANS.map((name) => [name, planned(name, demo)]));

  // Formulas part blank cells from 0 where both are answers: tests/host/excel/calculation.test.ts.
  it.each(BLANKS)('is the same where blank cells arrive as %j', (blank) => {
    const args = filled((table) => (partsBlankFromNought(table) && blank === 0 ? '' : blank));
    for (const name of PLANS) expect(planned(name, args, blank), name).toEqual(answers.get(name));
  });

  it('is the same with 0 in every blank cell that cannot be 0, and in those to which 0 is usual', () => {
    const args = filled((table, name) => {
      const column = name === undefined ? undefined : table.columns[name];
      const parts = column ? blankIsNoNought(column) : name === undefined && table.name === 'Lasts';
      return parts ? '' : 0;
    });
    for (const name of PLANS) expect(planned(name, args, 0), name).toEqual(answers.get(name));
  });

  // A workbook of before, whose formulas do not part blank cells from 0: nobody can tell which 0 was entered.
  it('goes on with 0 in every blank cell as if each 0 were one, and Checks say where and what to write', () => {
    const none = demo.map((cells, i) => {
      const { columns } = tables[i]!;
      const free = [...columnsIn(tables[i]!, cells[0]!)].flatMap(([name, at]) =>
        blankIsNoNought(columns[name]!) && !columns[name]!.required ? [at] : [],
      );
      return cells.map((line) => line.map((cell, c) => (cell === 0 && free.includes(c) ? '' : cell)));
    });
    expect(none).not.toEqual(demo);
    const args = filled(() => 0);
    const about = (line: unknown[]) => line.includes('Blank cells');
    for (const name of PLANS.filter((one) => one !== 'CHECKS')) {
      expect(planned(name, args, 0), name).toEqual(planned(name, none));
    }
    const checks = planned('CHECKS', args) as unknown[][];
    expect(checks.filter((line) => !about(line))).toEqual(planned('CHECKS', none));
    expect(checks.filter(about).map((line) => line[0])).toEqual(expect.arrayContaining(['Styles', 'Bottom stock']));
    expect(JSON.stringify(checks.filter(about))).toMatch(/0 counts as blank under .* write IF\(range=/);
  });
});

// The long search is left out: it takes its time, and reads its tables as the others do. A small sheet is soon laid.
const calls = sampleCalls
  .filter(({ name }, at) => sampleCalls.findIndex((one) => one.name === name) === at)
  .filter(({ name }) => !PLANS.includes(name) && name !== 'LAYOUTSEARCH')
  .map(({ name, args }) => ({
    name,
    args: args.map((arg, at) => ((at === 1 || at === 2) && Number(arg) > 600 ? 450 : arg)),
  }));

function outcome(name: string, args: readonly unknown[]): unknown {
  try {
    return call(name, ...args);
  } catch (error) {
    return (error as CellError).message;
  }
}

describe('an argument that points at a blank cell', () => {
  const left = calls.flatMap(({ name, args }) =>
    metadata
      .find((one) => one.name === name)!
      .parameters.flatMap((parameter, at) => (parameter.optional ? [{ name, args, parameter, at }] : [])),
  );
  it.each(left.map((one) => [one.name, one.parameter.name, one] as const))(
    '%s takes for %s left out, or says that 0 is an answer',
    (name, _parameter, { args, parameter, at }) => {
      const given = (cell: unknown) => args.map((arg, i) => (i === at ? cell : arg));
      const arriving = (blank: unknown) => (parameter.dimensionality === 'matrix' ? [[blank]] : blank);
      const leftOut = outcome(name, given(null));
      expect(outcome(name, given(arriving('')))).toEqual(leftOut);
      expect(outcome(name, given(arriving(null)))).toEqual(leftOut);
      const nought = outcome(name, given(arriving(0)));
      if (JSON.stringify(nought) !== JSON.stringify(leftOut)) expect(parameter.description).toMatch(/\b0\b(?!\.)/);
    },
    60_000,
  );

  it('in a range of numbers is none of them', () => {
    for (const blank of BLANKS) {
      expect(call('LAYERMIX', 45, [[6, blank, 4]], 1, [[10, blank, 10]])).toEqual(
        call('LAYERMIX', 45, [[6, 4]], 1, [[10, 10]]),
      );
      expect(call('PAIRS', 50, [[1, blank, 2]])).toEqual(call('PAIRS', 50, [[1, null, 2]]));
      // A whole column ends with its weights.
      expect(call('PAIRS', 30, [[1], [null], [2], [null], [null]])).toEqual([[10], [0], [20]]);
    }
  });

  it('below an outline is no corner of it', () => {
    const square = [
      [0, 0],
      [200, 0],
      [200, 80],
      [0, 80],
    ];
    const moved = square.map(([x = 0, y = 0]) => [x + 10, y]);
    for (const blank of BLANKS) {
      const below = [
        [blank, blank],
        [blank, blank],
      ];
      expect(call('OUTLINEAREA', [...square, ...below])).toBe(16_000);
      const away = outcome('OUTLINEAREA', [[...moved, ...below]]);
      // Nobody can tell whether the corner at 0, 0 is meant.
      if (blank === 0)
        expect(away).toMatch(/^outline: it ends in 2 rows of 0, 0; give the range without the blank rows/);
      else expect(away).toBe(16_000);
    }
  });
});
