import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { type FunctionsBundle, loadFunctions } from '../../src/cli/functions-bundle';
import { workOut } from '../../src/cli/headless-grid';
import { readArguments } from '../../src/cli/recompute-arguments';
import { readChange, recompute, type Recomputed } from '../../src/cli/recompute-workbook';
import { terminalTable } from '../../src/cli/terminal-table';
import type { Book } from '../../src/exchange/xlsx/book';
import { readBook } from '../../src/exchange/xlsx/read';
import { valuesOnly } from '../../src/exchange/xlsx/values-only';
import { writeBook } from '../../src/exchange/xlsx/write';
import { bookOfGrid } from '../../src/host/grid/book-of-grid';
import { gridOfBook } from '../../src/host/grid/grid-of-book';
import { snapshotOf } from '../../src/host/grid/snapshot';
import { VERDICT_WORDS } from '../../src/tables/words';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';
import { faultsOf, partsOf } from '../exchange/xlsx/standard';
import { packageOf } from '../exchange/xlsx/package';
import { letGo } from '../let-go';
import { smallFile } from './small-run';

let functions: FunctionsBundle;
beforeAll(() => {
  functions = loadFunctions('dist');
});

const formulasOf = ({ sheets }: Book) =>
  sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column, formula }) => (formula === undefined ? [] : [`${name} ${row} ${column} ${formula}`])),
  );
const inputsOf = ({ sheets }: Book) =>
  sheets.flatMap(({ name, cells }) =>
    cells
      .filter(({ formula, spilled, value, look }) => formula === undefined && !spilled && (look ?? value))
      .map(({ look, ...cell }) => ({ name, ...cell, style: look?.style, format: look?.format })),
  );

describe('recompute', () => {
  const before = bookOfGrid(snapshotOf(demo, 'workbook'));
  let done: Recomputed;
  let after: Book;
  beforeAll(async () => {
    done = await recompute(writeBook(before), [], functions);
    after = readBook(writeBook(done.book)).book;
  }, 120_000);

  it('keeps every formula, value, look, format and name of the demo', () => {
    expect(formulasOf(after)).toEqual(formulasOf(before));
    expect(inputsOf(after)).toEqual(inputsOf({ ...before, sheets: before.sheets.map(withoutBlankText) }));
    expect(after.names).toEqual(before.names);
    expect(after.properties).toEqual(before.properties);
    after.sheets.forEach(({ rules, columns, rows, frozen }, at) => {
      const { rules: listed, columns: wide, rows: high, frozen: held } = before.sheets[at]!;
      expect({ rules, columns, rows, frozen }).toEqual({ rules: listed, columns: wide, rows: high, frozen: held });
    });
  });

  it('is written as the standard has it, with values alone too', async () => {
    const files = [done.book, valuesOnly(done.book)].map((book) => partsOf(writeBook(book)));
    expect(await faultsOf(files)).toEqual([[], []]);
  });

  it('writes the values that the functions give when they are called by hand', () => {
    const bundle = loadBundle();
    const args = planArguments();
    for (const name of ['Pieces', 'Cutting', 'Order', 'Cost', 'Checks', 'Batches']) {
      const expected = bundle.call(name.toUpperCase(), ...args) as unknown[][];
      const table = done.tables.find((one) => one.name === name);
      expect(table?.rows.length, name).toBe(expected.length);
      table?.rows.forEach((row, line) => {
        row.forEach((cell, column) => {
          const wanted = expected[line]?.[column] ?? '';
          if (typeof wanted === 'number') expect(cell, `${name} ${line} ${column}`).toBeCloseTo(wanted, 9);
          else expect(cell, `${name} ${line} ${column}`).toBe(wanted);
        });
      });
    }
  });

  it('names what must be put right by its sheet and cell', () => {
    const checks = done.tables.find(({ name }) => name === 'Checks');
    const rows = checks?.rows.filter((row) => row.includes(VERDICT_WORDS.putRight)).length;
    expect(done.wrong).toHaveLength(rows ?? -1);
    for (const { at } of done.wrong) expect(at).toMatch(/^[A-Z][a-z]+!A\d+$/);
  });

  it('answers what if: a cell is changed first', async () => {
    const pairage = demo.sheets[0]!.tables[0]!.area;
    const cell = demo.sheets[0]!.cells.find(
      ({ row, column, role, value }) =>
        row > pairage.row && column > 3 && role === 'input' && typeof value === 'number',
    )!;
    const at = `Run!${cellAddress(cell.row, cell.column)}`;
    const more = await recompute(writeBook(before), [readChange(`${at}=${Number(cell.value) + 10}`)], functions);
    const total = ({ tables }: Recomputed) => tables.find(({ name }) => name === 'Cost')?.rows.at(-1)?.[2];
    expect(total(more)).toBe(Number(total(done)) + 10);
    const wrong = await recompute(writeBook(before), [readChange(`${at}=plenty`)], functions);
    expect(wrong.wrong.some(({ what }) => what.includes('plenty'))).toBe(true);
  }, 120_000);

  it('keeps the drop-down lists of a workbook that was changed in the grid', async () => {
    const small = smallFile();
    const rulesOf = ({ sheets }: Book) => sheets.map(({ rules }) => rules);
    const { book } = await recompute(small, [], functions, () => Promise.resolve(true));
    expect(rulesOf(book)).toEqual(rulesOf(readBook(small).book));
    expect(rulesOf(book).flat().length).toBeGreaterThan(5);
  }, 60_000);

  it('keeps what a formula of one cell means, and lets one of a table spill', async () => {
    const rows = [
      '<row r="1"><c r="A1"><v>10</v></c></row>',
      '<row r="2"><c r="A2"><v>20</v></c><c r="B2"><f>A1:A3*2</f><v>40</v></c>',
      '<c r="C2"><f t="shared" ref="C2:C3" si="0">SUM(A1:A3+1)</f></c><c r="D2" cm="1"><f t="array" ref="D2:D4">A1:A3*2</f></c></row>',
      '<row r="3"><c r="A3"><v>30</v></c><c r="C3"><f t="shared" si="0"/></c></row>',
    ];
    const { book } = readBook(packageOf(`<sheetData>${rows.join('')}</sheetData>`));
    const { workbook } = await workOut(gridOfBook(book, 'One', 'one'), functions);
    const after = bookOfGrid(workbook);
    const values = after.sheets[0]?.cells.filter(({ column }) => column > 0);
    // As the office suite works them out, which takes of a range what stands in the formula's own row.
    expect(values?.map(({ row, column, value }) => [cellAddress(row, column), value])).toEqual([
      ...[
        ['B2', 40],
        ['C2', 21],
        ['D2', 20],
        ['C3', 31],
        ['D3', 40],
        ['D4', 60],
      ],
    ]);
    const written = strFromU8(unzipSync(writeBook(after))['xl/worksheets/sheet1.xml'] ?? new Uint8Array());
    expect(written).toContain('<c r="B2"><f>A1:A3*2</f><v>40</v></c>');
    expect(written).toContain('<c r="C3"><f>SUM(A2:A4+1)</f><v>31</v></c>');
    expect(written).toContain('cm="1"><f t="array" ref="D2:D4">A1:A3*2</f>');
  });

  it('says which sheet or cell a change does not find', async () => {
    await expect(recompute(writeBook(before), [readChange('Nowhere!A1=1')], functions)).rejects.toThrow(
      /no sheet "Nowhere"; it has Run/,
    );
    expect(() => readChange('D5=4')).toThrow(/names no cell/);
    expect(readChange("'Bottom stock'!$B$2=Cork 6")).toEqual({
      sheet: 'Bottom stock',
      row: 1,
      column: 1,
      content: 'Cork 6',
    });
  });
});

/** A blank text is a blank cell in a file. */
function withoutBlankText(sheet: Book['sheets'][number]): Book['sheets'][number] {
  const cells = sheet.cells.map(({ value, ...cell }) =>
    value === '' || value === undefined ? cell : { ...cell, value },
  );
  return { ...sheet, cells };
}

describe('recompute of one file after the other', () => {
  it('lets go of the grid, of its workbook and of what was read of it', async () => {
    const held: WeakRef<object>[] = [];
    const file = smallFile();
    await recompute(file, [], functions, async (host) => {
      const tables = await host.tables();
      held.push(new WeakRef(host), ...[...tables.values()].map((rows) => new WeakRef(rows)));
      return false;
    });
    // Another one takes the place of what is kept of the last, as of the cells that a function was called with.
    await recompute(file, [readChange('Run!D5=4')], functions);
    expect(held.length).toBeGreaterThan(5);
    for (const one of held) expect(await letGo(one)).toBe(true);
  }, 60_000);
});

describe('the words of the command', () => {
  it('are files, changes and switches in any order', () => {
    expect(readArguments(['a.xlsx', '--set', 'Run!D5=4', 'b.xlsx', '--json=-', '--quiet'])).toEqual({
      files: ['a.xlsx'],
      to: 'b.xlsx',
      changes: [{ sheet: 'Run', row: 4, column: 3, content: 4 }],
      json: '-',
      watch: false,
      quiet: true,
      values: false,
    });
    expect(readArguments(['--help'])).toBeUndefined();
    expect(() => readArguments(['a.xlsx'])).toThrow(/one to write/);
    expect(() => readArguments(['a.xlsx', 'b.xlsx', '--fast'])).toThrow(/--fast is not known/);
  });
});

describe('a table on the terminal', () => {
  it('has numbers to the right in their format, days as days, and no blank columns', () => {
    const rows = [
      ['Style', 'Blank', 'Height\nmm', 'Due'],
      ['Betony', '', 9.25, 46_531],
      ['Teasel', '', 10, ''],
    ];
    // 24 May 2027 is day 46531 of the spreadsheet.
    expect(terminalTable({ name: 'Cost', at: 'Run!A9', rows, formats: [undefined, undefined, '0.0', 'd mmm'] })).toBe(
      [
        'Cost (Run!A9)',
        'Style   Height mm         Due',
        '─────────────────────────────',
        'Betony        9.3  2027-05-24',
        'Teasel       10.0',
      ].join('\n'),
    );
  });
});
