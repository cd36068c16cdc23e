import { inside } from '../../geometry/inside';
import type { Arrangement } from './arrangement';
import type { Random } from './random';

/** Pieces that together make up this share of the hulls' area, the largest, count as large. */
const LARGE_SHARE = 0.75;

/**
 * Shakes an arrangement up: two large pieces of different kinds change places, and the small pieces whose middles they
 * come to cover go the other way (Gardeyn, Vanden Berghe and Wauters 2025, arXiv 2509.13329, disruption).
 */
export function disrupt(arrangement: Arrangement, random: Random): void {
  const { choices, overlaps } = arrangement;
  const hull = (piece: number) => arrangement.shapeOf(piece).hullArea;
  const sorted = choices
    .map((_, piece) => piece)
    .filter((piece) => arrangement.lies(piece))
    .sort((a, b) => hull(b) - hull(a) || a - b);
  if (sorted.length < 2) return;
  const total = sorted.reduce((sum, piece) => sum + hull(piece), 0);
  let sum = 0;
  const cut = sorted.find((piece) => (sum += hull(piece)) > LARGE_SHARE * total) ?? sorted[sorted.length - 1]!;
  const large = sorted.filter((piece) => hull(piece) >= hull(cut));
  const kind = (piece: number) => arrangement.shapeOf(piece).kind;
  const a = large[random.below(large.length)]!;
  const unlike = large.filter((piece) => kind(piece) !== kind(a));
  const others = unlike.length ? unlike : sorted.filter((piece) => piece !== a);
  if (others.length === 0) return;
  const b = others[random.below(others.length)]!;
  const [from, to] = [arrangement.placeOf(a), arrangement.placeOf(b)];
  const [turnA, turnB] = [arrangement.shapeOf(a).turn, arrangement.shapeOf(b).turn];
  const turned = (piece: number, turn: number) =>
    choices[piece]!.find((shape) => overlaps.shapes[shape]!.turn === turn) ?? choices[piece]![0]!;
  arrangement.put(a, { shape: turned(a, turnB), x: to.x, y: to.y });
  arrangement.put(b, { shape: turned(b, turnA), x: from.x, y: from.y });
  carryAlong(arrangement, a, b, from.x - to.x, from.y - to.y);
  carryAlong(arrangement, b, a, to.x - from.x, to.y - from.y);
  arrangement.updateAllLosses();
}

/** Moves the pieces that `piece` has come to cover by as much as the other of the two was moved. */
function carryAlong(arrangement: Arrangement, piece: number, other: number, dx: number, dy: number): void {
  const { ring } = arrangement.shapeOf(piece);
  const { x, y } = arrangement.placeOf(piece);
  for (let covered = 0; covered < arrangement.movable; covered++) {
    if (covered === piece || covered === other || !arrangement.lies(covered)) continue;
    const place = arrangement.placeOf(covered);
    const { poles } = arrangement.shapeOf(covered);
    if (!inside(ring, place.x + poles[0]! - x, place.y + poles[1]! - y)) continue;
    arrangement.put(covered, { shape: place.shape, x: place.x + dx, y: place.y + dy });
  }
}
