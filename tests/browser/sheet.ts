import type { Page } from 'playwright-core';

/** Works a sheet as a maker does: with the name box, the keyboard and what the page says of the selected cell. */
export class Sheet {
  constructor(private readonly page: Page) {}

  /** Selects a cell, or cells such as A1:B2, by the box that names the selected one. */
  async select(address: string): Promise<void> {
    const box = this.page.locator('#grid input[type="text"], #grid input:not([type])').first();
    await box.click();
    await box.fill(address);
    await box.press('Enter');
    await this.page.waitForFunction(
      (first) => document.getElementById('said')?.textContent?.startsWith(first),
      address.replace(/:.*/, ''),
    );
  }

  /** Types into the selected cell and moves down. */
  async type(text: string): Promise<void> {
    await this.page.keyboard.type(text);
    await this.page.keyboard.press('Enter');
  }

  async enter(address: string, text: string): Promise<void> {
    await this.select(address);
    await this.type(text);
  }

  /** Empties the selected cells. */
  async erase(): Promise<void> {
    await this.page.keyboard.press('Delete');
  }

  /** Rests the pointer on a cell of the sheet's upper left part. */
  async hover(address: string): Promise<void> {
    const { x, y } = await this.page.evaluate((cell) => {
      const { api } = window.workbench.spreadsheet;
      const rect = api.getActiveWorkbook()?.getActiveSheet().getRange(cell).getCellRect();
      const { left, top, width, height } = rect ?? new DOMRect();
      // The other canvases are those of the editors.
      const boxes = [...document.querySelectorAll('#grid canvas')].map((canvas) => canvas.getBoundingClientRect());
      const canvas = boxes.reduce((largest, box) => (box.height > largest.height ? box : largest));
      return { x: canvas.left + left + width / 2, y: canvas.top + top + height / 2 };
    }, address);
    await this.page.mouse.move(x - 3, y - 3);
    await this.page.mouse.move(x, y, { steps: 3 });
  }

  /** What the page says of the selected cell. */
  async said(): Promise<string> {
    return (await this.page.locator('#said').textContent()) ?? '';
  }

  /** Selects a cell and waits until the page says of it what is expected. */
  async shows(address: string, expected: string | RegExp): Promise<void> {
    await this.select(address);
    await this.saying(expected);
  }

  /** Waits until the page says what is expected of the selected cell. */
  async saying(expected: string | RegExp): Promise<void> {
    const source = typeof expected === 'string' ? expected.replace(/[.*+?^${}()|[\]\\]/g, '\\$&') : expected.source;
    await this.page
      .waitForFunction((text) => new RegExp(text).test(document.getElementById('said')?.textContent ?? ''), source)
      .catch(async () => {
        throw new Error(`The page says "${await this.said()}", not ${expected}.`);
      });
  }
}
