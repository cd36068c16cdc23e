import type { Layer } from '../../core/bottom/layer';
import { area } from '../../core/geometry/area';
import { box } from '../../core/geometry/box';
import type { PieceLine } from '../../core/plan/pieces';
import type { Stock } from '../../core/stock/stock';
import { decimals } from '../../tables/figures';
import { PART_WORDS } from '../../tables/words';
import { paragraph } from './blocks';
import { type PaperJob, sizeWords } from './chosen';
import { flowPages, textWidth } from './flow';
import type { Page } from './page';
import { figuresIn, type PaperColumn, tableBlocks, ticksIn, wordsIn } from './table-blocks';
import { directionInWords } from './template';

/** A straight strip that is to be cut, and the sheet that it comes from. */
export interface StripLine {
  readonly line: PieceLine;
  readonly stock: Stock;
}

/** A strip is at least so many times as long as it is wide, and fills the box about it but for rounding. */
const SLENDER = 4;
const FILLED = 0.999;

/** Whether a piece is a straight strip with square ends, which is cut by a rule and needs no template. */
export function isStrip({ ring, length, width }: Pick<Layer, 'ring' | 'length' | 'width'>): boolean {
  return length >= SLENDER * width && area(ring) >= FILLED * length * width;
}

const COLUMNS: readonly PaperColumn[] = [
  wordsIn('Style', 26),
  wordsIn('Size', 15),
  wordsIn('Piece', 17),
  wordsIn('From', 25),
  figuresIn('Wide mm', 14),
  figuresIn('Long mm', 15),
  figuresIn('Cut', 10),
  figuresIn('Together m', 17),
  wordsIn('How it lies', 41),
  ticksIn('Done', 11),
];

/** A list of straight strips by style and size, their width, length and count. */
export function stripPages(job: PaperJob, strips: readonly StripLine[]): readonly Page[] {
  if (strips.length === 0) return [];
  const width = textWidth(job.paper);
  const count = strips.reduce((sum, { line }) => sum + line.count, 0);
  const along = (lines: readonly StripLine[]) =>
    lines.reduce((sum, { line }) => sum + line.count * line.layer.length, 0);
  const rows = strips.map(({ line, stock }) => {
    const { run, sizeRun, layer } = line;
    return [
      run.style.code,
      sizeWords(sizeRun),
      `${PART_WORDS[layer.part]} ${layer.item}`,
      layer.stock,
      decimals(layer.width, 1),
      decimals(layer.length, 0),
      String(line.count),
      metres(along([{ line, stock }])),
      [directionInWords(layer, stock), ...foldsInWords(line)].join('; '),
      '',
    ];
  });
  const sum = ['All', '', '', '', '', '', String(count), metres(along(strips)), '', ''];
  const boxes = [
    { head: 'Strips to cut', say: job.run, share: 5 },
    { head: 'Strips', say: String(count), share: 2 },
    { head: 'Date', say: job.date || '–', share: 2.5 },
  ];
  return flowPages(job, 'Strips', boxes, [
    paragraph(
      'Straight strips with square ends, cut by a rule; both feet alike, so there are no templates of them.',
      width,
    ),
    ...tableBlocks(COLUMNS, [...rows, sum], width, { sum: true }),
  ]);
}

function metres(mm: number): string {
  return (mm / 1000).toFixed(2);
}

/** Where a cover is turned, from its edges. */
function foldsInWords({ layer }: PieceLine): readonly string[] {
  const { cover } = layer;
  if (!cover) return [];
  const [all, wall] = [box(layer.ring), box(cover.unturned)];
  const folds = [wall.bottom - all.bottom, all.top - wall.top].map((mm) => decimals(mm, 1));
  return [
    `turned ${folds[1]} over and ${folds[0]} under`,
    ...(cover.lap > 0 ? [`each end goes ${decimals(cover.lap, 1)} past the seam`] : []),
  ];
}
