import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

/** The part of axe-core that is used here. */
interface Axe {
  run(
    context: Document | { include: string[][] },
    options: { runOnly?: readonly string[] },
  ): Promise<{ violations: readonly { id: string; nodes: readonly { html: string }[] }[] }>;
}

const axe = readFileSync('node_modules/axe-core/axe.min.js', 'utf8');

/**
 * Barriers on a page that can be found by rule, each with where it stands: rules of the Web Content Accessibility
 * Guidelines 2.2 as the library axe-core tests them.
 * @param within selector of a part of the page
 * @param tags of the rules, where not all are asked for
 */
export async function barriers(page: Page, within?: string, tags?: readonly string[]): Promise<string[][]> {
  if (!(await page.evaluate(() => Reflect.has(window, 'axe')))) await page.evaluate(axe);
  return page.evaluate(
    async ([part, runOnly]) => {
      // Between two schemes the grid's buttons pass through colours that nobody is to read.
      const passing = document.getAnimations().filter((one) => one instanceof CSSTransition);
      await Promise.allSettled(passing.map(({ finished }) => finished));
      const { violations } = await (Reflect.get(window, 'axe') as Axe).run(
        part ? { include: [[part]] } : document,
        runOnly ? { runOnly } : {},
      );
      return violations.map(({ id, nodes }) => [id, ...nodes.map(({ html }) => html.slice(0, 200))]);
    },
    [within, tags] as const,
  );
}
