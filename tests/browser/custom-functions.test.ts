import { describe, expect, it } from 'vitest';
import { servedWorkbench } from './site';

/** Functions that only these tests have, associated with the stand-in runtime and described in functions.json. */
describe('a custom function in the grid', () => {
  const { open } = servedWorkbench();

  it('is typed by keyboard with help on its arguments, and gives its result', async () => {
    const { page, sheet } = await open();
    await sheet.select('F5');
    await page.keyboard.type('=solebench.layers(');
    await page.getByText('Height to reach, mm.').waitFor();
    await page.keyboard.type('45,');
    await page.getByText('Thickness of a layer as measured, mm.').waitFor();
    await page.keyboard.type('7)');
    await page.keyboard.press('Enter');
    await sheet.shows('F5', 'F5. 7. formula =SOLEBENCH.LAYERS(45,7)');
  });

  it('is offered while its name is typed', async () => {
    const { page, sheet } = await open();
    await sheet.select('F5');
    await page.keyboard.type('=SOLEBENCH.LAY');
    await page.getByText('Number of layers of one thickness that reach a height.').first().waitFor();
  });

  it('gets omitted arguments as null, what is left over as a list, and the invocation last', async () => {
    const { sheet } = await open();
    await sheet.enter('F5', '=SOLEBENCH.TESTARGUMENTS(A5)');
    await sheet.shows('F5', '[40,null,[],"object"]');
    await sheet.enter('F6', '=SOLEBENCH.TESTARGUMENTS("a",,TRUE,H1)');
    await sheet.shows('F6', '["a",null,[true,null],"object"]');
  });

  it('takes a decimal comma in cells and text, and says what separates arguments where semicolons do not', async () => {
    const { sheet } = await open();
    await sheet.enter('F5', '45,5');
    await sheet.enter('F6', '=SOLEBENCH.LAYERS(F5,"7,0")');
    await sheet.shows('F6', 'F6. 7. ');
    await sheet.enter('F7', '=SOLEBENCH.LAYERS(45.5;7)');
    await sheet.shows(
      'F7',
      'F7. #VALUE!. LAYERS takes 2 to 3 arguments, not 1; here a comma separates arguments and a point is the decimal mark',
    );
  });

  it('spills a table, and #SPILL! says what stands in its way', async () => {
    const { sheet } = await open();
    await sheet.shows('B12', 'B12. 16.0');
    await sheet.enter('B10', 'mine');
    await sheet.shows('A8', 'A8. #SPILL!. The table needs room');
    await sheet.select('B10');
    await sheet.erase();
    await sheet.shows('B12', 'B12. 16.0');
  });

  it('works formulas out again that read what a shrinking table has left', async () => {
    const { sheet } = await open();
    await sheet.shows('D3', 'D3. 30');
    await sheet.enter('A3', '2');
    await sheet.shows('D3', 'D3. 5');
    await sheet.enter('A3', '3');
    await sheet.shows('D3', 'D3. 14');
  });

  it('shows why it failed on hover, in a line and to readers of the screen', async () => {
    const { page, sheet } = await open();
    await sheet.enter('B5', 'thin');
    const sentence = 'thickness: "thin" is not a number; enter one in mm';
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

  it('passes an error on from a cell that it reads and names that cell’s place', async () => {
    const { sheet } = await open();
    await sheet.enter('F5', '=1/0');
    await sheet.enter('F6', '=SOLEBENCH.LAYERS(F5,7)');
    await sheet.shows('F6', 'F6. #DIV/0!. height: the cell shows #DIV/0!; put that one right first');
    await sheet.enter('G6', '=IFERROR(F6,1)');
    await sheet.shows('G6', 'G6. 1.');
  });

  it('is called for each cell of a range given for one value', async () => {
    const { sheet } = await open();
    await sheet.enter('F5', '20');
    await sheet.enter('F6', 'none');
    await sheet.enter('G5', '=SOLEBENCH.LAYERS(F5:F6,7)');
    await sheet.shows('G5', 'G5. 3.');
    await sheet.shows('G6', 'G6. #VALUE!. height: "none" is not a number');
  });

  it('shows that data is on the way until its promise is kept', async () => {
    const { sheet } = await open();
    await sheet.enter('F5', '=SOLEBENCH.TESTLATER(21,1500)');
    await sheet.shows('F5', 'F5. #GETTING_DATA. The answer is being worked out.');
    await sheet.saying('F5. 42.');
    await sheet.enter('F6', '=SOLEBENCH.TESTLATER(SOLEBENCH.TESTLATER(1))+F5');
    await sheet.shows('F6', 'F6. 46.');
  });

  it('shows why its promise was broken', async () => {
    const { sheet } = await open();
    await sheet.enter('F5', '=SOLEBENCH.TESTLATER(-1)');
    await sheet.shows('F5', 'F5. #N/A. value: -1 is below 0; give more');
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
