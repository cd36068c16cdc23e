import { beforeEach, describe, expect, it, vi } from 'vitest';
import { ExcelHost } from '../../../src/host/excel/excel-host';
import { run } from '../../../src/host/excel/run';
import { cautionsOf, stateOf } from '../../../src/host/excel/workbook-state';
import { readPlan } from '../../../src/tables/plan-input';
import { Watched } from '../../../src/taskpane/watched';
import { blank } from '../../../src/workbook/blank';
import { demo } from '../../../src/workbook/demo';
import { Suite } from './suite';

describe('a workbook of the office suite', { timeout: 30_000 }, () => {
  let suite: Suite;
  let host: ExcelHost;
  beforeEach(() => {
    suite = new Suite(['Sheet1']);
    suite.install();
    host = new ExcelHost(async () => true);
  });
  /** All that the workbook holds, to tell whether anything has changed. */
  const content = () => JSON.stringify(suite.sheets.map(({ name, cells, looks }) => [name, [...cells], looks.length]));
  const cautions = async () => cautionsOf(await run(stateOf));
  const tableOf = async (name: string) => (await host.tables()).get(name) ?? [];

  it('has nothing to be said of where it is set up as usual', async () => {
    expect(await cautions()).toEqual([]);
  });

  it('that works nothing out by itself is told of, with the key to press', async () => {
    suite.calculationMode = 'Manual';
    expect(await cautions()).toEqual([
      expect.stringMatching(/^Excel works nothing out by itself .* Press F9 after a change/),
    ]);
  });

  it('that counts its days from 1904 is given no days, and the sentence says what to do', async () => {
    suite.from1904 = true;
    const before = content();
    await expect(host.load(demo)).rejects.toThrow(/counts its days from 1904.* Use a new workbook, or untick/);
    expect(content()).toBe(before);
    expect(await cautions()).toEqual([expect.stringContaining('counts its days from 1904')]);
  });

  describe('with protected sheets', () => {
    const unprotect = (names: string) => `${names} protected. Choose Review, Unprotect Sheet there, then do it again.`;
    beforeEach(() => host.load(blank));

    it.each([
      [
        'single cells',
        'Styles',
        () =>
          host.writeCells([
            { sheet: 'Bottom stock', row: 3, column: 0, value: 'Cork 7' },
            { sheet: 'Styles', row: 3, column: 0, value: 'Mine' },
          ]),
      ],
      ['a table', 'Layouts', () => host.writeTable('Layouts', [['Cork 6', 1, '', 'Mine', 0, 0, 0]])],
      ['the demo', 'Pieces', () => host.load(demo)],
    ])('writes nothing of %s where a part is refused, and names the sheet', async (_what, sheet, work) => {
      suite.sheet(sheet).protected = true;
      const before = content();
      await expect(work()).rejects.toThrow(unprotect(`The sheet “${sheet}” is`));
      expect(content()).toBe(before);
    });

    it('puts no formula into a protected cell, and names several sheets', async () => {
      suite.sheet('Sheet1').protected = true;
      suite.active = { sheet: suite.sheet('Sheet1'), area: { row: 0, column: 0, rows: 1, columns: 1 } };
      await expect(host.insertFormula('=1+1')).rejects.toThrow(unprotect('The sheet “Sheet1” is'));
      suite.set('Sheet1', 0, 0, { locked: false });
      await host.insertFormula('=1+1');
      expect(suite.cell('Sheet1', 0, 0).formula).toBe('=1+1');
      for (const name of ['Styles', 'Lasts']) suite.sheet(name).protected = true;
      await expect(host.load(blank)).rejects.toThrow(unprotect('The sheets “Styles”, “Lasts” are'));
    });

    it('reads them as any other', async () => {
      suite.sheet('Styles').protected = true;
      expect((await tableOf('Styles'))[1]?.[0]).toBe('Example');
    });
  });

  describe('whose sheets the maker changes', () => {
    const watched = async (until: (pane: Watched) => boolean) => {
      vi.stubGlobal('requestAnimationFrame', (paint: () => void) => setTimeout(paint));
      const pane = new Watched(host);
      let told = false;
      pane.onChange(() => (told = true));
      await expect.poll(() => told && until(pane), { timeout: 20_000 }).toBe(true);
      pane.stop();
      return pane;
    };
    const take = (name: string) => {
      const sheet = suite.sheet(name);
      suite.sheets.splice(suite.sheets.indexOf(sheet), 1);
      suite.tables = suite.tables.filter((table) => table.sheet !== sheet);
    };
    beforeEach(() => host.load(blank));

    it('goes on with sheets under other names', async () => {
      for (const sheet of suite.sheets) sheet.name = `${sheet.name} of June`;
      const { standing } = await watched((pane) => pane.standing.kind === 'plan');
      expect(standing.kind).toBe('plan');
      expect((await host.tablePlace('Lasts'))?.sheet).toBe('Lasts of June');
    });

    it.each(['Styles', 'Run'])(
      'says which table is lacking where the sheet %s was deleted, and what to do',
      async (name) => {
        take(name);
        const { standing } = await watched((pane) => pane.standing.kind === 'slips');
        const [first] = standing.kind === 'slips' ? standing.problems : [];
        expect(first?.message).toBe(
          `${name === 'Run' ? 'Pairage' : name}: the sheet of this table was deleted, and the plan rests on it; bring it back from an earlier version of the workbook`,
        );
      },
    );

    it('has no run where all of them were deleted', async () => {
      for (const { name } of blank.sheets) take(name);
      const { standing } = await watched(() => true);
      expect(standing.kind).toBe('empty');
    });
  });

  it('reads the same tables where a comma is the decimal mark', async () => {
    const read = async (decimalComma: boolean) => {
      suite = new Suite(['Sheet1']);
      suite.decimalComma = decimalComma;
      suite.install();
      host = new ExcelHost(async () => true);
      await host.load(demo);
      await host.writeCells([{ sheet: 'Styles', row: 3, column: 1, value: '45,5' }]);
      return Object.fromEntries(await host.tables());
    };
    const [comma, point] = [await read(true), await read(false)];
    expect(comma).toEqual(point);
    // A maker's measure that is text is read with either mark.
    const plan = (thick: string) =>
      readPlan({
        pairage: [],
        styles: [],
        lasts: [],
        stock: [
          ['Stock', 'Material', 'Thick', 'Width', 'Length'],
          ['Cork 6', 'cork', thick, 500, 1000],
        ],
        rates: [],
      }).plan.input.stock[0]?.thickness;
    expect([plan('5,8'), plan('5.8')]).toEqual([5.8, 5.8]);
    suite.set('Sheet1', 0, 0, { value: 6.5 });
    suite.active = { sheet: suite.sheet('Sheet1'), area: { row: 0, column: 0, rows: 1, columns: 1 } };
    suite.decimalComma = true;
    expect(await host.selection()).toMatchObject({ value: 6.5, text: '6,5' });
  });
});
