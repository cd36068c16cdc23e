import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';

type Table = readonly (readonly unknown[])[];

const demo = planArguments();
const before = demo.slice(0, 8);
const FUNCTIONS = ['SUMMARY', 'PIECES', 'CUTTING', 'ORDER', 'COST', 'CHECKS', 'BATCHES', 'BENCHDAYS'];

describe('the table Offers', { timeout: 120_000 }, () => {
  const { call } = loadBundle();
  const order = (args: readonly unknown[]) => call('ORDER', ...args) as Table;
  const toPay = (table: Table) => table.at(-1)![(table[0] as string[]).findIndex((one) => one.startsWith('To pay'))];

  it('changes nothing of the demo where it is left out or blank', () => {
    for (const name of FUNCTIONS) {
      const without = call(name, ...before);
      for (const blank of [null, [['Stock', 'Supplier', 'Price']]]) {
        expect(call(name, ...before, blank), name).toEqual(without);
      }
    }
  });

  it('lets the order say of which offer how many, for less', () => {
    const lines = order(demo);
    expect(toPay(lines)).toBeLessThan(toPay(order(before)) as number);
    const cork = lines.filter(([stock]) => stock === 'Cork 6');
    const buy = (lines[0] as string[]).indexOf('Buy');
    expect(cork.map((line) => [line[buy], line.at(-1)])).toEqual([
      [1, expect.not.stringContaining('Quay Cork')],
      [5, expect.stringMatching(/^Quay Cork, 1000 × 500 mm, in 4 days: /)],
    ]);
  });

  it('names slips by its own name', () => {
    const wrong = [
      ['Stock', 'Price'],
      ['Cork 6', 'dear'],
    ];
    expect(() => call('CUTTING', ...before, wrong)).toThrow(/row 1 of Offers, Price/);
    expect(order([...before, wrong])[1]).toEqual(expect.arrayContaining(['Cork 6']));
  });
});
