import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { plan } from '../../src/library/index';
import { readNumber } from '../../src/tables/cell';
import { planArguments } from '../demo-cells';

/** Runs a program that imports the built library under its name, as others do. */
const run = (program: string) =>
  execFileSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' });

describe('README’s example of the library', () => {
  const example =
    /```js\n(import \{ plan \} from 'solebench';[^`]*)```/.exec(readFileSync('README.md', 'utf8'))?.[1] ?? '';

  it('runs as it stands, without a slip in its tables', () => {
    const shown = run(example);
    expect(shown.startsWith('[] [')).toBe(true);
    expect(shown).toContain("'Foam 12'");
  });

  it('orders what fourteen soles on sheets of foam take', () => {
    const order = JSON.parse(
      run(example.replace('console.log(run.problems, run.order)', 'console.log(JSON.stringify(run.order))')),
    ) as (string | number)[][];
    const [headings, line] = order;
    const at = (heading: string) => line?.[headings!.findIndex((one) => String(one).startsWith(heading))];
    expect(at('Pieces')).toBe(14);
    // A sole of this size lies within 260 × 100 mm, and a sheet of 500 × 1000 has room for fourteen such boxes.
    expect(at('Buy')).toBe(1);
    expect(at('To pay')).toBe(27);
  });

  it('says the width of a skive as README has it', () => {
    const width = run("import { skiveWidth } from 'solebench'; console.log(skiveWidth(6, 1, 20))");
    // (6 − 1) / tan 20° (derived).
    expect(readNumber(width.trim(), {}, { argument: 'width' })).toBeCloseTo(5 / Math.tan((20 * Math.PI) / 180), 9);
  });
});

describe('plan', () => {
  const [pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers] = planArguments() as never[];

  it('gives the demo’s tables', () => {
    const planned = plan({ pairage, styles, lasts, stock, rates, outlines, layouts, offcuts, offers } as never);
    expect(planned.problems).toEqual([]);
    for (const table of [
      planned.pieces,
      planned.cutting,
      planned.order,
      planned.cost,
      planned.checks,
      planned.batches,
    ]) {
      expect(table.length).toBeGreaterThan(2);
    }
  });

  it('tells slips in sentences and leaves out what they stand for', () => {
    const planned = plan({ pairage, styles, lasts, stock: [['Stock', 'Material']], rates } as never);
    expect(planned.problems.join()).toMatch(/no column is headed/);
  });
});
