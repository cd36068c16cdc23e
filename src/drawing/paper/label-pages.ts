import { PART_WORDS } from '../../tables/words';
import { line, type Marks, rectangle, text } from '../mark';
import { chosenRuns, type InParts, isChosenStock, type PaperJob, sizeWords } from './chosen';
import { wrapped } from './wrapped';
import { orderedPairs } from './orders';
import { gridFault, type LabelGrid, usualGrid } from './label-grid';
import type { Page } from './page';
import { fitted } from './title-block';

/** What stands on a label: a head, and lines below. */
export interface Label {
  readonly head: string;
  readonly lines: readonly string[];
}

/** One label for each piece that is still to be cut: which pair it belongs to, and which of its pieces it is. */
export function* pieceLabels(job: PaperJob): InParts<readonly Label[]> {
  const labels: Label[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    for (const sizeRun of sizes) {
      const { layers } = sizeRun.bottom;
      const pairs = orderedPairs(job.plan.input, run, sizeRun);
      for (const [i, { customer, due, cut }] of pairs.entries()) {
        if (cut) continue;
        for (const foot of ['L', 'R']) {
          for (const { item, part, stock } of layers) {
            if (!isChosenStock(job, stock)) continue;
            labels.push({
              head: `${run.style.code} ${sizeWords(sizeRun)} ${foot}`,
              lines: [
                `${PART_WORDS[part]}, piece ${item} of ${layers.length}`,
                `${stock}; pair ${i + 1} of ${pairs.length}`,
                [customer, due && `due ${due}`].filter(Boolean).join(', '),
              ],
            });
          }
        }
      }
      yield `${run.style.code}, ${sizeWords(sizeRun)}`;
    }
  }
  return labels;
}

/** One label for each pair, for its bag or box. */
export function* pairLabels(job: PaperJob): InParts<readonly Label[]> {
  const labels: Label[] = [];
  for (const { run, sizes } of chosenRuns(job)) {
    for (const sizeRun of sizes) {
      const pairs = orderedPairs(job.plan.input, run, sizeRun);
      pairs.forEach(({ customer, due }, i) =>
        labels.push({
          head: `${run.style.code} ${sizeWords(sizeRun)}`,
          lines: [
            `pair ${i + 1} of ${pairs.length}, last ${run.last.code}`,
            `${2 * sizeRun.bottom.layers.length} pieces of a pair`,
            [customer, due && `due ${due}`].filter(Boolean).join(', '),
          ],
        }),
      );
    }
    yield run.style.code;
  }
  return labels;
}

/** @throws Error with the sentence of `gridFault` */
export function labelPages(job: PaperJob, labels: readonly Label[]): readonly Page[] {
  const grid = job.labels ?? usualGrid(job.paper);
  const fault = gridFault(grid, job.paper);
  if (fault) throw new Error(fault);
  const { columns, rows, first } = grid;
  const each = columns * rows;
  const sheets = labels.length === 0 ? 0 : Math.ceil((labels.length + first - 1) / each);
  return Array.from({ length: sheets }, (_, sheet): Page => ({
    ...job.paper,
    name: `Labels, sheet ${sheet + 1}`,
    draw: () =>
      Array.from({ length: each }, (_, k) => ({ k, label: labels[sheet * each + k - first + 1] })).flatMap(
        ({ k, label }) => (label ? labelMarks(label, grid, k % columns, Math.floor(k / columns)) : []),
      ),
  }));
}

const PAD = 2.5;

function labelMarks({ head, lines }: Label, grid: LabelGrid, column: number, row: number): Marks {
  const { width, height } = grid;
  const x = grid.left + column * (width + grid.gapX);
  const y = grid.top + row * (height + grid.gapY);
  const room = width - 2 * PAD;
  const headSize = fitted(head, room, Math.min(5, height / 5));
  // As large as leaves every line its room: words are set smaller or in two lines, never left off.
  let size = Math.min(3.2, height / 8);
  let set: readonly string[] = [];
  for (; size > 1; size *= 0.92) {
    set = lines.filter(Boolean).flatMap((one) => wrapped(one, room, size));
    if (set.length * size * 1.3 + headSize * 1.3 + 3 <= height) break;
  }
  const under = y + PAD + headSize * 0.85;
  return [
    ...(grid.edges ? [rectangle(x, y, width, height, { pen: 'narrow' })] : []),
    text(x + PAD, under, head, 'bold', 'start', { size: headSize }),
    line('narrow', x + PAD, under + 1.4, x + width - PAD, under + 1.4),
    ...set.map((words, i) => text(x + PAD, under + 1.8 + size * (1 + 1.3 * i), words, 'plain', 'start', { size })),
  ];
}
