import type { Bottom } from '../../core/bottom/bottom';
import type { Layer } from '../../core/bottom/layer';
import { breastLine } from '../../core/bottom/raise';
import { box } from '../../core/geometry/box';
import { rectangleAbout } from '../../core/geometry/rectangle';
import type { Point, Ring } from '../../core/geometry/ring';
import { waistPlace } from '../../core/last/model-profile';
import { atLength } from '../../core/last/profile';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import { decimals } from '../../tables/figures';
import { piecesInWords } from '../../tables/step-in-words';
import { blockProfile } from '../build-shape';
import { line as stroke, type Marks, marks, outline, type Scale, text } from '../mark';
import { movedMarks, readable } from '../move-marks';
import { edgesAt } from '../stations';
import { blockGround, blockSize, blockWords, type LabelBlock, placeIn } from './label-block';
import { widthOf } from './letter-width';
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
  const heights = heightsOf(bottom, ring);
  const label: LabelBlock = {
    lines: [
      `${run.style.code} ${sizeName}`,
      `Block profile: ${piecesInWords(lifts).toLowerCase()}`,
      'side view, left and right alike',
      `saw ${heights.map(({ name, height }) => `${name} ${decimals(height, 1)}`).join(', ')}`,
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
        heights.flatMap((one) => heightMarks(one, turn)),
        place.fits && blockGround(label, place),
        blockWords(label, place.fits ? place : beside, turn),
      ),
  };
}

const UPWARD: Scale = { x: (mm) => mm, y: (mm) => -mm };

/** At the back, at the breast, at the waist and in front, as far as the block reaches. */
function heightsOf({ last, face, through }: Bottom, ring: Ring): readonly BlockHeight[] {
  const { left, right } = box(ring);
  const places = [
    { name: 'back', at: Math.max(0, left) },
    { name: 'breast', at: atLength(face, breastLine(last)).x },
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
function heightMarks({ name, at, height, from, to }: BlockHeight, turn: number): Marks {
  const words = `${name} ${decimals(height, 1)}`;
  const front = name === 'front' || name === 'toe';
  const [x, above] = front ? [at - widthOf(words, SMALL) / 2, FRONT_ABOVE] : [at + 1 + widthOf(words, SMALL) / 2, 1.5];
  return marks(
    name !== 'front' && stroke('chain', at, -from, at, -to, { layer: 'mark' }),
    movedMarks(
      [text(0, 0.9, words, 'plain', 'middle', { size: SMALL, layer: 'text' })],
      readable(0, turn),
      x,
      -to - above,
    ),
  );
}
