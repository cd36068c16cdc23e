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
