import { greatestOf } from '../../numerics/extremes';
import { area } from '../../geometry/area';
import type { Piece } from '../sheet/piece';
import { type Column, columnOf } from './columns';
import type { Ground } from './ground';
import type { Solver } from './programme';

const NODES = 200;

/**
 * So many sheets of each format, and the offcuts, cut by known layouts so that the least area of the pieces lies on none; no piece
 * more often than it is wanted.
 * @param sheets of each format
 */
export function fullestSheets(
  kinds: readonly Piece[],
  columns: readonly Column[],
  grounds: readonly Ground[],
  sheets: readonly number[],
  solver: Solver,
): readonly Column[] {
  const wanted = kinds.map(({ count }) => count);
  const most = greatestOf(sheets) + 1;
  const cut = columns.map(() => ({ cost: 0, whole: true, most }));
  const areas = kinds.map(({ ring }) => area(ring));
  const largest = greatestOf(areas);
  const lacking = wanted.map((count, kind) => ({ cost: areas[kind]! / largest, whole: false, most: count }));
  const holding = wanted.map((count, kind) => ({
    terms: [
      ...columns.flatMap(({ counts }, j) => (counts[kind]! > 0 ? [[j, counts[kind]!] as const] : [])),
      [columns.length + kind, 1] as const,
    ],
    least: count,
  }));
  const using = grounds.flatMap(({ offcut, of }, i) => {
    const terms = columns.flatMap(({ ground }, j) => (ground === i ? [[j, 1] as const] : []));
    return terms.length > 0 ? [{ terms, most: offcut === undefined ? sheets[of]! : 1 }] : [];
  });
  const solution = solver({ variables: [...cut, ...lacking], rows: [...holding, ...using] }, NODES);
  const left = [...wanted];
  const chosen = columns.flatMap((column, j) => new Array<Column>(Math.round(solution?.values[j] ?? 0)).fill(column));
  return chosen.map(({ ground, placements: all }) => {
    const placements = all.filter(({ piece }) => left[piece]! > 0 && left[piece]!-- > 0);
    return columnOf(ground, placements, wanted.length);
  });
}
