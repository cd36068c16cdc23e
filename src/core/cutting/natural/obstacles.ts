import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { rectangleAbout } from '../../geometry/rectangle';
import { difference, grown } from '../../geometry/regions';
import type { Ring } from '../../geometry/ring';
import { simplifyOutward } from '../../geometry/simplify-outward';
import { groundFor, type NaturalSheet, type Quality } from '../sheet/natural-sheet';

/** What lies beyond the box about a sheet counts so far, as a share of its longer side: pieces are pushed back in. */
const RIM = 0.15;
/** Along the length it counts no farther than half the way to the next sheet, which may lie half a length off. */
const MOST_BESIDE = 0.25;

/** How far an obstacle may reach beyond the true one, mm, and the least that counts, mm². */
const COARSENESS = 0.5;
const LEAST = 1;

/** The ground about a sheet is cut into so many parts each way, and into more where one would have a hole. */
const PARTS = 4;
const DEEPEST = 6;

/**
 * Simple rings over which pieces that need a quality may not lie: what the sheet's outline leaves of the box about it,
 * holes, and zones whose quality does not do.
 * @param half what the pieces are let out by: half the knife room, mm
 */
export function obstaclesOn(sheet: NaturalSheet, needed: Quality, trim: number, half: number): readonly Ring[] {
  const { outlines, closed } = groundFor(sheet, needed);
  const { left, bottom, right, top } = box(sheet.outline);
  const above = RIM * Math.max(right - left, top - bottom);
  const beside = Math.min(above, MOST_BESIDE * (right - left));
  const room = grown(outlines, half - trim);
  const [length, width] = [(right - left + 2 * beside) / PARTS, (top - bottom + 2 * above) / PARTS];
  const parts = Array.from({ length: PARTS * PARTS }, (_, i) => {
    const [x, y] = [left - beside + (i % PARTS) * length, bottom - above + Math.floor(i / PARTS) * width];
    return without(x, y, length, width, room, 0);
  });
  const flaws = [...grown(sheet.holes, Math.max(0, trim - half)), ...closed];
  return [...parts.flat(), ...flaws].filter((ring) => area(ring) > LEAST).map((r) => simplifyOutward(r, COARSENESS));
}

/** What a region leaves of a rectangle, as rings without holes. */
function without(
  x: number,
  y: number,
  length: number,
  width: number,
  region: readonly Ring[],
  depth: number,
): readonly Ring[] {
  const whole = rectangleAbout({ left: x, bottom: y, right: x + length, top: y + width });
  const rest = difference([whole], region);
  if (depth === DEEPEST || rest.every((ring) => area(ring) >= 0)) return rest.filter((ring) => area(ring) > 0);
  return length > width
    ? [0, length / 2].flatMap((by) => without(x + by, y, length / 2, width, region, depth + 1))
    : [0, width / 2].flatMap((by) => without(x, y + by, length, width / 2, region, depth + 1));
}
