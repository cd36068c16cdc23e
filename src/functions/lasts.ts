import { weltStrip as weltOf } from '../core/bottom/welt-strip';
import { footOutline } from '../core/last/foot-outline';
import { placesAlong } from '../core/last/profile';
import { tightestCurve } from '../core/last/tightest-curve';
import { Problem } from '../core/problem';
import { answer, IN_MM, measured } from './answer';
import { readSide, writeOutline } from './arguments';
import { readCover } from './cover-arguments';
import { PROFILE_STEP, readLast } from './last-argument';
import { readFoot, readLetOut, readWelt } from './lasts-arguments';
import { readWedge } from './wedge-arguments';
import { bentTable, liftTable } from './wedge-table';

// The metadata tool wants double quotes, and each file its own enumerations.
// prettier-ignore
/**
 * To which side a last's bottom curves.
 * @customenum {string}
 */
enum CurveSide {
  /** Over the ball. */
  over = "over",
  /** Into the waist. */
  hollow = "hollow",
}

// prettier-ignore
/**
 * Which foot of a pair.
 * @customenum {string}
 */
enum Foot {
  /** Left foot. */
  left = "left",
  /** Right foot: mirrored. */
  right = "right",
}

// prettier-ignore
/**
 * How the lifts of a wedge lie.
 * @customenum {string}
 */
enum Laying {
  /** Flat on the ground, skived under the last. */
  flat = "flat",
  /** Bent round the last. */
  bent = "bent",
}

/**
 * A last's bottom from the side: lengths along it and along the ground, height, slope.
 * @customfunction PROFILE
 * @param {any} last Code of the last.
 * @param {any[][]} lasts Lasts with its headings.
 * @param {any} [size] Size in the last's system; without it the base size. 0 is a size of English and American systems only.
 * @param {any[][]} [outlines] Outlines with its headings, where the last is measured.
 * @returns {any[][]} A table: a row every 10 mm along the bottom.
 */
export function profile(last: any, lasts: any[][], size?: any, outlines?: any[][]): any[][] {
  return answer(() => {
    const { inSize } = readLast(last, lasts, size, outlines);
    return [
      ['Along\nmm', 'Ground\nmm', 'Height\nmm', 'Slope\n°'],
      ...placesAlong(inSize.profile, PROFILE_STEP).map(({ s, x, z, slope }) => [s, x, z, slope]),
    ];
  });
}

/**
 * A last's bottom from above, x along the bottom from the back, y to the outside of a left foot.
 * @customfunction OUTLINE
 * @param {any} last Code of the last.
 * @param {any[][]} lasts Lasts with its headings.
 * @param {any} [size] Size in the last's system; without it the base size. 0 is a size of English and American systems only.
 * @param {Foot} [foot] left or right; without it left.
 * @param {any} [let_out] How far to let it out all round, mm; without it 0.
 * @param {any[][]} [outlines] Outlines with its headings, where the last is measured.
 * @returns {any[][]} A table: x and y, mm.
 */
export function outline(
  last: any,
  lasts: any[][],
  size?: any,
  foot?: Foot,
  let_out?: any,
  outlines?: any[][],
): any[][] {
  return answer(() => {
    const { inSize } = readLast(last, lasts, size, outlines);
    return writeOutline(footOutline(inSize.outline, readFoot(foot), readLetOut(let_out)));
  });
}

/**
 * The tightest curve of a last's bottom.
 * @customfunction TIGHTESTRADIUS
 * @param {any} last Code of the last.
 * @param {any[][]} lasts Lasts with its headings.
 * @param {CurveSide} [side] over (the ball) or hollow (of the waist); without it over.
 * @param {any} [size] Size in the last's system; without it the base size. 0 is a size of English and American systems only.
 * @param {any[][]} [outlines] Outlines with its headings, where the last is measured.
 * @returns {any} Radius, mm.
 */
export function tightestRadius(last: any, lasts: any[][], side?: CurveSide, size?: any, outlines?: any[][]): any {
  return measured(() => {
    const where = readSide(side);
    const curve = tightestCurve(readLast(last, lasts, size, outlines).inSize.profile, where);
    if (!curve)
      throw new Problem(
        'unavailable',
        { argument: 'last' },
        `its bottom has no curve ${where === 'over' ? 'to bend over' : 'with a hollow'}`,
      );
    return curve.radius;
  }, IN_MM);
}

/**
 * The lifts of a wedge under a last: how far each reaches, its skive, its heights.
 * @customfunction WEDGE
 * @param {any} last Code of the last.
 * @param {any[][]} lasts Lasts with its headings.
 * @param {any[][]} thicknesses Thicknesses on offer as measured, mm.
 * @param {any} [platform] Thickness of what lies under the wedge, mm; without it 0.
 * @param {Laying} [laying] flat or bent (round the last); without it flat.
 * @param {any} [skive_to] Thickness that fronts are skived to, mm; 0 is to nothing, without it 1.
 * @param {any} [most_rasping] The most that may be rasped off the height, mm; 0 is none, without it 1.
 * @param {any} [size] Size in the last's system; without it the base size. 0 is a size of English and American systems only.
 * @param {any[][]} [outlines] Outlines with its headings, where the last is measured.
 * @returns {any[][]} A table: flat lifts from the ground up, bent layers from the last downward; lengths without let-out.
 */
export function wedge(
  last: any,
  lasts: any[][],
  thicknesses: any[][],
  platform?: any,
  laying?: Laying,
  skive_to?: any,
  most_rasping?: any,
  size?: any,
  outlines?: any[][],
): any[][] {
  return answer(() => {
    const { bent, flat } = readWedge(
      last,
      lasts,
      thicknesses,
      platform,
      laying,
      skive_to,
      most_rasping,
      size,
      outlines,
    );
    return bent ? bentTable(bent) : liftTable(flat);
  });
}

/**
 * The strip that covers a wedge's edge, unrolled along the plan edge: round the back, or with a platform all round, its ends flush.
 * @customfunction COVERSTRIP
 * @param {any} last Code of the last.
 * @param {any[][]} lasts Lasts with its headings.
 * @param {any} turn_over Over the upper edge, mm.
 * @param {any} turn_under Under the lower edge, mm; usual 12 to 15.
 * @param {any} [platform] Thickness of a platform under the wedge, mm; without it none.
 * @param {any} [let_out] Edge of the build beyond the last's once it is rasped, less the cover, mm; without it 0.
 * @param {any} [size] Size in the last's system; without it the base size. 0 is a size of English and American systems only.
 * @param {any[][]} [outlines] Outlines with its headings, where the last is measured.
 * @returns {any[][]} A table: places along the strip with the edge's height and the width to cut, then length and area.
 */
export function coverStrip(
  last: any,
  lasts: any[][],
  turn_over: any,
  turn_under: any,
  platform?: any,
  let_out?: any,
  size?: any,
  outlines?: any[][],
): any[][] {
  return answer(() => {
    const { strip } = readCover(last, lasts, turn_over, turn_under, platform, let_out, size, outlines);
    return [
      ['At\nmm', 'Height\nmm', 'Width\nmm'],
      ...strip.stations.map(({ at, height, width }) => [at, height, width]),
      ['Length', strip.length, ''],
      ['Area mm²', strip.area, ''],
    ];
  });
}

/**
 * The welt strip for an outline: inseam and lap, and what its outer edge is stretched to.
 * @customfunction WELTSTRIP
 * @param {any[][]} outline Outline along which the welt is sewn: two columns, x and y in mm.
 * @param {any} lap Length added for the ends, mm.
 * @param {any} [width] Width of the strip, mm; without it 12.
 * @param {any} [from] Where a welt that does not go all round begins and ends, mm from the back, 0 at the back itself; without it all round.
 * @returns {any[][]} A table: length to cut, inseam, length of the outer edge, mm.
 */
export function weltStrip(outline: any[][], lap: any, width?: any, from?: any): any[][] {
  return answer(() => {
    const strip = weltOf(...readWelt(outline, lap, width, from));
    return [
      ['Length\nmm', 'Inseam\nmm', 'Outer edge\nmm'],
      [strip.length, strip.inseam, strip.outer],
    ];
  });
}
