import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import { letOutSmooth } from '../geometry/let-out-smooth';
import type { Ring } from '../geometry/ring';
import type { LastInSize } from '../last/last-in-size';
import { atLength, type Profile } from '../last/profile';
import { bentLayers } from './bent-layers';
import { flatLifts } from './flat-lifts';
import { extent, HEADINGS, type Layer, sheet } from './layer';
import type { LayerMix } from './layer-mix';
import { liftHeight } from './lift-mix';
import type { FindStock, Stock } from './stock';
import type { Style } from './style';
import { within } from './style-problem';

/** What the lifts are made from and fitted to. */
export interface RaiseInput {
  readonly style: Style;
  readonly last: LastInSize;
  /** The under face of what lies against the last. */
  readonly under: Profile;
  readonly find: FindStock;
  /** The outline that flat lifts are cut from, let out. */
  readonly ground: Ring;
  readonly mix: LayerMix | undefined;
  /** Thickness of a heel's top piece, 0 for none, mm. */
  readonly topPiece: number;
}

/** What raises a bottom's heel. */
export interface Raised {
  /** From the last downward. */
  readonly lifts: readonly Layer[];
  /** Height that they fill under the seat, mm. */
  readonly height: number;
  /** The outline of the lowest lift. */
  readonly lowest?: Ring | undefined;
}

/** The lifts of a style in one size: their outlines and skives. The stoutest lie next to the ground. */
export function raise(input: RaiseInput): Raised {
  const { style, last, find, mix } = input;
  if (!mix) return { lifts: [], height: 0 };
  const fromGround = style.lifts
    .flatMap((code, i) => new Array<Stock>(mix.counts[i] as number).fill(find(code, HEADINGS.lifts)))
    .sort((a, b) => b.thickness - a.thickness);
  const lifts = within(style, 'Lifts', () =>
    style.laying === 'bent' ? bent(input, [...fromGround].reverse()) : flat(input, fromGround),
  );
  const lowest = style.laying === 'bent' ? lifts[lifts.length - 1] : lifts.find(({ item }) => item === 1);
  return { lifts, height: liftHeight(style, last, find), lowest: lowest?.ring };
}

function flat({ style, last, under, ground, topPiece }: RaiseInput, courses: readonly Stock[]): readonly Layer[] {
  const heel = style.raise === 'heel';
  // A top piece lifts the stack, so the bottom stands lower over it.
  const over = topPiece > 0 ? { ...under, z: under.z.map((z) => z - topPiece) } : under;
  const lifts = flatLifts(
    over,
    courses.map(({ thickness }) => thickness),
    { keptEdge: style.edgeLeft, ...(heel && { breast: atLength(under, last.length / 4).x }) },
  );
  return lifts
    .map((lift, i): Layer => {
      const ring = cutAtFront(ground, lift.front, heel ? 0 : style.frontSlant);
      const { skiveWidth: width, skiveAngle: angle, edge } = lift;
      return {
        item: lift.number,
        part: 'lift',
        ...sheet(courses[i] as Stock),
        ring,
        ...extent(ring),
        follows: false,
        skive: width > 0 ? { at: 'front', width, angle, edge } : undefined,
        lift,
      };
    })
    .reverse();
}

function bent({ style, last, under }: RaiseInput, courses: readonly Stock[]): readonly Layer[] {
  const full = letOutSmooth(last.outline, style.lastedSubstance + style.projection + style.roughEdge);
  const slant = style.raise === 'heel' ? 0 : style.frontSlant;
  return bentLayers(
    under,
    courses.map(({ thickness }) => thickness),
    style.edgeLeft,
  ).map((layer, i): Layer => {
    const ring = cutAtFront(full, layer.front, slant);
    const { skiveWidth: width, skiveAngle: angle, edge } = layer;
    return {
      item: layer.number,
      part: 'lift',
      ...sheet(courses[i] as Stock),
      ring,
      ...extent(ring),
      follows: true,
      skive: width > 0 ? { at: 'front', width, angle, edge } : undefined,
    };
  });
}

/** Cuts an outline off in front, the line slanted with the joints: the inside (y < 0) runs further forward. */
function cutAtFront(ring: Ring, front: number, slant: number): Ring {
  const { bottom, top } = box(ring);
  const middle = (bottom + top) / 2;
  const lean = Math.tan((slant * Math.PI) / 180);
  return cut(ring, ([x, y]) => front - lean * (y - middle) - x);
}
