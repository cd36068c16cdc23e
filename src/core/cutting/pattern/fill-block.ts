import type { Pattern, Member } from './pattern';

/** Pieces of a pattern in a rectangle of row length × height, from (0, 0). */
export interface PatternFill {
  readonly pattern: Pattern;
  readonly count: number;
  /** Where the pattern's origin lies. */
  readonly x: number;
  readonly y: number;
}

/** Rows whose ends are tried against the rectangle's ends: those after them repeat much the same. */
const ENDS_TRIED = 4;

const FUZZ = 1e-9;

interface PatternRow {
  readonly member: Member;
  readonly x: number;
  readonly y: number;
}

/**
 * The most pieces of a pattern that fit in a rectangle, with the pattern's rows along it: the lowest row of each kind in
 * turn stands on the lower edge, and one row's end in turn lies flush with an end.
 */
export function fillBlock(pattern: Pattern, length: number, height: number): PatternFill {
  let best: PatternFill = { pattern, count: 0, x: 0, y: 0 };
  for (const { lay, y: offset } of pattern.members) {
    const y = -lay.box.bottom - offset;
    const rows = rowsOf(pattern, y, height);
    const tried = rows.length > 2 * ENDS_TRIED ? [...rows.slice(0, ENDS_TRIED), ...rows.slice(-ENDS_TRIED)] : rows;
    for (const { member, x: rowX } of tried) {
      const { left, right } = member.lay.box;
      for (const x of [-left - rowX, length - right - rowX]) {
        let count = 0;
        for (const row of rows) count += countIn(pattern, row, x, length);
        if (count > best.count) best = { pattern, count, x, y };
      }
    }
  }
  return best;
}

/** Where the pieces of a filled rectangle lie: their origins, turned as the pattern's members are. */
export function placesIn({ pattern, x, y }: PatternFill, length: number, height: number): readonly Member[] {
  return rowsOf(pattern, y, height).flatMap((row) => {
    const first = firstIn(pattern, row, x);
    return Array.from({ length: countIn(pattern, row, x, length) }, (_, k) => ({
      lay: row.member.lay,
      x: row.x + x + (first + k) * pattern.pitch,
      y: row.y,
    }));
  });
}

/** How far the pieces of a filled rectangle reach along and across. */
export function reachOf(
  { pattern, x, y }: PatternFill,
  length: number,
  height: number,
): { length: number; height: number } {
  let along = 0;
  let across = 0;
  for (const row of rowsOf(pattern, y, height)) {
    const count = countIn(pattern, row, x, length);
    if (count === 0) continue;
    const { right, top } = row.member.lay.box;
    along = Math.max(along, row.x + x + (firstIn(pattern, row, x) + count - 1) * pattern.pitch + right);
    across = Math.max(across, row.y + top);
  }
  return { length: along, height: across };
}

function rowsOf({ members, rise, slant }: Pattern, y: number, height: number): readonly PatternRow[] {
  const rows: PatternRow[] = [];
  for (const member of members) {
    const { bottom, top } = member.lay.box;
    const first = Math.ceil((-bottom - y - member.y) / rise - FUZZ);
    const last = Math.floor((height - top - y - member.y) / rise + FUZZ);
    for (let k = first; k <= last; k++) rows.push({ member, x: member.x + k * slant, y: y + member.y + k * rise });
  }
  return rows;
}

function firstIn({ pitch }: Pattern, { member, x: rowX }: PatternRow, x: number): number {
  return Math.ceil((-member.lay.box.left - rowX - x) / pitch - FUZZ);
}

function countIn(pattern: Pattern, row: PatternRow, x: number, length: number): number {
  const last = Math.floor((length - row.member.lay.box.right - row.x - x) / pattern.pitch + FUZZ);
  return Math.max(0, last - firstIn(pattern, row, x) + 1);
}
