import { derived } from '../../derived';
import { OutlineIndex } from '../../geometry/outline-index';
import { piecesPerSheet, type Rows, type RowsOf, rowsToTry } from '../pattern/pieces-per-sheet';
import type { Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import { wholeTurn } from '../sheet/way';
import type { Ground } from './ground';

/** With more outlines than this the patterns of each take too long to find. */
const MOST_OUTLINES = 3;

/** Of the pieces of a purchase: their rows take most of the time, and are the same on every format. */
const kept = derived<readonly Piece[], Map<string, readonly Rows[]>>('rows of the pieces to buy');

function rowsOnce(kinds: readonly Piece[], kind: number): RowsOf {
  const known = kept(kinds, [], () => new Map());
  return (ring, halfRoom, way, fitting) => {
    const key = JSON.stringify([kind, halfRoom, way, fitting]);
    const rows = known.get(key) ?? rowsToTry(ring, halfRoom, way, fitting);
    known.set(key, rows);
    return rows;
  };
}

/** Kinds of one outline that may lie the same way: one foot's, the other's, or both. */
interface Feet {
  readonly left: number | undefined;
  readonly right: number | undefined;
}

/**
 * The fullest sheets that patterns make of one outline alone, where there are few outlines: of one foot, or of both, and the same
 * seen from below, with the feet changed.
 * @param wanted of each kind
 */
export function patternSheets(ground: Ground, wanted: readonly number[]): readonly Placements[] {
  const all = outlinesOf(ground, wanted);
  return all.length > MOST_OUTLINES ? [] : all.flatMap((feet) => sheetsOf(ground, feet));
}

function outlinesOf({ kinds, fits }: Ground, wanted: readonly number[]): readonly Feet[] {
  const outlines = new OutlineIndex();
  const found = new Map<string, Feet>();
  for (const [i, { ring, way }] of kinds.entries()) {
    if (!fits[i] || wanted[i] === 0) continue;
    const { number, mirrored } = outlines.find(ring);
    const key = `${number} ${JSON.stringify(way)}`;
    const feet = found.get(key) ?? { left: undefined, right: undefined };
    found.set(key, mirrored ? { ...feet, right: i } : { ...feet, left: i });
  }
  return [...found.values()];
}

function sheetsOf({ kinds, format }: Ground, { left, right }: Feet): readonly Placements[] {
  const first = left ?? right;
  if (first === undefined) return [];
  const { ring, way, key } = kinds[first]!;
  const other = first === left ? right : undefined;
  const named = (placements: Placements, names: readonly number[]) =>
    placements.map((one) => ({ ...one, piece: names[one.piece]! }));
  const rows = rowsOnce(kinds, first);
  const one = piecesPerSheet(ring, format, way, key, 'one', rows).placements;
  if (other === undefined) return [named(one, [first])];
  const both = piecesPerSheet(ring, format, way, key, 'both', rows).placements;
  const fromBelow = (placements: Placements) =>
    placements.map((place) => ({ ...place, y: format.width - place.y, turn: wholeTurn(-place.turn) }));
  return [
    named(one, [first]),
    named(fromBelow(one), [other]),
    named(both, [first, other]),
    named(fromBelow(both), [other, first]),
  ];
}
