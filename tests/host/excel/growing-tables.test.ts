import { beforeEach, describe, expect, it } from 'vitest';
import { ExcelHost } from '../../../src/host/excel/excel-host';
import { run } from '../../../src/host/excel/run';
import { readPlan } from '../../../src/tables/plan-input';
import { blank } from '../../../src/workbook/blank';
import { ownLast, ownPairs, ownStocks, ownStyles, type Records } from '../../browser/own-run';
import { Suite } from './suite';

/** The run of own-run.ts typed into blank tables of the office suite, which calculates nothing here. */
describe('tables in the office suite', () => {
  let suite: Suite;
  let host: ExcelHost;
  beforeEach(async () => {
    suite = new Suite(['Sheet1']);
    suite.install();
    host = new ExcelHost(async () => true);
    await host.load(blank);
  });

  const type = async (table: string, records: Records, from = 1) => {
    const place = (await host.tablePlace(table))!;
    const [headings = []] = (await host.tables()).get(table)!;
    // The suite lets a table grow where more is typed right below it.
    const model = suite.tables.find(({ area, sheet }) => sheet.name === place.sheet && area.row === place.row)!;
    model.area = { ...model.area, rows: Math.max(model.area.rows, from + records.length) };
    records.forEach((record, r) =>
      headings.forEach((heading, c) => {
        const name = String(heading ?? '').split('\n')[0] as string;
        if (name !== 'Pairs')
          suite.set(place.sheet, place.row + from + r, place.column + c, { value: record[name] ?? '' });
      }),
    );
  };
  const insertRow = (sheet: string, row: number) =>
    run(async (context) => {
      context.workbook.worksheets
        .getItem(sheet)
        .getRange(`${row + 1}:${row + 1}`)
        .insert('Down');
      await context.sync();
    });
  const insertColumn = (sheet: string, column: number) =>
    run(async (context) => {
      context.workbook.worksheets.getItem(sheet).getRangeByIndexes(0, column, 1_048_576, 1).insert('Right');
      await context.sync();
    });
  const plan = async () => {
    const tables = await host.tables();
    const of = (name: string) => tables.get(name) ?? [];
    return readPlan({
      pairage: of('Pairage'),
      styles: of('Styles'),
      lasts: of('Lasts'),
      stock: of('Bottom stock'),
      rates: of('Costs and times'),
    });
  };
  const pairs = async () => {
    const { plan: made, problems } = await plan();
    expect(problems).toEqual([]);
    return made.runs.styles.reduce((sum, run) => sum + run.pairs, 0);
  };

  it('reach from the headings to the sums, and no further', async () => {
    const { cells } = { cells: (await host.tables()).get('Pairage')! };
    expect(cells[cells.length - 1]![0]).toBe('All');
    expect(cells[0]!.every((heading) => heading !== null)).toBe(true);
    const place = (await host.tablePlace('Pairage'))!;
    const sums = cells[0]!.indexOf('Pairs');
    const sum = suite.cell('Run', place.row + place.rows - 1, place.column + sums).formula;
    expect(sum).toBe('=SUM(INDEX($C$7:K20,2,2):INDEX($C$7:K20,ROWS($C$7:K20)-1,COLUMNS($C$7:K20)-1))');
  });

  it('plan a run that is typed in, and rows that are inserted below the headings, between, and above the sums', async () => {
    await type('Bottom stock', ownStocks);
    await type('Lasts', [ownLast]);
    await type('Styles', ownStyles);
    await type('Pairage', [...ownPairs, {}, {}]);
    expect(await pairs()).toBe(30);
    const order = (await plan()).plan.possible.orders;
    expect(order.map(({ cutting }) => cutting.stock.code)).toEqual(ownStocks.map(({ Stock }) => Stock));
    const place = (await host.tablePlace('Pairage'))!;
    for (const at of [() => 1, () => 5, (rows: number) => rows - 1]) {
      const { rows } = (await host.tablePlace('Pairage'))!;
      const row = place.row + at(rows);
      await insertRow('Run', row);
      suite.set('Run', row, 0, { value: 'Style 1' });
      suite.set('Run', row, 5, { value: 4 });
    }
    expect((await host.tablePlace('Pairage'))!.rows).toBe(place.rows + 3);
    expect(await pairs()).toBe(42);
  });

  it('count sizes in columns that are inserted beside the first size, between, and before the sums', async () => {
    await type('Bottom stock', ownStocks);
    await type('Lasts', [ownLast]);
    await type('Styles', ownStyles);
    await type('Pairage', [...ownPairs, {}, {}]);
    expect(await pairs()).toBe(30);
    const headings = async () => (await host.tables()).get('Pairage')![0]!.map(String);
    const begins = (await headings()).map((heading) => heading.split('\n')[0]);
    const [first, sums] = [begins.indexOf('36'), begins.indexOf('Pairs')];
    // The last first, so that the others stay where they are.
    const place = (await host.tablePlace('Pairage'))!;
    for (const [at, size] of [
      [sums, 43],
      [first + 2, 37.5],
      [first, 35],
    ] as const) {
      await insertColumn('Run', place.column + at);
      // Until it is headed by a size, the column is told of and counts nothing.
      expect((await plan()).plan.checks.some((check) => check.kind === 'unreadHeading')).toBe(true);
      suite.set('Run', place.row, place.column + at, { value: String(size) });
      suite.set('Run', place.row + 1, place.column + at, { value: 2 });
    }
    expect((await host.tablePlace('Pairage'))!.columns).toBe(place.columns + 3);
    expect(await pairs()).toBe(36);
    expect((await plan()).plan.runs.styles[0]!.sizes.map(({ size }) => size)).toEqual(
      expect.arrayContaining([35, 37.5, 43]),
    );
  });

  it('tell of what is typed further below than they reach, and where', async () => {
    const before = await host.tablePlaces();
    expect(
      [...before.values()].every(
        ({ filledBelow }, i) => filledBelow === undefined || [...before.keys()][i] === 'Pairage',
      ),
    ).toBe(true);
    const { sheet, row, column, rows } = before.get('Bottom stock')!;
    suite.set(sheet, row + rows + 3, column, { value: 'Cork 9' });
    expect((await host.tablePlaces()).get('Bottom stock')!.filledBelow).toBe(row + rows + 3);
  });
});
