import { chosenPieces, type InParts, type PaperJob, sizeWords, stockOf } from './chosen';
import type { Page } from './page';
import { isStrip, type StripLine, stripPages } from './strip-pages';
import { type Template, templatesOf } from './template';
import type { Tile } from './tiles';
import { truePages } from './true-pages';

/** A page of templates as data, for whoever looks for a piece on it. */
export interface TemplatePage extends Page {
  readonly templates: readonly Template[];
  readonly tile?: Tile | undefined;
}

/**
 * Every piece of the chosen styles, sizes and stocks at true size: those of one style and size share pages. Straight strips
 * are listed with their measures instead, first of all: nobody draws round 600 mm of paper to cut a strip.
 */
export function* templatePages(job: PaperJob): InParts<readonly TemplatePage[]> {
  const groups = new Map<string, Template[]>();
  const strips: StripLine[] = [];
  for (const line of chosenPieces(job)) {
    const stock = stockOf(job, line.layer.stock);
    if (isStrip(line.layer)) {
      strips.push({ line, stock });
      continue;
    }
    const size = sizeWords(line.sizeRun);
    const key = `${line.run.style.code}, ${size}`;
    const group = groups.get(key) ?? [];
    groups.set(key, group);
    group.push(...templatesOf(line, stock, size));
  }
  const pages: TemplatePage[] = stripPages(job, strips).map((page) => ({ ...page, templates: [] }));
  for (const [key, templates] of groups) {
    const own = truePages(job, key, templates, holds);
    pages.push(...own.map(({ drawings, ...page }) => ({ ...page, templates: drawings })));
    yield key;
  }
  return pages;
}

/** What a page holds: pieces by their numbers. */
function holds(templates: readonly Template[]): string {
  const items = templates.map(({ line: { layer } }) => layer.item).sort((a, b) => a - b);
  return `${items.length === 1 ? 'piece' : 'pieces'} ${items.join(', ')}`;
}
