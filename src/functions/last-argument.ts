import { Finder } from '../core/plan/finder';
import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import { Problem } from '../core/problem';
import { isSize } from '../core/sizes/foot-length';
import { type Cell, type Cells, isBlank, isNought, readNumber, readText } from '../tables/cell';
import { lastsTable, toLast } from '../tables/lasts';
import { collectOutlines, outlinesTable } from '../tables/outlines';
import { readTable } from '../tables/read';

/** From row to row of PROFILE, mm. */
export const PROFILE_STEP = 10;

/** Whether no size is asked for: 0 is one in English and American systems only. */
function leavesSizeOut(size: Cell, { system }: Last): boolean {
  return isBlank(size) || (isNought(size) && !isSize(0, system));
}

/**
 * A last by its code in a table of lasts, and in a size of its own system or in its base size.
 * @throws Problem for an unknown code and for slips in the tables.
 */
export function readLast(
  code: Cell,
  lasts: Cells,
  size?: Cell,
  outlines?: Cells | null,
): { readonly last: Last; readonly size: number; readonly inSize: LastInSize } {
  const wanted = readText(code, { argument: 'last' });
  const { rows, problems } = readTable(lastsTable, lasts);
  if (problems[0]) throw problems[0];
  const row = rows.find((one) => one.code.toLowerCase() === wanted.toLowerCase());
  if (!row) {
    const known = rows.map((one) => one.code).join(', ');
    throw new Problem(
      'invalid',
      { argument: 'last' },
      `"${wanted}" is not in Lasts${known ? `, which holds ${known}` : ', which has no rows'}`,
    );
  }
  const points = readTable(outlinesTable, outlines ?? []);
  if (points.rows.length > 0 && points.problems[0]) throw points.problems[0];
  const last = toLast(row);
  const finder = new Finder({ lasts: [last], stock: [], outlines: collectOutlines(points.rows) });
  const place = { argument: 'size' };
  const own = leavesSizeOut(size, last) ? last.baseSize : readNumber(size, { least: -10, most: 450 }, place);
  return { last, size: own, inSize: finder.lastInSize(last, own, last.system, place) };
}
