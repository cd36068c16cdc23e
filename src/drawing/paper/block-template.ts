import type { Bottom } from '../../core/bottom/bottom';
import type { Layer } from '../../core/bottom/layer';
import { breastLine } from '../../core/bottom/raise';
import { box } from '../../core/geometry/box';
import { rectangleAbout } from '../../core/geometry/rectangle';
import type { Box, Point, Ring } from '../../core/geometry/ring';
import { waistPlace } from '../../core/last/model-profile';
import { atLength, seatLine } from '../../core/last/profile';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import { decimals } from '../../tables/figures';
import { piecesInWords } from '../../tables/step-in-words';
import { blockProfile } from '../build-shape';
import { type Marks, marks, outline, type Scale, text } from '../mark';
import { movedMarks, readable } from '../move-marks';
import { edgesAt } from '../stations';
import { blockBox, blockGround, blockSize, blockWords, type LabelBlock, placeIn } from './label-block';
import { widthOf } from './letter-width';
import { strokeBeside } from './stroke-beside';
import type { TrueDrawing } from './true-pages';

/** The side view of a block at true size, to saw it by; one serves both feet. */
export interface BlockTemplate extends TrueDrawing {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  /** Lifts that the block is glued up from, from the last downward. */
  readonly lifts: readonly Layer[];
  /** Where it is measured: the heights that it is sawn to over its ground face, mm, from the back. */
  readonly heights: readonly BlockHeight[];
}

interface BlockHeight {
  readonly name: string;
  /** Along the ground from the back of the last. */
  readonly at: number;
  readonly height: number;
  /** Where the lower and the upper edge stand there, over the ground face. */
  readonly from: number;
  readonly to: number;
}

/** How near the front of a piece a corner of it is held to lie on it, mm. */
const ON_FRONT = 0.01;
/** Where the height at the toe is taken, mm from its end. */
const TOE = 10;
/** Lettering of the heights, what it takes above the block, and how far that of the front stands over it, mm. */
const [SMALL, ABOVE, FRONT_ABOVE] = [2.5, 4, 7];

/**
 * The template that a block is sawn by: its ground face, its face as the last's bottom is, its back and front; undefined
 * where nothing of a bottom is sawn.
 * @param sizeName such as "EU 38"
 */
export function blockTemplate(run: StyleRun, sizeRun: SizeRun, sizeName: string): BlockTemplate | undefined {
  const { bottom } = sizeRun;
  const lifts = bottom.layers.filter(({ sawn }) => sawn);
  const ring = blockProfile(bottom);
  if (!ring) return undefined;
  const heights = heightsOf(bottom, ring, run.style.raise === 'heel');
  const label: LabelBlock = {
    lines: [
      `${run.style.code} ${sizeName}`,
      `Block profile: ${piecesInWords(lifts).toLowerCase()}`,
      'side view on the centre line, left and right alike',
      `saw ${heights.map(inWords).join(', ')}`,
      measuredFrom(box(ring).left),
      ...frontInWords(lifts),
    ],
  };
  const drawn: Ring = ring.map(([x, z]): Point => [x, -z]);
  const place = placeIn(
    drawn,
    label,
    heights.map(({ at }) => at),
  );
  const { left, right, bottom: low, top } = box(ring);
  // A block too small for its words has them beside it.
  const [wide, high] = blockSize(label, place.size);
  const beside = { ...place, at: [right + 3 + wide / 2, -Math.max(top, high) / 2] as Point };
  return {
    run,
    sizeRun,
    lifts,
    heights,
    name: `${run.style.code} ${sizeName}, Block profile`,
    short: 'Block profile',
    ring,
    ground: rectangleAbout({
      left,
      bottom: low,
      right: place.fits ? right : right + 4 + wide,
      top: Math.max(top + ABOVE, place.fits ? 0 : high + 2),
    }),
    draw: (turn) =>
      marks(
        outline('wide', ring, UPWARD, { fill: 'paper', layer: 'cut' }),
        heights.flatMap((one) => heightMarks(one, turn, place.fits ? blockBox(label, place) : undefined)),
        place.fits && blockGround(label, place),
        blockWords(label, place.fits ? place : beside, turn),
      ),
  };
}

const UPWARD: Scale = { x: (mm) => mm, y: (mm) => -mm };

/** "seat 30.2 at 42", and of the back its height alone. */
function inWords({ name, at, height }: BlockHeight): string {
  return `${name} ${decimals(height, 1)}${name === 'back' ? '' : ` at ${decimals(at, 0)}`}`;
}

/** Where places along the ground are measured from: the back of the last, which stands within the block. */
function measuredFrom(left: number): string {
  const within = Math.max(0, -left);
  return `measured along the ground from the line at the back${within < 0.05 ? '' : `, ${decimals(within, 1)} from the block’s end`}`;
}

/** How far a slanted front runs on inside and ends before the centre line outside, of the piece that is longest. */
function frontInWords(lifts: readonly Layer[]): readonly string[] {
  const [longest] = [...lifts].sort((a, b) => (b.lift?.front ?? 0) - (a.lift?.front ?? 0));
  const { frontSlant = 0, ring = [] } = longest ?? {};
  if (frontSlant === 0) return [];
  const [outside, inside] = frontEnds(ring, frontSlant).map((one) => Math.abs(one - (longest?.lift?.front ?? 0)));
  return [
    `front on the centre line; inside ${decimals(inside ?? 0, 0)} further, outside ${decimals(outside ?? 0, 0)} short`,
  ];
}

/** Where the slanted front of a piece ends on the outside and on the inside, along the ground from the back, mm. */
function frontEnds(ring: Ring, slant: number): readonly [outside: number, inside: number] {
  const lean = Math.tan((slant * Math.PI) / 180);
  const ahead = ring.map(([x, y]) => x + lean * y);
  const most = Math.max(...ahead);
  const along = ring.flatMap(([x], i) => ((ahead[i] ?? 0) > most - ON_FRONT ? [x] : []));
  return [Math.min(...along), Math.max(...along)];
}

/** At the back, at a heel's breast or at seat, waist and tread of what has none, and in front, as far as it reaches. */
function heightsOf({ last, face, through }: Bottom, ring: Ring, heel: boolean): readonly BlockHeight[] {
  const { left, right } = box(ring);
  const places = [
    { name: 'back', at: Math.max(0, left) },
    heel
      ? { name: 'breast', at: atLength(face, breastLine(last)).x }
      : { name: 'seat line', at: atLength(face, seatLine(last.length)).x },
    { name: 'waist', at: atLength(face, waistPlace(last.length)).x },
    { name: 'tread', at: atLength(face, face.tread).x },
  ].filter(({ at }) => at < right - 6);
  // A block that goes on to the toe is measured a little before its end, which is square to its curve.
  const end = through > 0 ? { name: 'toe', at: right - TOE } : { name: 'front', at: right };
  return [...places, end].map(({ name, at }) => {
    const [low, high] = edgesAt(ring, at);
    return { name, at, height: high - low, from: low, to: high };
  });
}

/** A station's line up the block, and its name and height above it, where the face falls away from them. */
function heightMarks(place: BlockHeight, turn: number, label: Box | undefined): Marks {
  const { name, at, from, to } = place;
  const words = inWords(place);
  const front = name === 'front' || name === 'toe';
  const [x, above] = front ? [at - widthOf(words, SMALL) / 2, FRONT_ABOVE] : [at + 1 + widthOf(words, SMALL) / 2, 1.5];
  return marks(
    name !== 'front' && strokeBeside(label, 'chain', [at, -from], [at, -to], { layer: 'mark' }),
    movedMarks(
      [text(0, 0.9, words, 'plain', 'middle', { size: SMALL, layer: 'text' })],
      readable(0, turn),
      x,
      -to - above,
    ),
  );
}
