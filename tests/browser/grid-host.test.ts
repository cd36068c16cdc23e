import type * as Core from '@univerjs/core';
import type * as EngineRender from '@univerjs/engine-render';
import type * as Sheets from '@univerjs/sheets';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { WorkbookPlan } from '../../src/workbook/workbook';
import { openedOnce, servedWorkbench } from './site';

const other: WorkbookPlan = {
  name: 'Autumn run',
  sheets: [
    {
      name: 'Run',
      kind: 'run',
      cells: [
        { row: 0, column: 0, role: 'title', value: 'Autumn run' },
        { row: 1, column: 0, role: 'heading', value: 'Pairs' },
        { row: 2, column: 0, role: 'input', value: 12 },
        { row: 3, column: 0, role: 'total', formula: '=SUM({Pairage})' },
      ],
      tables: [{ name: 'Pairage', area: { row: 1, column: 0, rows: 2, columns: 1 } }],
      results: [],
      lists: [{ area: { row: 2, column: 0, rows: 1, columns: 1 }, choices: ['12', '24'] }],
      widths: [],
      heights: {},
      frozen: { rows: 0, columns: 0 },
    },
  ],
};

describe('the grid as a host', () => {
  const { open } = servedWorkbench();
  const tables = (page: Page) => page.evaluate(async () => Object.fromEntries(await window.workbench.host.tables()));
  const undo = async (page: Page) => {
    await page.keyboard.press('Control+z');
    await page.waitForTimeout(600);
  };

  describe('whose changes are taken back', () => {
    const opened = openedOnce(open);

    it('reads the input tables with their headings, blanks as null', async () => {
      const { page } = opened();
      expect(await tables(page)).toEqual({
        'Lots of stock': [
          ['On hand', 'Least\nsheets'],
          [10, null],
          [20, null],
          [null, null],
          [null, null],
          [null, null],
        ],
      });
    });

    it('refuses a block that is too wide and a table that is not there', async () => {
      const { page } = opened();
      const refusal = (name: string, cells: unknown[][]) =>
        page.evaluate(
          ([table, rows]) =>
            window.workbench.host.writeTable(table, rows).then(String, (error: Error) => error.message),
          [name, cells] as const,
        );
      expect(await refusal('Lots of stock', [[1, 2, 3]])).toBe(
        'The table "Lots of stock" has 2 columns; a row of 3 does not fit.',
      );
      expect(await refusal('Shelf', [])).toBe('The workbook has no table "Shelf".');
    });

    it('puts a formula into the selected cell as one step for undo', async () => {
      const { page, sheet } = opened();
      await sheet.select('F5');
      await page.evaluate(() => window.workbench.host.insertFormula('=SOLEBENCH.LAYERS(50,7)'));
      await sheet.saying('F5. 8. formula =SOLEBENCH.LAYERS(50,7)');
      await undo(page);
      await sheet.shows('F5', 'F5. blank');
    });

    it('selects a cell on another sheet and tells of it', async () => {
      const { page } = opened();
      const heard = await page.evaluate(async () => {
        const heard: unknown[] = [];
        const stop = window.workbench.host.onSelection((selection) => heard.push(selection));
        await window.workbench.host.select({ sheet: 'Lots of stock', row: 4, column: 0 });
        await new Promise((resolve) => setTimeout(resolve, 300));
        stop();
        await window.workbench.host.select({ sheet: 'Run', row: 0, column: 0 });
        await new Promise((resolve) => setTimeout(resolve, 300));
        return heard;
      });
      expect(heard).toEqual([
        { sheet: 'Lots of stock', row: 4, column: 0, rows: 1, columns: 1, address: 'A5', value: 20, text: '20' },
      ]);
    });

    it('keeps the look of a cell into which a formula is put', async () => {
      const { page, sheet } = opened();
      await sheet.select('A5');
      await page.evaluate(() => window.workbench.host.insertFormula('=20+2'));
      await sheet.saying('A5. 22.0.');
    });

    it('finds a table where it is after rows and columns were inserted', async () => {
      const { page } = opened();
      const before = await tables(page);
      const place = await page.evaluate(async () => {
        const sheet = window.workbench.spreadsheet.api.getActiveWorkbook()?.getSheetByName('Lots of stock');
        if (!sheet) throw new Error('no sheet');
        sheet.insertRows(1, 2);
        sheet.insertColumns(0, 1);
        sheet.insertRows(7, 1);
        return window.workbench.host.tablePlace('Lots of stock');
      });
      expect(place).toEqual({ sheet: 'Lots of stock', row: 4, column: 1, rows: 7, columns: 2 });
      await page.waitForTimeout(500);
      expect((await tables(page))['Lots of stock']).toHaveLength(7);
      for (let undone = 0; undone < 3; undone++) await undo(page);
      expect(await tables(page)).toEqual(before);
    });

    it('writes a table as one step for undo, and lets it grow', async () => {
      const { page, sheet } = opened();
      const before = await tables(page);
      await page.evaluate(async () => {
        const rows = Array.from({ length: 9 }, (_, row) => [row + 1, row % 2 ? null : row]);
        await window.workbench.host.writeTable('Lots of stock', rows);
      });
      const after = (await tables(page))['Lots of stock'];
      expect(after).toHaveLength(10);
      expect(after?.slice(0, 3)).toEqual([
        ['On hand', 'Least\nsheets'],
        [1, 0],
        [2, null],
      ]);
      expect(after?.[9]).toEqual([9, 8]);
      // The sheet in sight is the one that was last written to.
      await page.evaluate(() => window.workbench.host.select({ sheet: 'Run', row: 2, column: 1 }));
      await sheet.saying('B3. 65.0');
      await undo(page);
      expect(await tables(page)).toEqual(before);
      // Undoing goes to the sheet on which something changed.
      await page.evaluate(() => window.workbench.host.select({ sheet: 'Run', row: 2, column: 1 }));
      await sheet.saying('B3. 30.0');
    });

    it('blanks the rows that a shorter block leaves', async () => {
      const { page } = opened();
      await page.evaluate(() => window.workbench.host.writeTable('Lots of stock', [[7, 1]]));
      expect((await tables(page))['Lots of stock']?.slice(1)).toEqual([[7, 1], ...Array(4).fill([null, null])]);
      await undo(page);
    });

    it('tells once of content that changed, after it has been worked out', async () => {
      const { page, sheet } = opened();
      await page.evaluate(() => {
        window.heard = [];
        const { host } = window.workbench;
        host.onContent(() => {
          host.tables().then((tables) => window.heard.push(tables.get('Lots of stock')?.[1]?.[0]), reportError);
        });
        return window.workbench.host.select({ sheet: 'Lots of stock', row: 3, column: 0 });
      });
      await sheet.saying('A4. 10');
      await sheet.type('11');
      const heard = () => page.evaluate(() => window.heard);
      await expect.poll(heard, { timeout: 10_000 }).toEqual([11]);
      await page.waitForTimeout(500);
      expect(await heard()).toEqual([11]);
      await undo(page);
    });

    it('draws a sheet anew where something in it changes, and not because it is worked out', async () => {
      const { page } = opened();
      const drawn = await page.evaluate(() => {
        const { injector } = window.workbench.spreadsheet;
        const { UniverCore, UniverEngineRender } = window as unknown as {
          readonly UniverCore: typeof Core;
          readonly UniverEngineRender: typeof EngineRender;
        };
        const commands = injector.get(UniverCore.ICommandService);
        const unitId = injector
          .get(UniverCore.IUniverInstanceService)
          .getCurrentUnitOfType(UniverCore.UniverInstanceType.UNIVER_SHEET)!
          .getUnitId();
        const { scene } = injector.get(UniverEngineRender.IRenderManagerService).getRenderById(unitId)!;
        const marked = (id: string, params: object) => {
          scene.getLayers().forEach((layer) => layer.makeDirty(false));
          commands.syncExecuteCommand(id, params, { onlyLocal: true });
          return scene.getLayers().some((layer) => layer.isDirty());
        };
        const nothing = { dirtyRanges: [], dirtyNameMap: {}, dirtyDefinedNameMap: {}, dirtyUnitFeatureMap: {} };
        return {
          begun: marked('formula.mutation.set-trigger-formula-calculation-start', {
            ...nothing,
            dirtyUnitOtherFormulaMap: {},
            clearDependencyTreeCache: {},
            forceCalculation: false,
          }),
          stopped: marked('formula.mutation.set-formula-calculation-stop', {}),
          entered: marked('sheet.mutation.set-range-values', {
            unitId,
            subUnitId: window.workbench.spreadsheet.api.getActiveWorkbook()!.getActiveSheet().getSheetId(),
            cellValue: { 0: { 20: { v: null } } },
          }),
        };
      });
      expect(drawn).toEqual({ begun: false, stopped: false, entered: true });
    });

    it('makes out once what a cell is to show when it draws a sheet anew, and not at all when nothing has changed', async () => {
      const { page } = opened();
      const asked = await page.evaluate(() => {
        const { injector } = window.workbench.spreadsheet;
        const { UniverCore, UniverEngineRender, UniverSheets } = window as unknown as {
          readonly UniverCore: typeof Core;
          readonly UniverEngineRender: typeof EngineRender;
          readonly UniverSheets: typeof Sheets;
        };
        const counts = new Map<string, number>();
        const counting = injector
          .get(UniverSheets.SheetInterceptorService)
          .intercept(UniverSheets.INTERCEPTOR_POINT.CELL_CONTENT, {
            effect: UniverCore.InterceptorEffectEnum.Style,
            priority: 1000,
            handler: (cell, { row, col }, next) => {
              counts.set(`${row}, ${col}`, (counts.get(`${row}, ${col}`) ?? 0) + 1);
              return next(cell);
            },
          });
        const unit = injector
          .get(UniverCore.IUniverInstanceService)
          .getCurrentUnitOfType(UniverCore.UniverInstanceType.UNIVER_SHEET)!;
        const { scene, mainComponent } = injector
          .get(UniverEngineRender.IRenderManagerService)
          .getRenderById(unit.getUnitId())!;
        const drawn = (): readonly number[] => {
          counts.clear();
          scene.makeDirty();
          scene.render();
          return [...counts.values()];
        };
        drawn();
        const moved = drawn();
        mainComponent!.makeDirty();
        const changed = drawn();
        counting.dispose();
        const { sheetContentViewportKeys } = UniverEngineRender;
        const parts = scene
          .getViewports()
          .filter(
            ({ isActive, viewportKey }) => isActive && (sheetContentViewportKeys as string[]).includes(viewportKey),
          );
        return { moved: moved.length, cells: changed.length, most: Math.max(...changed), parts: parts.length };
      });
      expect(asked.moved).toBe(0);
      expect(asked.cells).toBeGreaterThan(100);
      // What is frozen is a part of the sheet by itself.
      expect(asked.most).toBeLessThanOrEqual(asked.parts);
    });
  });

  it('puts a sheet behind those that are there as one step for undo', async () => {
    const { page } = await open();
    const add = () =>
      page.evaluate((plan) => window.workbench.host.addSheet(plan), {
        ...other.sheets[0]!,
        name: 'What if',
        tables: [],
        lists: [],
        cells: other.sheets[0]!.cells.slice(0, 3),
      });
    const before = await tables(page);
    expect([await add(), await add()]).toEqual(['What if', 'What if 2']);
    const there = (name: string) =>
      page.evaluate(
        (sheet) => window.workbench.host.read({ kind: 'cells', sheet, row: 2, column: 0, rows: 1, columns: 1 }),
        name,
      );
    expect((await there('What if 2'))?.cells).toEqual([[12]]);
    await undo(page);
    expect(await there('What if 2')).toBeUndefined();
    expect((await there('What if'))?.cells).toEqual([[12]]);
    expect(await tables(page)).toEqual(before);
  });

  it('writes cells of a table as one step for undo, new rows above the last', async () => {
    const { page } = await open();
    const before = await tables(page);
    const rows = before['Lots of stock']!.length;
    await page.evaluate(
      (end) =>
        window.workbench.host.writeTableCells([
          { table: 'Lots of stock', row: 1, column: 0, value: 77 },
          { table: 'Lots of stock', row: end, column: 1, value: 8 },
          { table: 'Lots of stock', row: 2, column: 0, value: '' },
        ]),
      rows,
    );
    const after = await tables(page);
    expect(after['Lots of stock']).toHaveLength(rows + 1);
    expect(after['Lots of stock']?.[1]?.[0]).toBe(77);
    expect(after['Lots of stock']?.[rows - 1]).toEqual([null, 8]);
    expect(after['Lots of stock']?.at(-1)).toEqual(before['Lots of stock']!.at(-1));
    expect(after['Lots of stock']?.[2]?.[0]).toBeNull();
    await undo(page);
    expect(await tables(page)).toEqual(before);
  });

  it('loads another workbook in the place of the first as one step for undo', async () => {
    const { page, sheet } = await open();
    const before = await tables(page);
    await sheet.enter('B5', '8');
    const loadOther = () => page.evaluate((plan) => window.workbench.host.load(plan), other);
    await loadOther();
    await sheet.shows('A4', 'A4. 12. formula =SUM(Run!$A$2:$A$3)');
    expect(await tables(page)).toEqual({ Pairage: [['Pairs'], [12]] });
    await page.waitForFunction(() => document.title.startsWith('Autumn run'));
    await sheet.enter('A3', '24');
    await sheet.shows('A4', 'A4. 24.');
    await undo(page);
    await undo(page);
    expect(await tables(page)).toEqual(before);
    await sheet.shows('C5', 'C5. 5.');
    await sheet.shows('B3', 'B3. 30.0');
    await page.waitForFunction(() => document.title.startsWith('Test run'));
    await page.keyboard.press('Control+y');
    await sheet.shows('A4', 'A4. 12.');
    await loadOther();
    await sheet.shows('A4', 'A4. 12.');
  });
});
