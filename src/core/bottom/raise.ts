import { itemAt } from '../item-at';
import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import type { Ring } from '../geometry/ring';
import type { LastInSize } from '../last/last-in-size';
import { atLength, type Profile } from '../last/profile';
import { Problem } from '../problem';
import { edgeAllowance } from './allowances';
import { bentLayers } from './bent-layers';
import type { PieceEdges } from './edge';
import { flatLifts } from './flat-lifts';
import { HEADINGS, type Layer, pieceOutline, sheet } from './layer';
import { coursesOfMix, type LayerMix } from './layer-mix';
import type { FindStock, Stock } from '../stock/stock';
import type { Style } from './style';
import { sawnOff } from './sawn-off';
import { within } from './style-problem';

/** What lifts are made from and fitted to. */
export interface RaiseInput {
  readonly style: Style;
  readonly last: LastInSize;
  /** The face that they are fitted to, as it stands over the ground face of their stack. */
  readonly face: Profile;
  readonly find: FindStock;
  readonly mix: LayerMix;
  /** Height that they fill under the seat, mm. */
  readonly height: number;
  /** What of that goes on under the tread, mm. */
  readonly through: number;
  /** The last's outline as it stands on the ground. */
  readonly ground: Ring;
  readonly edges: PieceEdges;
  /** What a cover takes off their edge, mm. */
  readonly taken: number;
}

/** Where a heel's breast stands, measured along the last: the seat is its back quarter. */
export function breastLine(last: Pick<LastInSize, 'length'>): number {
  return last.length / 4;
}

/** The lifts of a style in one size, from the last downward. The stoutest lie next to the ground. */
export function raise(input: RaiseInput): readonly Layer[] {
  const { style, find, mix } = input;
  const stocks = style.lifts.map((code) => find(code, HEADINGS.lift));
  const fromGround = coursesOfMix(mix, stocks);
  return within(style, HEADINGS.lift, () =>
    style.laying === 'bent' ? bent(input, [...fromGround].reverse()) : flat(input, fromGround),
  );
}

function flat(input: RaiseInput, courses: readonly Stock[]): readonly Layer[] {
  const { style, last, face, ground, edges, height, through } = input;
  const heel = style.raise === 'heel';
  if (heel && 2 * style.heelTaper >= last.seat) {
    throw new Problem(
      'invalid',
      { argument: 'heel_taper' },
      `${style.heelTaper} mm a side leave nothing of a seat ${Number(last.seat.toFixed(1))} mm wide; give less`,
    );
  }
  // What is built too high is sanded off the ground face, which stays flat.
  const { rasped } = input.mix;
  const lifts = flatLifts(
    face,
    courses.map(({ thickness }, i) => (i === 0 ? thickness - rasped : thickness)),
    { skiveTo: style.skiveTo, through, ...(heel && { breast: atLength(face, breastLine(last)).x }) },
  );
  return lifts
    .map((lift, i): Layer => {
      // A heel narrows toward the ground: each lift is cut to its upper face.
      const narrowed = heel ? style.heelTaper * Math.max(0, 1 - lift.upper / height) : 0;
      const stock = itemAt(courses, i);
      const rounding = edgeAllowance('lift', style, stock);
      const edge = edges.of(ground, input.taken + narrowed, rounding);
      const { whole = false } = lift;
      const ring = whole ? edge : cutAtFront(edge, lift.front, heel ? 0 : style.frontSlant);
      const { skiveWidth: width, skiveAngle: angle, edge: left } = lift;
      // A block is sawn to the last as a whole, so its lifts are not skived one by one.
      const sawn = style.laying === 'block';
      const skived = width > 0 && !sawn;
      return {
        item: lift.number,
        part: 'lift',
        ...sheet(stock),
        ...pieceOutline(ring),
        rounding,
        follows: false,
        underSeat: true,
        underTread: lift.lower < through,
        skive: skived ? { at: 'front', face: 'upper', width, angle, edge: left } : undefined,
        removed: lift.removed,
        frontSlant: heel || whole ? undefined : style.frontSlant,
        rasped: (lift.number === 1 && rasped) || undefined,
        sawn: sawn || undefined,
        sawnOff: whole ? sawnOff(ring, face, lift, through) : undefined,
        lift: {
          lower: lift.lower,
          upper: lift.upper,
          front: lift.front,
          skiveFrom: lift.skiveFrom,
          proud: skived ? lift.proud : 0,
        },
      };
    })
    .reverse();
}

function bent({ style, last, face, edges, taken, mix }: RaiseInput, courses: readonly Stock[]): readonly Layer[] {
  const slant = style.raise === 'heel' ? 0 : style.frontSlant;
  // What is built too high is rasped off the ground face, which the outer layer comes to.
  const rasped = (i: number) => (i === courses.length - 1 && mix.rasped) || undefined;
  const layers = bentLayers(
    face,
    courses.map(({ thickness }, i) => thickness - (rasped(i) ?? 0)),
    style.skiveTo,
  );
  return layers.map((layer, i): Layer => {
    const front = style.raise === 'heel' ? Math.min(layer.front, breastLine(last)) : layer.front;
    const stock = itemAt(courses, i);
    const rounding = edgeAllowance('lift', style, stock);
    const full = edges.of(last.outline, taken, rounding);
    const ring = cutAtFront(full, front, slant);
    const { skiveWidth: width, skiveAngle: angle, edge } = layer;
    return {
      item: layer.number,
      part: 'lift',
      ...sheet(stock),
      ...pieceOutline(ring),
      rounding,
      follows: true,
      underSeat: true,
      underTread: false,
      skive: width > 0 && front === layer.front ? { at: 'front', face: 'lower', width, angle, edge } : undefined,
      removed: front === layer.front ? layer.removed : undefined,
      frontSlant: slant,
      rasped: rasped(i),
    };
  });
}

/** Cuts an outline off in front, the line slanted with the joints: the inside (y < 0) runs further forward. */
function cutAtFront(ring: Ring, front: number, slant: number): Ring {
  const { bottom, top } = box(ring);
  const middle = (bottom + top) / 2;
  const lean = Math.tan((slant * Math.PI) / 180);
  return cut(ring, ({ 0: x, 1: y }) => front - lean * (y - middle) - x);
}
