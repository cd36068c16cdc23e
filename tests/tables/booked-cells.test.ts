import { describe, expect, it } from 'vitest';
import { booking } from '../../src/core/plan/booking';
import { bookedCells, namedOffcuts } from '../../src/tables/booked-cells';
import { foundRows } from '../../src/core/plan/found-rows';
import type { TableCell } from '../../src/tables/block-cell';
import type { Cells } from '../../src/tables/cell';
import { planCells as planOfTables } from '../../src/tables/plan-cells';
import { readPlan } from '../../src/tables/plan-input';
import { tableCells } from '../../src/workbook/table-cells';

type Tables = ReadonlyMap<string, Cells>;

const demo: Tables = new Map(Object.entries(tableCells()));
const planOf = (tables: Tables) => readPlan(planOfTables(tables)).plan;

function booked(tables: Tables, place = ''): readonly TableCell[] {
  const plan = planOf(tables);
  const booked = booking(plan);
  return bookedCells(tables, booked, namedOffcuts(booked.left, plan.input.offcuts), place);
}

/** Tables with cells written; rows are added at the end. */
function written(tables: Tables, cells: readonly TableCell[]): Tables {
  const all = new Map([...tables].map(([name, block]) => [name, block.map((line) => [...line])]));
  for (const { table, row, column, value } of cells) {
    const block = all.get(table)!;
    while (block.length <= row) block.push(block[0]!.map(() => ''));
    block[row]![column] = value;
  }
  return all;
}

const without = (tables: Tables, table: string, heading: string): Tables => {
  const at = (tables.get(table)?.[0] ?? []).findIndex((cell) => String(cell).startsWith(heading));
  return new Map([...tables, [table, (tables.get(table) ?? []).map((line) => line.filter((_, i) => i !== at))]]);
};

describe('bookedCells', () => {
  const after = written(demo, booked(demo, 'Rack by the door'));
  const plan = planOf(after);

  it('leave a workbook that reads without a slip, with nothing to cut', () => {
    expect(readPlan(planOfTables(after)).problems).toEqual([]);
    expect(plan.cutting.stocks).toEqual([]);
    expect(plan.summary().next).toEqual({ kind: 'make' });
  });

  it('cannot be booked a second time', () => {
    expect(() => booked(after)).toThrow('all of its pairs are cut already');
  });

  it('balance the shelf: on hand before and bought is cut and on hand after, of every stock', () => {
    const before = planOf(demo);
    const onHand = ({ input }: typeof plan) =>
      [...input.stock, ...input.offers].reduce((sum, one) => sum + one.onHand, 0);
    const bought = before.orders.reduce((sum, { buy }) => sum + buy, 0);
    const cut = before.orders.reduce((sum, { need }) => sum + need, 0);
    expect(onHand(before) + bought - cut).toBe(onHand(plan));
  });

  it('leave what a pair costs as it was, of every style, and the hours without cutting out', () => {
    const costOf = ({ costs }: typeof plan) => costs.map(({ pair, stock }) => [pair, stock]);
    const [now, then] = [costOf(planOf(demo)), costOf(plan)];
    expect(then).toHaveLength(now.length);
    // Rows have their sums of money to four digits.
    for (const [i, line] of now.entries()) for (const at of [0, 1]) expect(then[i]![at]).toBeCloseTo(line[at]!, 3);
    expect(plan.summary().whole).toBeCloseTo(planOf(demo).summary().whole, 2);
    expect(plan.summary().hours).toBeLessThan(planOf(demo).summary().hours);
  });

  it('take the offcuts that are used, and give what is left a code of its own and its place', () => {
    const used = planOf(demo).cutting.stocks.flatMap(({ offcuts }) => offcuts.map(({ code }) => code));
    expect(used.length).toBeGreaterThan(0);
    const codes = plan.input.offcuts.map(({ code }) => code);
    for (const code of used) expect(codes).not.toContain(code);
    expect(new Set(codes).size).toBe(codes.length);
    expect(codes).toContain('Foam 10 offcut 1');
    const at = after.get('Offcuts')![0]!.indexOf('Place');
    expect(after.get('Offcuts')!.map((line) => line[at])).toContain('Rack by the door');
  });

  it('give the next run offcuts to plan on', () => {
    const pairage = [
      ['Style', 38],
      ['Teasel', 1],
    ];
    const next = planOf(new Map([...after, ['Pairage', pairage]]));
    const bare = planOf(new Map([...after, ['Pairage', pairage], ['Offcuts', [['']]]]));
    const sheets = (one: typeof plan) => one.cutting.stocks.reduce((sum, cutting) => sum + cutting.sheets, 0);
    expect(next.cutting.stocks.flatMap(({ offcuts }) => offcuts).length).toBeGreaterThan(0);
    expect(sheets(next)).toBeLessThan(sheets(bare));
  });

  it('take the rows of layouts out that have served', () => {
    const [cutting] = planOf(demo).cutting.stocks;
    const headings = ['Stock', 'Sheet', 'Format', 'Offcut', 'Piece', 'x', 'y', 'Turn'];
    const rows = foundRows(cutting!, cutting!.layout).map((row) => [
      row.stock,
      row.sheet,
      row.format ?? '',
      row.offcut ?? '',
      row.piece,
      row.x,
      row.y,
      row.turn,
    ]);
    const own = ['Elsewhere', 1, '', '', 'Other', 0, 0, 0];
    const tables = new Map([...demo, ['Layouts', [headings, ...rows, own]]]);
    const left = written(tables, booked(tables)).get('Layouts')!;
    expect(left.filter((line) => line.some((cell) => cell !== ''))).toEqual([headings, own]);
  });

  it('give a pairage of before the columns where it has blank ones, and else say what to do', () => {
    const before = without(without(demo, 'Pairage', 'Stock cut'), 'Pairage', 'Cut');
    const filled = written(before, booked(before));
    expect(filled.get('Pairage')![0]).toEqual(expect.arrayContaining(['Cut', 'Stock cut']));
    expect(planOf(filled).cutting.stocks).toEqual([]);
    const narrow = new Map([
      ...before,
      ['Pairage', before.get('Pairage')!.map((line) => line.filter((_, i) => before.get('Pairage')![0]![i] !== ''))],
    ]);
    expect(() => booked(narrow)).toThrow(
      'Pairage: it has no column Cut to book into; head a blank column beside it so',
    );
  });

  it('say which column of another table is lacking', () => {
    expect(() => booked(without(demo, 'Bottom stock', 'On hand'))).toThrow('Bottom stock: it has no column On hand');
  });
});

describe('a pairage', () => {
  const pairage = (cut: unknown) => [
    ['Style', 38, 39, 'Cut'],
    ['Teasel', 1, 2, cut],
  ];
  const read = (cut: unknown) => readPlan(planOfTables(new Map([...demo, ['Pairage', pairage(cut)]])));

  it('is the same with a blank column Cut, and with 0, as without it', () => {
    const plain = [
      ['Style', 38, 39],
      ['Teasel', 1, 2],
    ];
    const wanted = planOf(new Map([...demo, ['Pairage', plain]])).input.pairage;
    for (const cut of ['', null, 0]) expect(read(cut).plan.input.pairage).toEqual(wanted);
  });

  it('has no row of which only some pairs are cut: which sizes are, nothing would say', () => {
    expect(read(2).problems.map(({ message }) => message)).toEqual([
      'row 1 of Pairage, Cut: 2 of its 3 pairs are cut; enter the others in a row of their own',
    ]);
    // A pair that was called off after it was cut is cut all the same.
    expect(read(4).plan.runs.styles).toMatchObject([{ pairs: 3, toCut: 0 }]);
  });

  it.each([-1, 'yes', 1.5])('says what is wrong with %s', (cut) => {
    expect(read(cut).problems[0]?.message).toMatch(/^row 1 of Pairage, Cut: /);
  });
});
