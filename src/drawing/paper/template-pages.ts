import type { SizeRun } from '../../core/plan/runs';
import { type BlockTemplate, blockTemplate } from './block-template';
import { chosenPieces, type InParts, type PaperJob, sizeWords, stockOf } from './chosen';
import type { Page } from './page';
import { isStrip, type StripLine, stripPages } from './strip-pages';
import { type Template, templatesOf } from './template';
import type { Tile } from './tiles';
import { truePages } from './true-pages';

/** A page of templates as data, for whoever looks for a piece on it. */
export interface TemplatePage extends Page {
  readonly templates: readonly Template[];
  /** Side views of blocks, to saw them by. */
  readonly blocks: readonly BlockTemplate[];
  readonly tile?: Tile | undefined;
}

type Drawn = Template | BlockTemplate;

const isBlock = (one: Drawn): one is BlockTemplate => 'lifts' in one;

/**
 * Every piece of the chosen styles, sizes and stocks at true size: those of one style and size share pages. Straight strips
 * are listed with their measures instead, first of all: nobody draws round 600 mm of paper to cut a strip. A block has its
 * side view as well.
 */
export function* templatePages(job: PaperJob): InParts<readonly TemplatePage[]> {
  const groups = new Map<string, Drawn[]>();
  const blocks = new Set<SizeRun>();
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
    if (!line.layer.sawn || blocks.has(line.sizeRun)) continue;
    blocks.add(line.sizeRun);
    const block = blockTemplate(line.run, line.sizeRun, size);
    if (block) group.push(block);
  }
  const pages: TemplatePage[] = stripPages(job, strips).map((page) => ({ ...page, templates: [], blocks: [] }));
  for (const [key, templates] of groups) {
    const own = truePages(job, key, templates, holds);
    pages.push(
      ...own.map(({ drawings, ...page }) => ({
        ...page,
        templates: drawings.filter((one): one is Template => !isBlock(one)),
        blocks: drawings.filter(isBlock),
      })),
    );
    yield key;
  }
  return pages;
}

/** What a page holds: pieces by their numbers. */
function holds(drawn: readonly Drawn[]): string {
  const items = drawn.flatMap((one) => (isBlock(one) ? [] : [one.line.layer.item])).sort((a, b) => a - b);
  return [
    ...(items.length > 0 ? [`${items.length === 1 ? 'piece' : 'pieces'} ${items.join(', ')}`] : []),
    ...(drawn.some(isBlock) ? ['block profile'] : []),
  ].join(', ');
}
