import { describe, expect, it } from 'vitest';
import { openedOnce, servedWorkbench } from './site';

/** Functions that only these tests have, associated with the stand-in runtime and described in functions.json. */
describe('a custom function in the grid', () => {
  const { open } = servedWorkbench();

  describe('in cells of its own, or that it puts back', () => {
    const opened = openedOnce(open);

    it('is typed by keyboard with help on its arguments, and gives its result', async () => {
      const { page, sheet } = opened();
      await sheet.select('F20');
      await page.keyboard.type('=solebench.layers(');
      await page.getByText('Height to reach, mm.').waitFor();
      await page.keyboard.type('45,');
      await page.getByText('Thickness of a layer as measured, mm.').waitFor();
      await page.keyboard.type('7)');
      await page.keyboard.press('Enter');
      await sheet.shows('F20', 'F20. 7. formula =SOLEBENCH.LAYERS(45,7)');
    });

    it('gets omitted arguments as null, what is left over as a list, and the invocation last', async () => {
      const { sheet } = opened();
      await sheet.enter('F24', '=SOLEBENCH.TESTARGUMENTS(A5)');
      await sheet.shows('F24', '[40,null,[],"object"]');
      await sheet.enter('F25', '=SOLEBENCH.TESTARGUMENTS("a",,TRUE,H1)');
      await sheet.shows('F25', '["a",null,[true,null],"object"]');
    });

    it('takes a decimal comma in cells and text, and says what separates arguments where semicolons do not', async () => {
      const { sheet } = opened();
      await sheet.enter('F27', '45,5');
      await sheet.enter('F28', '=SOLEBENCH.LAYERS(F27,"7,0")');
      await sheet.shows('F28', 'F28. 7. ');
      await sheet.enter('F29', '=SOLEBENCH.LAYERS(45.5;7)');
      await sheet.shows(
        'F29',
        'F29. #VALUE!. LAYERS takes 2 to 3 arguments, not 1; here a comma separates arguments and a point is the decimal mark',
      );
    });

    it('passes an error on from a cell that it reads and names that cell’s place', async () => {
      const { sheet } = opened();
      await sheet.enter('F31', '=1/0');
      await sheet.enter('F32', '=SOLEBENCH.LAYERS(F31,7)');
      await sheet.shows('F32', 'F32. #DIV/0!. height: the cell shows #DIV/0!; put that one right first');
      await sheet.enter('G32', '=IFERROR(F32,1)');
      await sheet.shows('G32', 'G32. 1.');
    });

    it('is called for each cell of a range given for one value', async () => {
      const { sheet } = opened();
      await sheet.enter('F34', '20');
      await sheet.enter('F35', 'none');
      await sheet.enter('G34', '=SOLEBENCH.LAYERS(F34:F35,7)');
      await sheet.shows('G34', 'G34. 3.');
      await sheet.shows('G35', 'G35. #VALUE!. height: "none" is not a number');
    });

    it('shows that data is on the way until its promise is kept', async () => {
      const { sheet } = opened();
      await sheet.enter('F37', '=SOLEBENCH.TESTLATER(21,1500)');
      await sheet.shows('F37', 'F37. #GETTING_DATA. The answer is being worked out.');
      await sheet.saying('F37. 42.');
      await sheet.enter('F38', '=SOLEBENCH.TESTLATER(SOLEBENCH.TESTLATER(1))+F37');
      await sheet.shows('F38', 'F38. 46.');
    });

    it('shows why its promise was broken', async () => {
      const { sheet } = opened();
      await sheet.enter('F40', '=SOLEBENCH.TESTLATER(-1)');
      await sheet.shows('F40', 'F40. #N/A. value: -1 is below 0; give more');
    });

    it('is offered while its name is typed', async () => {
      const { page, sheet } = opened();
      await sheet.select('F22');
      await page.keyboard.type('=SOLEBENCH.LAY');
      await page.getByText('Number of layers of one thickness that reach a height.').first().waitFor();
      await page.keyboard.press('Escape');
      await page.keyboard.press('Escape');
    });

    it('spills a table, and #SPILL! says what stands in its way', async () => {
      const { sheet } = opened();
      await sheet.shows('B12', 'B12. 16.0');
      await sheet.enter('B10', 'mine');
      await sheet.shows('A8', 'A8. #SPILL!. The table needs room');
      await sheet.select('B10');
      await sheet.erase();
      await sheet.shows('B12', 'B12. 16.0');
    });

    it('works formulas out again that read what a shrinking table has left', async () => {
      const { sheet } = opened();
      await sheet.shows('D3', 'D3. 30');
      await sheet.enter('A3', '2');
      await sheet.shows('D3', 'D3. 5');
      await sheet.enter('A3', '3');
      await sheet.shows('D3', 'D3. 14');
      await sheet.enter('A3', '4');
      await sheet.shows('D3', 'D3. 30');
    });

    it('shows why it failed on hover, in a line and to readers of the screen', async () => {
      const { page, sheet } = opened();
      await sheet.enter('B5', 'thin');
      const sentence = 'thickness: "thin" is not a number; enter one in mm, or such as 2.5 in';
      await sheet.shows('C5', `C5. #VALUE!. ${sentence}`);
      expect(await page.locator('#problem').textContent()).toBe(`C5 #VALUE!${sentence}`);
      await sheet.select('H20');
      expect(await page.locator('#problem').isVisible()).toBe(false);
      await sheet.hover('C5');
      await page.locator('.cell-problem', { hasText: sentence }).waitFor();
      await sheet.enter('B5', '8');
      await sheet.shows('C5', 'C5. 5.');
      await sheet.hover('D5');
      await sheet.hover('C5');
      await page.waitForTimeout(500);
      expect(await page.locator('.cell-problem').count()).toBe(0);
    });
  });

  it('is asked once by cells that wait for the same, and told when none waits any longer', async () => {
    const { page, sheet } = await open();
    const calls = () => page.evaluate(() => window.testCalls);
    await sheet.enter('F5', '=SOLEBENCH.TESTLATER(1,60000)');
    await sheet.enter('F6', '=SOLEBENCH.TESTLATER(1,60000)');
    await sheet.shows('F6', '#GETTING_DATA');
    expect((await calls()).later).toBe(1);
    await sheet.enter('F5', '=SOLEBENCH.TESTLATER(2,60000)');
    await sheet.shows('F5', '#GETTING_DATA');
    expect(await calls()).toEqual({ later: 2, cancelled: [] });
    await sheet.select('F6');
    await sheet.erase();
    await page.waitForFunction(() => window.testCalls.cancelled.length === 1);
    expect((await calls()).cancelled).toEqual([1]);
    await sheet.enter('F5', 'nothing');
    await page.waitForFunction(() => window.testCalls.cancelled.length === 2);
  });

  it('keeps its sentence and what it waits for when rows are inserted above', async () => {
    const { page, sheet } = await open();
    await sheet.enter('F9', '=SOLEBENCH.LAYERS(0,7)');
    await sheet.enter('F10', '=SOLEBENCH.TESTLATER(5,3000)');
    await sheet.shows('F10', '#GETTING_DATA');
    await page.evaluate(() => window.workbench.spreadsheet.api.getActiveWorkbook()?.getActiveSheet().insertRows(5, 2));
    await sheet.shows('F11', 'F11. #VALUE!. height: 0 is not possible');
    await sheet.shows('F12', 'F12. 10.');
    expect(await page.evaluate(() => window.testCalls.later)).toBe(1);
  });
});
