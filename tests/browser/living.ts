import type { Page } from 'playwright-core';

/**
 * How many objects of a kind the page holds, once all that nothing holds has been collected.
 * @param prototype what they are made after, as an expression
 */
export async function living(page: Page, prototype: string): Promise<number> {
  const session = await page.context().newCDPSession(page);
  try {
    const { result } = await session.send('Runtime.evaluate', { expression: prototype });
    const { objects } = await session.send('Runtime.queryObjects', { prototypeObjectId: result.objectId ?? '' });
    const { result: count } = await session.send('Runtime.callFunctionOn', {
      objectId: objects.objectId ?? '',
      functionDeclaration: 'function () { return this.length; }',
      returnByValue: true,
    });
    return Number(count.value);
  } finally {
    await session.detach();
  }
}

/** How many there are once the page has come to rest: the first count that is read three times in a row. */
export async function livingAtRest(page: Page, prototype: string): Promise<number> {
  let count = await living(page, prototype);
  for (let alike = 1; alike < 3;) {
    await page.waitForTimeout(300);
    const next = await living(page, prototype);
    alike = next === count ? alike + 1 : 1;
    count = next;
  }
  return count;
}
