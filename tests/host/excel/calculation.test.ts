import { beforeAll, describe, expect, it } from 'vitest';
import { ExcelHost } from '../../../src/host/excel/excel-host';
import { demo } from '../../../src/workbook/demo';
import { planArguments } from '../../demo-cells';
import { loadBundle } from '../../bundle';
import { SuiteCalculation } from './calculation';
import { Suite } from './suite';

/** Formulas of the plan where the demo has them. */
const formulas = demo.sheets.flatMap(({ name, cells }) =>
  cells.flatMap(({ row, column, formula }) => {
    const [, called] = /^=SOLEBENCH\.([A-Z]+)\(/.exec(formula ?? '') ?? [];
    return called === undefined ? [] : [[called, { sheet: name, row, column }] as const];
  }),
);

describe('the demo in a version of the office suite', { timeout: 120_000 }, () => {
  const suite = new Suite(['Sheet1']);
  const bundle = loadBundle();
  const calculation = new SuiteCalculation(suite, bundle);
  beforeAll(async () => {
    suite.install();
    await new ExcelHost(async () => true).load(demo);
  });
  const args = planArguments();
  const wanted = (name: string) =>
    name === 'TICKET' ? bundle.call(name, 'Betony', ...args.slice(0, 7), 38, args[7]) : bundle.call(name, ...args);

  // By version and host blank cells arrive as text of no length, nothing, or 0: office-js 4702, 5262, 1951.
  describe.each(['', null, 0])('that hands blank cells over as %j', (blankCell) => {
    it.each(formulas)('%s answers as it does elsewhere', (name, { sheet, row, column }) => {
      suite.blankCell = blankCell;
      expect(calculation.answer(sheet, row, column)).toEqual(wanted(name));
    });
  });

  it('goes on with formulas of before that do not part blank cells from 0, and says in Checks what to write', () => {
    suite.blankCell = 0;
    const { sheet, row, column } = formulas.find(([name]) => name === 'CHECKS')![1];
    const before = suite.cell(sheet, row, column).formula!.replace(/IF\(([^=]+)="","",[^)]+\)/g, '$1');
    expect(before).not.toContain('IF(');
    const checks = JSON.stringify(calculation.workOut(sheet, before));
    expect(checks).toContain('Excel hands blank cells over as 0');
    expect(checks).not.toContain('"Input"');
    const order = formulas.find(([name]) => name === 'ORDER')![1];
    const kept = suite.cell(order.sheet, order.row, order.column).formula!.replace(/IF\(([^=]+)="","",[^)]+\)/g, '$1');
    expect((calculation.workOut(order.sheet, kept) as unknown[][]).at(-1)?.[0]).toBe('All');
  });
});
