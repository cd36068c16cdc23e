import type { Bottom } from '../bottom/bottom';
import type { Layer } from '../bottom/layer';
import { BEST } from '../cutting/sheet/natural-sheet';
import type { Piece } from '../cutting/sheet/piece';
import type { Way } from '../cutting/sheet/way';
import { derived } from '../derived';
import { Fingerprint } from '../fingerprint';
import { area } from '../geometry/area';
import { mirrorOnce, ringContent } from '../geometry/ring-content';
import type { SheetDirection } from '../stock/stock';
import { fold } from './codes';
import type { Runs, SizeRun, StyleRun } from './runs';

export const FEET = ['L', 'R'] as const;
export type Foot = (typeof FEET)[number];

/** One kind of piece of one style and size, both feet together. */
export interface PieceLine {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  readonly layer: Layer;
  /** Of one piece, mm². */
  readonly area: number;
  /** Pieces to cut, left and right together, of pairs that are not cut yet. */
  readonly count: number;
}

/** The pieces of one style that are cut from one stock. */
export interface StockPieces {
  readonly lines: readonly PieceLine[];
  /** Area of them all, mm². */
  readonly area: number;
  readonly count: number;
  /** Stands for their outlines, counts and qualities, not for their names. */
  readonly content: string;
  /** Stands for their names. */
  readonly names: string;
}

const areas = derived<Bottom, readonly number[]>('areas of a bottom’s pieces');
const linesOf = derived<StyleRun, readonly PieceLine[]>('pieces of a run');
const byStock = derived<StyleRun, ReadonlyMap<string, StockPieces>>('pieces of a run by stock');
const asLaid = derived<StockPieces, readonly Piece[]>('pieces of a stock as they are laid');

/** Second stage: every piece to be cut, by style, size and item. */
export function pieces(runs: Pick<Runs, 'styles'>): readonly PieceLine[] {
  return runs.styles.flatMap(piecesOf);
}

function piecesOf(run: StyleRun): readonly PieceLine[] {
  return linesOf(run, [], () =>
    run.sizes.flatMap((sizeRun) => {
      const sizes = areasOf(sizeRun.bottom);
      return sizeRun.bottom.layers.map((layer, i) => ({
        run,
        sizeRun,
        layer,
        area: sizes[i]!,
        count: 2 * sizeRun.toCut,
      }));
    }),
  );
}

function areasOf(bottom: Bottom): readonly number[] {
  return areas(bottom, [], () => bottom.layers.map(({ ring }) => area(ring)));
}

/** What a run takes of a stock; undefined where it takes nothing. */
export function piecesFrom(run: StyleRun, stock: string): StockPieces | undefined {
  return byStock(run, [], () => {
    const groups = new Map<string, PieceLine[]>();
    for (const line of piecesOf(run)) {
      if (line.count === 0) continue;
      const code = fold(line.layer.stock);
      const group = groups.get(code);
      if (group) group.push(line);
      else groups.set(code, [line]);
    }
    return new Map([...groups].map(([code, lines]) => [code, together(lines)]));
  }).get(fold(stock));
}

function together(lines: readonly PieceLine[]): StockPieces {
  const [content, names] = [new Fingerprint(), new Fingerprint()];
  for (const line of lines) {
    const { run, layer, count } = line;
    names.text(pieceKey(line, 'L'));
    content
      .text(ringContent(layer.ring))
      .number(count)
      .number(run.style.quality[layer.part] ?? BEST);
  }
  return {
    lines,
    area: lines.reduce((sum, line) => sum + line.area * line.count, 0),
    count: lines.reduce((sum, { count }) => sum + count, 0),
    content: content.toString(),
    names: names.toString(),
  };
}

/** The pieces that a run takes of a stock as they are laid on sheets, two of each line: left, then right. */
export function laidPieces(from: StockPieces, direction: SheetDirection): readonly Piece[] {
  return asLaid(from, [direction], () => {
    const way: Way = { kind: WAYS[direction] };
    return from.lines.flatMap((line): Piece[] => {
      const { ring, part } = line.layer;
      const quality = line.run.style.quality[part];
      const [left, right] = [pieceKey(line, 'L'), pieceKey(line, 'R')];
      const same = { count: line.count / 2, way, quality, pair: left };
      return [
        { key: left, ring, ...same },
        { key: right, ring: mirrorOnce(ring), ...same },
      ];
    });
  });
}

const WAYS = { 'any way': 'any', 'end for end': 'endForEnd', 'one way': 'oneWay' } as const satisfies Record<
  SheetDirection,
  Way['kind']
>;

/** The name of a piece in layouts and pictures: style, item, size (with its system where that is not the last's) and foot. */
export function pieceKey({ run, sizeRun: { size, system }, layer }: PieceLine, foot: Foot): string {
  return `${run.style.code} ${layer.item} ${system === run.last.system ? '' : `${system} `}${size} ${foot}`;
}
