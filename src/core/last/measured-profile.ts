import { itemAt } from '../item-at';
import { Problem } from '../problem';
import { type Profile, seatLine, treadLine } from './profile';

/** The gap between the last's bottom and the ground at a length along the ground from the back, mm. */
export interface Gap {
  readonly x: number;
  readonly z: number;
}

/** Gaps measured closer together than this tell more of the ruler than of the last, mm. */
const CLOSEST = 1;
/** Samples between two measured gaps. */
const STEPS = 32;
const DEGREE = 180 / Math.PI;

/**
 * The last's bottom through measured gaps: a natural cubic spline through them (standard), so that slope and curve run
 * on smoothly. A gap that is given twice at the same place is a corner, where one smooth piece ends and the next begins;
 * two gaps alone are joined straight. Past the last gap the bottom goes on straight, at its slope there or flat once it
 * stands on the ground.
 * @param gaps from the back (x = 0) onward
 * @param length of the bottom along it, mm: gives the seat and the tread line
 * @throws Problem where gaps are too few, go back, start late or lie under the ground.
 */
export function measuredProfile(gaps: readonly Gap[], length: number): Profile {
  assertGaps(gaps);
  const s: number[] = [];
  const x: number[] = [];
  const z: number[] = [];
  const slope: number[] = [];
  for (const piece of smoothPieces(gaps)) {
    const curve = naturalSpline(piece);
    for (let i = 0; i < curve.length; i++) {
      const [px, pz, dz] = itemAt(curve, i);
      const n = s.length;
      const step = i === 0 ? 0 : Math.hypot(px - itemAt(x, n - 1), pz - itemAt(z, n - 1));
      s.push((s[n - 1] ?? 0) + step);
      x.push(px);
      z.push(pz);
      slope.push(-Math.atan(dz) * DEGREE);
    }
  }
  goOn(s, x, z, slope, length);
  return {
    s: Float64Array.from(s),
    x: Float64Array.from(x),
    z: Float64Array.from(z),
    slope: Float64Array.from(slope),
    seat: seatLine(length),
    tread: treadLine(length),
    source: 'measured',
  };
}

/** @throws Problem where gaps are too few, go back, start late or lie under the ground. */
export function assertGaps(gaps: readonly Gap[]): void {
  const bad = (reason: string) => new Problem('invalid', { argument: 'measured gaps' }, reason);
  const [first] = gaps;
  if (!first || gaps.length < 2) throw bad('give at least two gaps, from the back to the tread');
  if (first.x !== 0) throw bad(`the first gap lies at ${first.x} mm; begin at the back, at 0`);
  gaps.forEach(({ x, z }, i) => {
    if (z < 0) throw bad(`the gap at ${x} mm is below the ground; give 0 or more`);
    const before = gaps[i - 1];
    if (before && x < before.x) throw bad(`the gap at ${x} mm follows the one at ${before.x} mm; give them in order`);
    if (before && x > before.x && x - before.x < CLOSEST) {
      throw bad(`gaps stand at ${before.x} and ${x} mm; give them ${CLOSEST} mm apart or more, or twice at a corner`);
    }
    if (before && x === before.x && gaps[i - 2]?.x === x) throw bad(`three gaps stand at ${x} mm; two make a corner`);
    if (before && x === before.x && z !== before.z) throw bad(`two different gaps stand at ${x} mm; give one`);
  });
}

function smoothPieces(gaps: readonly Gap[]): readonly (readonly Gap[])[] {
  const pieces: Gap[][] = [[]];
  gaps.forEach((gap, i) => {
    if (gaps[i - 1]?.x === gap.x) pieces.push([]);
    itemAt(pieces, pieces.length - 1).push(gap);
  });
  return pieces.filter((piece) => piece.length > 1);
}

/** Points [x, z, dz/dx] along the natural cubic spline through a piece's gaps. */
function naturalSpline(piece: readonly Gap[]): readonly (readonly [number, number, number])[] {
  const n = piece.length;
  const h = piece.slice(1).map((gap, i) => gap.x - itemAt(piece, i).x);
  const chord = piece.slice(1).map((gap, i) => (gap.z - itemAt(piece, i).z) / itemAt(h, i));
  const second = secondDerivatives(h, chord, n);
  const points: [number, number, number][] = [];
  for (let i = 0; i + 1 < n; i++) {
    const [from, width, a, b] = [itemAt(piece, i), itemAt(h, i), itemAt(second, i), itemAt(second, i + 1)];
    for (let k = i === 0 ? 0 : 1; k <= STEPS; k++) {
      const t = (k / STEPS) * width;
      const start = itemAt(chord, i) - (width * (2 * a + b)) / 6;
      const bend = (b - a) / width;
      points.push([
        from.x + t,
        Math.max(0, from.z + t * (start + t * (a / 2 + (t * bend) / 6))),
        start + t * (a + (t * bend) / 2),
      ]);
    }
  }
  return points;
}

/** Second derivatives at the knots, 0 at both ends: the tridiagonal system of the natural spline, by elimination. */
function secondDerivatives(h: readonly number[], chord: readonly number[], n: number): readonly number[] {
  const second = new Array<number>(n).fill(0);
  const upper = new Array<number>(n).fill(0);
  for (let i = 1; i + 1 < n; i++) {
    const [left, right] = [itemAt(h, i - 1), itemAt(h, i)];
    const pivot = 2 * (left + right) - left * itemAt(upper, i - 1);
    upper[i] = right / pivot;
    second[i] = (6 * (itemAt(chord, i) - itemAt(chord, i - 1)) - left * itemAt(second, i - 1)) / pivot;
  }
  for (let i = n - 2; i > 0; i--) {
    second[i] = itemAt(second, i) - itemAt(upper, i) * itemAt(second, i + 1);
  }
  return second;
}

function goOn(s: number[], x: number[], z: number[], slope: number[], length: number): void {
  const n = s.length - 1;
  const left = length - itemAt(s, n);
  if (left <= 0) return;
  const angle = itemAt(z, n) > 0 ? itemAt(slope, n) / DEGREE : 0;
  const down = angle > 0 ? Math.min(left, itemAt(z, n) / Math.sin(angle)) : left;
  for (const [way, a] of [
    [down, angle],
    [left - down, 0],
  ] as const) {
    if (way <= 0) continue;
    const i = s.length - 1;
    // The corner: the same place again with the new slope.
    s.push(itemAt(s, i), itemAt(s, i) + way);
    x.push(itemAt(x, i), itemAt(x, i) + way * Math.cos(a));
    z.push(itemAt(z, i), itemAt(z, i) - way * Math.sin(a));
    slope.push(a * DEGREE, a * DEGREE);
  }
}
