import { PART_WORDS } from '../../tables/words';
import { chosenRuns, type InParts, isChosenStock, type PaperJob } from './chosen';
import { nestsOf, type SizedLayer } from './nest';
import type { Page } from './page';
import { isStrip } from './strip-pages';
import { truePages } from './true-pages';

/**
 * Each piece of a style in all chosen sizes drawn into each other at true size, backs and centre lines on one another, as
 * grading is checked. Lifts are numbered from the ground, so that those of one number belong together.
 */
export function* nestPages(job: PaperJob): InParts<readonly Page[]> {
  const pages: Page[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    const items = new Map<string, SizedLayer[]>();
    for (const { size, bottom } of sizes) {
      const seen = new Map<string, number>();
      for (const layer of bottom.layers) {
        if (!isChosenStock(job, layer.stock) || isStrip(layer)) continue;
        const kind = `${PART_WORDS[layer.part]} from ${layer.stock}`;
        const nth = (seen.get(kind) ?? 0) + 1;
        seen.set(kind, nth);
        // Of several pieces of one kind the lowest belong together: lifts are numbered so.
        const key = layer.part === 'lift' ? `${PART_WORDS.lift} ${layer.item}` : `${kind}${nth > 1 ? ` (${nth})` : ''}`;
        items.set(key, [...(items.get(key) ?? []), { size, layer }]);
      }
    }
    const nests = [...items].flatMap(([name, nest]) => nestsOf(name, nest));
    pages.push(...truePages(job, `${run.style.code}, nest of sizes`, nests, holds));
    yield run.style.code;
  }
  return pages;
}

function holds(nests: readonly { readonly name: string }[]): string {
  return nests.length === 1 ? (nests[0]?.name ?? '') : `${nests.length} pieces`;
}
