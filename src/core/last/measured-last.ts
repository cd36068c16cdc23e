import { outline } from '../geometry/outline';
import type { Point, Ring } from '../geometry/ring';
import { Problem } from '../problem';
import { closedCurve } from './closed-curve';
import { assertGaps, type Gap } from './measured-profile';

/** What was measured of a last in its base size. */
export interface MeasuredLast {
  /** Gaps between bottom and ground: one line of them, or those of the two edges. */
  readonly gaps?: readonly Gap[] | undefined;
  /** Greatest difference between the gaps of the inside and of the outside edge, mm. */
  readonly twist?: number | undefined;
  /** The bottom's outline, x along the bottom: traced, or through half-widths. */
  readonly outline?: Ring | undefined;
}

/** Lists of points, as measured: [along the ground, height] for gaps, [along the bottom, half-width] for half-widths. */
export interface LastPoints {
  readonly gap?: readonly Point[] | undefined;
  readonly gapInside?: readonly Point[] | undefined;
  readonly gapOutside?: readonly Point[] | undefined;
  readonly halfWidthInside?: readonly Point[] | undefined;
  readonly halfWidthOutside?: readonly Point[] | undefined;
  readonly bottom?: readonly Point[] | undefined;
}

/**
 * Puts measurements of a last together: the mean of the gaps at both edges, and an outline through half-widths.
 * @param length of the bottom along it, mm
 * @throws Problem where lists are too short, out of order, or one edge is missing.
 */
export function measuredLast(points: LastPoints, length: number): MeasuredLast {
  const { gap, gapInside, gapOutside, halfWidthInside, halfWidthOutside, bottom } = points;
  const toGaps = (list: readonly Point[]) => list.map(([x, z]): Gap => ({ x, z }));
  const both = gapInside && gapOutside ? meanOf(toGaps(gapInside), toGaps(gapOutside)) : undefined;
  const single = gap ?? gapInside ?? gapOutside;
  for (const list of gap ? [gap] : [gapInside, gapOutside]) if (list) assertGaps(toGaps(list));
  return {
    gaps: gap ? toGaps(gap) : (both?.gaps ?? (single && toGaps(single))),
    twist: both?.twist,
    outline: bottom ? outline(bottom, 'measured bottom') : throughHalfWidths(halfWidthInside, halfWidthOutside, length),
  };
}

function meanOf(inside: readonly Gap[], outside: readonly Gap[]): { gaps: readonly Gap[]; twist: number } {
  const places = [...new Set([...inside, ...outside].map(({ x }) => x))].sort((a, b) => a - b);
  const end = Math.min(inside.at(-1)?.x ?? 0, outside.at(-1)?.x ?? 0);
  let twist = 0;
  const gaps = places
    .filter((x) => x <= end)
    .map((x): Gap => {
      const [a, b] = [heightAt(inside, x), heightAt(outside, x)];
      twist = Math.max(twist, Math.abs(a - b));
      return { x, z: (a + b) / 2 };
    });
  return { gaps, twist };
}

function heightAt(gaps: readonly Gap[], x: number): number {
  const after = gaps.findIndex((one) => one.x >= x);
  const [next, before] = [gaps[after], gaps[after - 1]];
  if (!next) return gaps.at(-1)?.z ?? 0;
  if (!before || next.x === x) return next.z;
  return before.z + ((x - before.x) / (next.x - before.x)) * (next.z - before.z);
}

function throughHalfWidths(
  inside: readonly Point[] | undefined,
  outside: readonly Point[] | undefined,
  length: number,
): Ring | undefined {
  if (!inside && !outside) return undefined;
  const bad = (reason: string) => new Problem('invalid', { argument: 'half-widths' }, reason);
  if (!inside || !outside) throw bad(`those of the ${inside ? 'outside' : 'inside'} are missing; give both`);
  for (const list of [inside, outside]) {
    if (list.length < 3) throw bad('give at least three on each side, from the seat to the toe');
    list.forEach(([x, y], i) => {
      if (y < 0) throw bad(`the one at ${x} mm is negative; measure from the length line outward`);
      const before = list[i - 1];
      if (before && x <= before[0])
        throw bad(`the one at ${x} mm follows the one at ${before[0]} mm; give them in order`);
      if (x < 0 || x > length) throw bad(`the one at ${x} mm lies off the bottom, which is ${length} mm long`);
    });
  }
  // Ends that were not measured are the back, on the length line, and the toe, midway between the last two.
  const within = (list: readonly Point[]) => list.filter(([x]) => x > 0 && x < length);
  const [right, left] = [within(inside), within(outside)];
  const toeY = ((left.at(-1)?.[1] ?? 0) - (right.at(-1)?.[1] ?? 0)) / 2;
  return closedCurve([
    [0, 0],
    ...right.map(([x, y]): Point => [x, -y]),
    [length, toeY],
    ...left.map(([x, y]): Point => [x, y]).reverse(),
  ]);
}
