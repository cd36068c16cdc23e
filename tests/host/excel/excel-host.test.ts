import { beforeEach, describe, expect, it, vi } from 'vitest';
import { ExcelHost } from '../../../src/host/excel/excel-host';
import { demo } from '../../../src/workbook/demo';
import type { WorkbookPlan } from '../../../src/workbook/workbook';
import { tableCells } from '../../demo-cells';
import { run } from '../../../src/host/excel/run';
import type { SheetPlan } from '../../../src/workbook/workbook';
import { Suite } from './suite';

/** The sheet with a row and a size more in its table. */
function grown(sheet: SheetPlan): SheetPlan {
  const below = sheet.cells.map((cell) => (cell.row > 4 ? { ...cell, row: cell.row + 1 } : cell));
  return {
    ...sheet,
    cells: [
      ...below.map((cell) => (cell.formula === '=SUM(B4:B5)' ? { ...cell, formula: '=SUM(B4:B6)' } : cell)),
      { row: 2, column: 2, role: 'heading', value: 37, align: 'right' },
      { row: 5, column: 0, role: 'input', value: 'Yarrow' },
      { row: 5, column: 2, role: 'input', value: 3 },
    ],
    tables: sheet.tables.map((table) => ({ ...table, area: { ...table.area, rows: 4, columns: 3 } })),
  };
}

const small: WorkbookPlan = {
  name: 'Small run',
  sheets: [
    {
      name: 'Run',
      kind: 'run',
      cells: [
        { row: 0, column: 0, role: 'title', value: 'Small run' },
        { row: 2, column: 0, role: 'heading', value: 'Style' },
        { row: 2, column: 1, role: 'heading', value: 36, align: 'right' },
        { row: 3, column: 0, role: 'input', value: 'Mar 3' },
        { row: 3, column: 1, role: 'input', value: 5, align: 'right', format: '0' },
        { row: 4, column: 0, role: 'input' },
        { row: 4, column: 1, role: 'input', align: 'right', format: '0' },
        { row: 5, column: 1, role: 'total', formula: '=SUM(B4:B5)', format: '0' },
        { row: 7, column: 0, role: 'heading', formula: '=SOLEBENCH.ORDER({Pairage},{Bottom stock})' },
      ],
      tables: [{ name: 'Pairage', area: { row: 2, column: 0, rows: 3, columns: 2 } }],
      results: [
        {
          area: { row: 7, column: 0, rows: 10, columns: 2 },
          columns: [{ align: 'left' }, { align: 'right', format: '0.0' }],
          total: true,
        },
      ],
      lists: [{ area: { row: 3, column: 0, rows: 2, columns: 1 }, choices: ['Cork 6'], codesOf: 'Bottom stock' }],
      widths: [120, 80],
      heights: { 0: 36 },
      frozen: { rows: 2, columns: 0 },
    },
    {
      name: 'Bottom stock',
      kind: 'inputs',
      cells: [
        { row: 0, column: 0, role: 'heading', value: 'Stock' },
        { row: 0, column: 1, role: 'heading', value: 'Way' },
        { row: 1, column: 0, role: 'input', value: 'Cork 6' },
        { row: 1, column: 1, role: 'input', value: 'any' },
        { row: 2, column: 0, role: 'input' },
        { row: 2, column: 1, role: 'input' },
      ],
      // Rows that are not boxed: the suite lets a table grow of itself.
      tables: [{ name: 'Bottom stock', area: { row: 0, column: 0, rows: 200, columns: 2 } }],
      results: [],
      lists: [{ area: { row: 1, column: 1, rows: 2, columns: 1 }, choices: ['any', 'half'] }],
      widths: [],
      heights: {},
      frozen: { rows: 1, columns: 1 },
    },
    {
      name: 'Pieces',
      kind: 'results',
      cells: [],
      tables: [],
      results: [],
      lists: [],
      widths: [],
      heights: {},
      frozen: { rows: 0, columns: 0 },
    },
  ],
};

// 1.9 is what the pane asks for, Excel 2021 ends at 1.14, 1.17 tells of sheets' new names.
describe.each([9, 14, 16, 20])('the office suite, ExcelApi 1.%i, as a host', (excelApi) => {
  let suite: Suite;
  let host: ExcelHost;
  const ask = vi.fn<(question: string) => Promise<boolean>>();
  beforeEach(() => {
    suite = new Suite(['Sheet1']);
    suite.excelApi = excelApi;
    suite.install();
    ask.mockReset();
    ask.mockResolvedValue(true);
    host = new ExcelHost(ask);
  });
  const looks = (sheet: string, path: string) => suite.sheet(sheet).looks.filter((look) => look.path === path);

  describe('loading a plan', () => {
    it('makes its sheets beside the maker’s own, with values, formulas and tables by name', async () => {
      expect(await host.load(small)).toBe(true);
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Run', 'Bottom stock', 'Pieces']);
      expect(suite.cell('Run', 3, 1)).toEqual({ value: 5, numberFormat: '0' });
      expect(suite.tables.map(({ name, area, sheet }) => [name, sheet.name, area])).toEqual([
        ['PairageTable', 'Run', { row: 2, column: 0, rows: 3, columns: 2 }],
        ['BottomStockTable', 'Bottom stock', { row: 0, column: 0, rows: 3, columns: 2 }],
      ]);
      expect(suite.cell('Run', 7, 0).formula).toBe(
        '=SOLEBENCH.ORDER(PairageTable[#All],IF(BottomStockTable[#All]="","",BottomStockTable[#All]))',
      );
      expect(suite.cell('Run', 5, 1)).toEqual({ formula: '=SUM(B4:B5)', numberFormat: '0' });
      expect(suite.active?.sheet.name).toBe('Run');
      expect(ask).not.toHaveBeenCalled();
    });

    it('keeps text as text that the suite would take for a day or a number', async () => {
      await host.load(small);
      expect(suite.cell('Run', 3, 0).value).toBe('Mar 3');
      expect(suite.cell('Run', 2, 1).value).toBe('36');
      expect(suite.cell('Bottom stock', 1, 0).value).toBe('Cork 6');
    });

    it('boxes what is to be filled in, tints what is worked out, and only as far as it reaches', async () => {
      await host.load(small);
      expect(looks('Run', 'format.borders.InsideVertical.style')).toEqual([
        { area: { row: 3, column: 0, rows: 2, columns: 2 }, path: expect.any(String), value: 'Continuous' },
      ]);
      const body = { row: 8, column: 0, rows: 9, columns: 2 };
      expect(looks('Run', 'conditional.rule.formula')).toEqual([
        { area: body, path: expect.any(String), value: '=AND(COUNTA($A9:$B9)>0,COUNTA($A10:$B10)=0)' },
        { area: body, path: expect.any(String), value: '=COUNTA($A9:$B9)>0' },
      ]);
      expect(looks('Run', 'conditional.fill.color')).toHaveLength(1);
      expect(looks('Run', 'format.fill.color').some(({ area }) => area.row >= 8)).toBe(false);
      expect(suite.cell('Run', 9, 1).numberFormat).toBe('0.0');
    });

    it('offers lists without forbidding other words, and codes as they stand in their table', async () => {
      await host.load(small);
      expect(looks('Run', 'dataValidation.rule')[0]?.value).toEqual({
        list: { inCellDropDown: true, source: "='Bottom stock'!$A$2:$A$3" },
      });
      expect(looks('Bottom stock', 'dataValidation.rule')[0]?.value).toEqual({
        list: { inCellDropDown: true, source: 'any,half' },
      });
      for (const sheet of ['Run', 'Bottom stock']) {
        expect(looks(sheet, 'dataValidation.errorAlert')[0]?.value).toMatchObject({ showAlert: false });
      }
    });

    it('sets widths and heights in points, freezes headings, takes grid lines away, and sets up print', async () => {
      await host.load(small);
      expect(looks('Run', 'format.columnWidth').map(({ value }) => value)).toEqual([90, 60]);
      expect(looks('Run', 'format.rowHeight').map(({ value }) => value)).toEqual([27]);
      const { settings } = suite.sheet('Run');
      expect(settings).toMatchObject({ showGridlines: false, 'freezePanes.freezeRows': [2], titleRows: '$1:$2' });
      expect(settings['pageLayout.orientation']).toBe('Landscape');
      expect(suite.sheet('Bottom stock').settings).toHaveProperty(['freezePanes.freezeAt']);
      expect([suite.sheet('Pieces'), suite.sheet('Run')].map((one) => one.settings['tabColor'])).toEqual([
        '#6B797E',
        undefined,
      ]);
    });

    it('writes all of it in one exchange, with calculation at rest', async () => {
      const before = suite.syncs;
      await host.load(demo);
      // Reading what is there, once for the question and once more before the change; settings; the change; its note; print.
      expect(suite.syncs - before).toBeLessThanOrEqual(13);
      expect(suite.suspended).toBe(1);
      expect(suite.sheets.length).toBe(1 + demo.sheets.length);
    });

    it('twice, replaces what its own sheets hold, and nothing else', async () => {
      suite.set('Sheet1', 0, 0, { value: 'mine' });
      await host.load(small);
      const ids = [...suite.sheets, ...suite.tables].map(({ id }) => id);
      const dressed = suite.sheet('Run').looks.length;
      await host.load(small);
      expect([...suite.sheets, ...suite.tables].map(({ id }) => id)).toEqual(ids);
      expect(suite.undoEnds).toEqual([]);
      // Looks take the place of those before.
      expect(suite.sheet('Run').looks.length).toBeLessThan(dressed + 20);
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Run', 'Bottom stock', 'Pieces']);
      expect(suite.tables.map(({ name }) => name)).toEqual(['PairageTable', 'BottomStockTable']);
      expect(suite.cell('Sheet1', 0, 0).value).toBe('mine');
      expect(ask).not.toHaveBeenCalled();
    });

    it('replaces its own sheets when they are all that the workbook has', async () => {
      await host.load(small);
      suite.sheets.splice(0, 1);
      await host.load(small);
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Run', 'Bottom stock', 'Pieces']);
    });

    it('leaves sheets and tables of the same name alone that it did not make', async () => {
      suite.addSheet('run');
      suite.set('run', 0, 0, { value: 'mine' });
      suite.addTable(suite.sheet('run'), 'pairagetable', { row: 5, column: 0, rows: 2, columns: 1 });
      suite.names.push('BottomStockTable');
      await host.load(small);
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'run', 'Run 2', 'Bottom stock', 'Pieces']);
      expect(suite.cell('run', 0, 0).value).toBe('mine');
      expect(suite.cell('Run 2', 7, 0).formula).toBe(
        '=SOLEBENCH.ORDER(PairageTable2[#All],IF(BottomStockTable2[#All]="","",BottomStockTable2[#All]))',
      );
    });

    it.each([
      ['an input', () => suite.set('Run', 4, 1, { value: 7 })],
      ['a note beside the tables', () => suite.set('Pieces', 30, 9, { value: 'ask Lock Lane' })],
      ['a formula of the maker’s own', () => suite.set('Run', 20, 9, { formula: '=1+1' })],
    ])('asks before it replaces sheets in which the maker has entered %s', async (_what, enter) => {
      await host.load(small);
      enter();
      ask.mockResolvedValue(false);
      expect(await host.load(demo)).toBe(false);
      expect(ask.mock.calls[0]?.[0]).toMatch(
        /“Run”, “Bottom stock”, “Pieces” hold what you have entered\. “Midsummer run”/,
      );
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Run', 'Bottom stock', 'Pieces']);
      ask.mockResolvedValue(true);
      expect(await host.load(demo)).toBe(true);
      expect(new Set(suite.sheets.map(({ name }) => name))).toEqual(
        new Set(['Sheet1', ...demo.sheets.map(({ name }) => name)]),
      );
    });

    it('does not ask because results came out otherwise', async () => {
      await host.load(small);
      suite.set('Run', 8, 0, { value: 'Cork 6', spilledFrom: { row: 7, column: 0 } });
      await host.load(small);
      expect(ask).not.toHaveBeenCalled();
    });

    it('takes a copy of its sheet that the maker made for the maker’s own', async () => {
      await host.load(small);
      const copy = suite.addSheet('Run (2)');
      copy.cells = new Map(suite.sheet('Run').cells);
      await host.load(small);
      expect(suite.sheets.map(({ name }) => name)).toContain('Run (2)');
    });

    it('finds its tables again under other names, and leaves them those', async () => {
      await host.load(small);
      suite.rename(suite.tables[0]!, 'Junes');
      await host.load(small);
      expect(suite.tables.map(({ name }) => name)).toEqual(['Junes', 'BottomStockTable']);
      expect(suite.cell('Run', 7, 0).formula).toContain('ORDER(Junes[#All],');
    });

    it('finds its sheets again the next time, when their ids are others, and under other names where it can mark them', async () => {
      await host.load(small);
      suite.reopen();
      await host.load(small);
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Run', 'Bottom stock', 'Pieces']);
      suite.rename(suite.sheet('Run'), 'June');
      suite.reopen();
      await host.load(small);
      const marked = excelApi >= 12;
      expect(ask).toHaveBeenCalledTimes(marked ? 0 : 1);
      expect(suite.sheets.map(({ name }) => name)).toEqual([
        'Sheet1',
        'June',
        'Bottom stock',
        'Pieces',
        ...(marked ? [] : ['Run']),
      ]);
      expect(suite.sheet('June').cells.size).toBeGreaterThan(0);
    });

    it('keeps references of the maker’s own to its sheets and tables', async () => {
      await host.load(small);
      const own = ['=SUM(PairageTable[36])', "='Bottom stock'!A2", '=COUNTA(Run!A:A)'];
      own.forEach((formula, row) => suite.set('Sheet1', row, 0, { formula }));
      await host.load(small);
      await host.load({ ...small, sheets: small.sheets.map((one) => (one.name === 'Run' ? grown(one) : one)) });
      const lost = excelApi < 13;
      expect(own.map((_, row) => suite.cell('Sheet1', row, 0).formula)).toEqual([
        lost ? '=SUM(#REF![36])' : own[0],
        own[1],
        own[2],
      ]);
      expect(ask.mock.calls.map(([question]) => question)).toEqual(
        lost ? [expect.stringMatching(/^This version of Excel makes tables on “Run”, .* anew: .* #REF!/)] : [],
      );
      expect(await host.tablePlace('Pairage')).toEqual({ sheet: 'Run', row: 2, column: 0, rows: 4, columns: 3 });
      expect(suite.cell('Run', 6, 1).formula).toBe('=SUM(B4:B6)');
    });

    it('puts its tables back where the plan has them, when the maker has moved them', async () => {
      await host.load(small);
      const whole = { row: 0, column: 0, rows: 2, columns: 16_384 };
      await run(async (context) => {
        const sheet = context.workbook.worksheets.getItem('Run');
        sheet.getRangeByIndexes(0, 0, whole.rows, whole.columns).insert('Down');
        sheet.getRangeByIndexes(0, 0, 1_048_576, 1).insert('Right');
        await context.sync();
      });
      expect(suite.tables[0]!.area).toEqual({ row: 4, column: 1, rows: 3, columns: 2 });
      await host.load(small);
      expect(suite.tables[0]!.area).toEqual({ row: 2, column: 0, rows: 3, columns: 2 });
      expect(
        [...suite.sheet('Run').cells]
          .filter(([, { value, formula }]) => value ?? formula)
          .map(([key]) => key)
          .sort(),
      ).toEqual(['0,0', '2,0', '2,1', '3,0', '3,1', '5,1', '7,0']);
    });

    it('says before that undo ends, where the suite undoes nothing of it', async () => {
      await host.load(small);
      suite.set('Run', 4, 1, { value: 7 });
      await host.load(small);
      suite.lacking.add('ExcelUndoApiAll 1.0');
      suite.set('Run', 4, 1, { value: 7 });
      await host.load(small);
      expect(ask.mock.calls.map(([question]) => question)).toEqual([
        expect.stringContaining('Excel’s Undo goes back step by step.'),
        expect.stringContaining('Excel cannot bring them back, nor undo what you did before.'),
      ]);
    });

    it('lets a sheet go that the plan no longer has', async () => {
      await host.load(small);
      suite.set('Pieces', 0, 0, { value: 'mine now' });
      await host.load({ ...small, sheets: small.sheets.slice(0, 2) });
      expect(suite.cell('Pieces', 0, 0).value).toBe('mine now');
      expect(ask).toHaveBeenCalledTimes(1);
      await host.load(small);
      expect(suite.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Run', 'Bottom stock', 'Pieces', 'Pieces 2']);
    });

    it('says what to do where the workbook is protected', async () => {
      suite.refuse = 'AccessDenied';
      await expect(host.load(small)).rejects.toThrow('is protected. Take its protection off');
    });
  });

  describe('tables', () => {
    it('are read with their headings, blanks as null', async () => {
      await host.load(small);
      expect(Object.fromEntries(await host.tables())).toEqual({
        Pairage: [
          ['Style', '36'],
          ['Mar 3', 5],
          [null, null],
        ],
        'Bottom stock': [
          ['Stock', 'Way'],
          ['Cork 6', 'any'],
          [null, null],
        ],
      });
    });

    it('of the demo come back as the plan has them', async () => {
      await host.load(demo);
      const found = await host.tables();
      for (const [name, cells] of Object.entries(tableCells(demo))) {
        const back = found.get(name)!;
        cells.forEach((row, at) => {
          row.forEach((cell, column) => {
            // A sum that the suite works out stands in the plan as a formula.
            const shown = back[at]?.[column];
            if (cell !== '') expect(String(shown), `${name} ${at} ${column}`).toBe(String(cell));
          });
        });
      }
    });

    it('have a place, and none where the workbook has no such table', async () => {
      await host.load(small);
      expect(await host.tablePlace('Pairage')).toEqual({ sheet: 'Run', row: 2, column: 0, rows: 3, columns: 2 });
      expect(await host.tablePlace('Shelf')).toBeUndefined();
      suite.tables = [];
      expect(await host.tablePlace('Pairage')).toBeUndefined();
      expect((await host.tables()).size).toBe(0);
    });

    it('of a workbook that came as a file are found by their names, and are not taken for its own', async () => {
      suite.addTable(suite.sheet('Sheet1'), 'LastsTable', { row: 0, column: 0, rows: 2, columns: 1 });
      suite.set('Sheet1', 0, 0, { value: 'Last' });
      suite.set('Sheet1', 1, 0, { value: 'Low 12' });
      expect(Object.fromEntries(await host.tables())).toEqual({ Lasts: [['Last'], ['Low 12']] });
      await host.load(demo);
      expect(suite.sheet('Sheet1').cells.size).toBe(2);
      expect((await host.tablePlace('Lasts'))?.sheet).toBe('Lasts');
      expect(suite.tables.map(({ name }) => name)).toContain('LastsTable2');
      await host.load(demo);
      expect(suite.tables.map(({ name }) => name)).toContain('LastsTable');
      expect(ask).not.toHaveBeenCalled();
    });

    it('are written in one block, shorter ones with blanks below', async () => {
      await host.load(small);
      await host.writeTable('Bottom stock', [['Foam 10', null]]);
      expect((await host.tables()).get('Bottom stock')).toEqual([
        ['Stock', 'Way'],
        ['Foam 10', null],
        [null, null],
      ]);
    });

    it('grow by whole rows, so that what stands below moves along', async () => {
      await host.load(small);
      await host.writeTable('Pairage', [
        ['A', 1],
        ['B', 2],
        ['C', 3],
        ['1-2', '=1+1'],
      ]);
      expect(await host.tablePlace('Pairage')).toMatchObject({ row: 2, rows: 5 });
      expect(suite.cell('Run', 6, 0).value).toBe('1-2');
      expect(suite.cell('Run', 6, 1).formula).toBe('=1+1');
      expect(suite.cell('Run', 9, 0).formula).toContain('SOLEBENCH.ORDER');
    });

    it('refuse a block that is too wide, a table that is not there, and cells of another kind', async () => {
      await host.load(small);
      await expect(host.writeTable('Pairage', [[1, 2, 3]])).rejects.toThrow(
        'The table "Pairage" has 2 columns; a row of 3 does not fit.',
      );
      await expect(host.writeTable('Shelf', [])).rejects.toThrow('The workbook has no table "Shelf".');
      await expect(host.writeTable('Pairage', [[{}]])).rejects.toThrow(
        'A cell takes a number, text, or true or false.',
      );
    });
  });

  it('puts a sheet behind those that are there, under a name that is free, and takes no other away', async () => {
    await host.load(small);
    const sheet: SheetPlan = {
      ...small.sheets[0]!,
      name: 'What if',
      cells: [
        { row: 0, column: 0, role: 'title', value: 'What if' },
        { row: 1, column: 0, role: 'result', align: 'right', format: '0.00', value: 14.5 },
      ],
      tables: [],
      results: [],
      lists: [],
    };
    expect(await host.addSheet(sheet)).toBe('What if');
    expect(await host.addSheet(sheet)).toBe('What if 2');
    expect(suite.cell('What if', 1, 0).value).toBe(14.5);
    expect(suite.cell('What if 2', 0, 0).value).toBe('What if');
    expect((await host.tables()).get('Pairage')?.[1]).toBeDefined();
  });

  it('writes single cells on several sheets, as they are typed, and leaves their neighbours', async () => {
    await host.load(small);
    await host.writeCells([
      { sheet: 'Run', row: 3, column: 0, value: '1-2' },
      { sheet: 'Bottom stock', row: 1, column: 0, value: 'Cork 7' },
    ]);
    expect((await host.tables()).get('Pairage')?.[1]).toEqual(['1-2', 5]);
    expect((await host.tables()).get('Bottom stock')?.[1]).toEqual(['Cork 7', 'any']);
    expect(suite.cell('Run', 5, 1).formula).toBe('=SUM(B4:B5)');
  });

  it('writes cells of several tables at once, and lets those grow that are too short', async () => {
    await host.load(small);
    const before = (await host.tables()).get('Pairage') ?? [];
    await host.writeTableCells([
      { table: 'Pairage', row: 1, column: 1, value: 9 },
      { table: 'Pairage', row: before.length, column: 0, value: '1-2' },
      { table: 'Pairage', row: before.length + 1, column: 1, value: 4 },
      { table: 'Bottom stock', row: 1, column: 1, value: '' },
    ]);
    const last = before.length - 1;
    // New rows come before the last, which stays the last.
    expect((await host.tables()).get('Pairage')).toEqual([
      ...before.slice(0, 1),
      [before[1]![0], 9],
      ...before.slice(2, last),
      ['1-2', null],
      [null, 4],
      before[last],
    ]);
    expect((await host.tables()).get('Bottom stock')?.[1]?.[1]).toBeNull();
  });

  it('writes none of the cells where one of the tables is not there', async () => {
    await host.load(small);
    const before = await host.tables();
    const writing = host.writeTableCells([
      { table: 'Pairage', row: 1, column: 1, value: 9 },
      { table: 'Shelf', row: 1, column: 1, value: 9 },
    ]);
    await expect(writing).rejects.toThrow('The workbook has no table "Shelf"; load the tables again to have it.');
    expect(await host.tables()).toEqual(before);
  });

  describe('the selection', () => {
    beforeEach(() => host.load(small));

    it('is a cell with its value, text and formula', async () => {
      suite.active = { sheet: suite.sheet('Run'), area: { row: 5, column: 1, rows: 2, columns: 3 } };
      suite.set('Run', 5, 1, { formula: '=SUM(B4:B5)', value: 5 });
      expect(await host.selection()).toEqual({
        sheet: 'Run',
        row: 5,
        column: 1,
        rows: 2,
        columns: 3,
        address: 'B6',
        value: 5,
        text: '5',
        formula: '=SUM(B4:B5)',
        problem: undefined,
      });
    });

    it('has no formula where a table spills over it, and a blank cell no value', async () => {
      suite.excelApi = Math.max(12, excelApi);
      suite.set('Run', 8, 0, { value: 'Cork 6', formula: '=X', spilledFrom: { row: 7, column: 0 } });
      suite.active = { sheet: suite.sheet('Run'), area: { row: 8, column: 0, rows: 1, columns: 1 } };
      expect(await host.selection()).toMatchObject({ value: 'Cork 6', formula: undefined });
      suite.active.area = { row: 20, column: 0, rows: 1, columns: 1 };
      expect(await host.selection()).toMatchObject({ value: null, text: '', formula: undefined });
      suite.excelApi = 11;
      suite.active.area = { row: 8, column: 0, rows: 1, columns: 1 };
      expect(await host.selection()).toMatchObject({ formula: '=X' });
    });

    it('knows from where a table spills over it, and with which formula', async () => {
      suite.excelApi = Math.max(12, excelApi);
      suite.set('Sheet1', 0, 0, { value: 'Sheets', formula: '=SOLEBENCH.ORDER(A9)' });
      suite.set('Sheet1', 1, 0, { value: 3, spilledFrom: { row: 0, column: 0 } });
      suite.active = { sheet: suite.sheet('Sheet1'), area: { row: 1, column: 0, rows: 1, columns: 1 } };
      expect((await host.selection())?.spilledFrom).toEqual({ row: 0, column: 0, formula: '=SOLEBENCH.ORDER(A9)' });
    });

    it('reads what a formula refers to, by cells and by the name of a table', async () => {
      suite.set('Sheet1', 1, 1, { value: 7 });
      const area = { sheet: 'Sheet1', row: 1, column: 1, rows: 1, columns: 2 };
      expect(await host.read({ kind: 'cells', ...area })).toEqual({ place: area, cells: [[7, null]] });
      await host.load(small);
      const name = suite.tables[0]!.name;
      const table = await host.read({ kind: 'table', table: name, part: 'all' });
      expect(table?.cells).toEqual([...(await host.tables()).values()][0]);
      expect(await host.read({ kind: 'table', table: 'Nothing', part: 'all' })).toBeUndefined();
    });

    it('says what an error means and where the suite tells more', async () => {
      suite.active = { sheet: suite.sheet('Run'), area: { row: 7, column: 0, rows: 1, columns: 1 } };
      for (const [value, problem] of [
        ['#VALUE!', /Point to the sign beside the cell/],
        ['#SPILL!', /needs room/],
        ['#BUSY!', /being worked out/],
        ['#NEW!', /ends in an error/],
      ] as const) {
        suite.set('Run', 7, 0, { formula: '=1', value });
        expect((await host.selection())?.problem).toMatch(problem);
      }
    });

    it('is nothing where no cell is selected', async () => {
      suite.active = undefined;
      expect(await host.selection()).toBeUndefined();
      await expect(host.insertFormula('=1')).rejects.toThrow('No cell is selected');
    });

    it('goes to a cell of another sheet, one that is hidden too, and says where there is none', async () => {
      suite.sheet('Bottom stock').visibility = 'Hidden';
      await host.select({ sheet: 'Bottom stock', row: 1, column: 1 });
      expect(suite.active).toEqual({
        sheet: suite.sheet('Bottom stock'),
        area: { row: 1, column: 1, rows: 1, columns: 1 },
      });
      expect(suite.sheet('Bottom stock').visibility).toBe('Visible');
      await expect(host.select({ sheet: 'Shelf', row: 0, column: 0 })).rejects.toThrow('no sheet "Shelf"');
    });

    it('takes a formula, and nothing that is none', async () => {
      suite.active = { sheet: suite.sheet('Sheet1'), area: { row: 4, column: 5, rows: 1, columns: 1 } };
      await host.insertFormula('=SOLEBENCH.LAYERS(50,7)');
      expect(suite.cell('Sheet1', 4, 5).formula).toBe('=SOLEBENCH.LAYERS(50,7)');
      suite.tables[1]!.name = 'Shelf';
      await host.insertFormula('=SOLEBENCH.CUTTING({Pairage},{Bottom stock},{1,2})');
      expect(suite.cell('Sheet1', 4, 5).formula).toBe(
        '=SOLEBENCH.CUTTING(PairageTable[#All],IF(Shelf[#All]="","",Shelf[#All]),{1,2})',
      );
      await expect(host.insertFormula('=A({Lasts})')).rejects.toThrow('"Lasts"');
      await expect(host.insertFormula('50')).rejects.toThrow('A formula begins with "="');
    });
  });

  describe('events', () => {
    const rest = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

    const fail = (error: unknown) => {
      throw error;
    };

    it('tell of a selection once it rests, and only when it is another', async () => {
      const heard: unknown[] = [];
      const stop = host.onSelection((selection) => heard.push(selection?.address), fail);
      await rest(20);
      await suite.fire('onSelectionChanged');
      suite.active!.area = { row: 1, column: 1, rows: 1, columns: 1 };
      await suite.fire('onSelectionChanged');
      await rest(250);
      await suite.fire('onCalculated');
      await rest(250);
      expect(heard).toEqual(['B2']);
      stop();
      stop();
      await rest(20);
      expect(suite.listeners()).toBe(0);
      await suite.fire('onSelectionChanged');
      expect(heard).toHaveLength(1);
    });

    it('tell once of content that changes quickly', async () => {
      let heard = 0;
      const stop = host.onContent(() => heard++, fail);
      await rest(20);
      for (let i = 0; i < 5; i++) await suite.fire(i % 2 ? 'onChanged' : 'onCalculated');
      await rest(700);
      expect(heard).toBe(1);
      await suite.fire('onChanged');
      stop();
      await rest(700);
      expect(heard).toBe(1);
    });

    it('are heard as far as this version of the suite has them', async () => {
      const failures: unknown[] = [];
      const stop = host.onContent(
        () => undefined,
        (error) => failures.push(error),
      );
      await rest(20);
      expect([suite.listeners(), failures]).toEqual([excelApi < 17 ? 3 : 4, []]);
      stop();
      await rest(20);
      expect(suite.listeners()).toBe(0);
    });

    it('go on being heard where one of them is refused', async () => {
      suite.refuse = 'ApiNotFound';
      const failures: unknown[] = [];
      const stop = host.onContent(
        () => undefined,
        (error) => failures.push(error),
      );
      await rest(20);
      expect([suite.listeners(), failures.length]).toEqual([excelApi < 17 ? 2 : 3, 1]);
      stop();
    });

    it('tell why they cannot be heard', async () => {
      suite.refuse = 'AccessDenied';
      const failures: unknown[] = [];
      const stop = host.onContent(
        () => undefined,
        (error) => failures.push(error),
      );
      await rest(20);
      expect(failures.map(String)).toEqual([expect.stringContaining('is protected. Take its protection off')]);
      stop();
      await rest(20);
      expect(failures).toHaveLength(1);
    });

    it('tell why what is selected could not be read, and go on', async () => {
      const heard: unknown[] = [];
      const failures: unknown[] = [];
      const stop = host.onSelection(
        (selection) => heard.push(selection?.address),
        (error) => failures.push(error),
      );
      await rest(20);
      vi.spyOn(host, 'selection').mockRejectedValueOnce(new Error('Excel was busy and dropped the request.'));
      await suite.fire('onSelectionChanged');
      await rest(250);
      expect([heard, failures.map(String)]).toEqual([[], [expect.stringContaining('Excel was busy')]]);
      await suite.fire('onSelectionChanged');
      await rest(250);
      expect([heard.length, failures.length]).toEqual([1, 1]);
      stop();
    });
  });
});
