import type { Layer } from '../../core/bottom/layer';
import { boxAbout, box } from '../../core/geometry/box';
import type { Box, Point, Ring } from '../../core/geometry/ring';
import { PART_WORDS } from '../../tables/words';
import { line, type Marks, marks, outline, text } from '../mark';
import { chosenRuns, type InParts, isChosenStock, type PaperJob } from './chosen';
import type { Page } from './page';
import { tileArea, tilePages } from './template-pages';
import { tilesOf } from './tiles';

/** Room for the names of sizes about a nest, mm. */
const ROOM = 6;

/**
 * Each piece of a style in all chosen sizes drawn into each other at true size, backs and centre lines on one another, as
 * grading is checked. Lifts are numbered from the ground, so that those of one number belong together.
 */
export function* nestPages(job: PaperJob): InParts<readonly Page[]> {
  const pages: Page[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    const items = new Map<string, { size: number; layer: Layer }[]>();
    for (const { size, bottom } of sizes) {
      const seen = new Map<string, number>();
      for (const layer of bottom.layers) {
        if (!isChosenStock(job, layer.stock)) continue;
        const kind = `${PART_WORDS[layer.part]} from ${layer.stock}`;
        const nth = (seen.get(kind) ?? 0) + 1;
        seen.set(kind, nth);
        // Of several pieces of one kind the lowest belong together: lifts are numbered so.
        const key = layer.part === 'lift' ? `${PART_WORDS.lift} ${layer.item}` : `${kind}${nth > 1 ? ` (${nth})` : ''}`;
        items.set(key, [...(items.get(key) ?? []), { size, layer }]);
      }
    }
    for (const [name, nest] of items) if (nest.length > 1) pages.push(...pagesOf(job, run.style.code, name, nest));
    yield run.style.code;
  }
  return pages;
}

function pagesOf(
  job: PaperJob,
  style: string,
  name: string,
  nest: readonly { readonly size: number; readonly layer: Layer }[],
): readonly Page[] {
  const about = boxAbout(nest.map(({ layer }) => box(layer.ring)));
  const lying: Box = {
    left: about.left - ROOM,
    right: about.right + ROOM,
    bottom: -about.top - ROOM,
    top: -about.bottom + ROOM,
  };
  const standing: Box = {
    left: about.bottom - ROOM,
    right: about.top + ROOM,
    bottom: about.left - ROOM,
    top: about.right + ROOM,
  };
  const [flat, upright] = [lying, standing].map((one) => tilesOf(one, tileArea(job)));
  const stands = upright!.length <= flat!.length;
  return tilePages(job, `${style}, nest of sizes`, name, name, stands ? upright! : flat!, () =>
    nestMarks(nest, stands),
  );
}

/** The outlines from the smallest to the largest, each with its size where it reaches furthest. */
function nestMarks(nest: readonly { readonly size: number; readonly layer: Layer }[], stands: boolean): Marks {
  const at = { x: (mm: number) => mm, y: (mm: number) => -mm };
  const put = ([x, y]: readonly [number, number]): readonly [number, number] => (stands ? [y, x] : [x, -y]);
  const about = boxAbout(nest.map(({ layer }) => box(layer.ring)));
  return marks(
    line('chain', ...put([about.left, 0]), ...put([about.right, 0])),
    line('chain', ...put([0, about.bottom]), ...put([0, about.top])),
    nest.flatMap(({ size, layer }, i) => {
      const { right, bottom, top } = box(layer.ring);
      const across = (bottom + top) / 2 + ((i % 3) - 1) * Math.min(9, 0.3 * (top - bottom));
      const ring = stands ? layer.ring.map(([x, y]): readonly [number, number] => [y, x]) : layer.ring.map(put);
      const end = i === 0 || i === nest.length - 1;
      // Names in turn beside each other, so that those of near sizes do not touch.
      const [tx, ty] = put([Math.min(right, reach(layer.ring, across)) - 1, across]);
      return marks(
        outline(end ? 'wide' : 'narrow', ring, { x: at.x, y: (mm) => mm }, { layer: 'cut' }),
        text(tx, ty + (stands ? -0.6 : 0.9), size, end ? 'bold' : 'plain', stands ? 'middle' : 'end', { size: 2.6 }),
      );
    }),
  );
}

/** How far a ring reaches toward the toe at a distance from the centre line. */
function reach(ring: Ring, across: number): number {
  return Math.max(
    ...ring.flatMap(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length] as Point;
      return ay > across === by > across ? [] : [ax + ((bx - ax) * (across - ay)) / (by - ay)];
    }),
  );
}
