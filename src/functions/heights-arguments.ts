import { DEFAULT_RASPING, type Offer } from '../core/bottom/layer-mix';
import { Problem } from '../core/problem';
import { type Cell, type Cells, isBlank, isLeftOut } from '../tables/cell';
import { readLength, readLengthOr, readNumbers, readThickness, THICKNESS } from './arguments';

// Each reads a function's arguments to what core takes, in its order.

const readHeight = (cell: Cell) => readLength(cell, 'height', { above: 0, most: 500 });
const readStand = (cell: Cell, argument: string) => readLength(cell, argument, { most: 500 });
const readOutsole = (cell: Cell) => readLengthOr(cell, 'outsole', 0, { most: 500 });

/** The most thicknesses on offer of which a mix is made. */
const MOST_THICKNESSES = 20;

/** Of LAYERS; undefined is any surplus. */
export function readLayers(height: Cell, thickness: Cell, rasping: Cell): [number, number, number | undefined] {
  return [readHeight(height), readThickness(thickness), readLengthOr(rasping, 'most_rasping', undefined)];
}

/** Counts of the thicknesses that are given: none where the range is blank, nor where no thickness stands beside it. */
function countsBeside(onHand: Cells, thicknesses: Cells): Cells | undefined {
  const counts = onHand.flat();
  const places = thicknesses.flat();
  if (counts.every(isBlank) || (counts.length === 1 && places.length > 1 && isLeftOut(counts[0]))) return undefined;
  if (counts.length !== places.length) return onHand;
  return [counts.filter((_, at) => !isLeftOut(places[at], THICKNESS))];
}

/** Of LAYERMIX. @throws Problem for too many thicknesses and for counts that are not one for each. */
export function readLayerMix(
  height: Cell,
  thicknesses: Cells,
  rasping: Cell,
  onHand: Cells | null | undefined,
): [number, readonly Offer[], number] {
  const given = readNumbers(thicknesses, 'thicknesses', THICKNESS);
  if (given.length > MOST_THICKNESSES) {
    const sentence = `${given.length} are too many; ${MOST_THICKNESSES} is the most`;
    throw new Problem('invalid', { argument: 'thicknesses' }, sentence);
  }
  const counted = countsBeside(onHand ?? [], thicknesses);
  const counts = counted && readNumbers(counted, 'on_hand', { least: 0, most: 10_000, whole: true });
  if (counts && counts.length !== given.length) {
    throw new Problem(
      'invalid',
      { argument: 'on_hand' },
      `it counts ${counts.length} thicknesses and ${given.length} are given; give one count for each`,
    );
  }
  return [
    readHeight(height),
    given.map((thickness, i) => ({ thickness, onHand: counts?.[i] })),
    readLengthOr(rasping, 'most_rasping', DEFAULT_RASPING),
  ];
}

export function readHeelHeight(lastHeel: Cell, platform: Cell, outsole: Cell): [number, number, number] {
  return [readStand(lastHeel, 'last_heel'), readStand(platform, 'platform'), readOutsole(outsole)];
}

export function readPlatform(finishedHeel: Cell, lastHeel: Cell, outsole: Cell): [number, number, number] {
  return [readStand(finishedHeel, 'finished_heel'), readStand(lastHeel, 'last_heel'), readOutsole(outsole)];
}
