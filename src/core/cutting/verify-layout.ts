import { box } from '../geometry/box';
import { gap } from '../geometry/gap';
import { moved } from '../geometry/moved';
import { overlap } from '../geometry/overlap';
import type { Box, Ring } from '../geometry/ring';
import type { Layout } from './layout';
import type { Piece } from './piece';
import { type SheetFormat, TOLERANCE } from './sheet';
import { allows } from './way';

/** What is wrong with a layout. `sheet` counts from 0, `keys` name the pieces. */
export type Fault =
  | {
      readonly kind: 'knifeRoom';
      readonly sheet: number;
      readonly keys: readonly [string, string];
      readonly gap: number;
    }
  | { readonly kind: 'edgeTrim'; readonly sheet: number; readonly keys: readonly [string]; readonly gap: number }
  | { readonly kind: 'way'; readonly sheet: number; readonly keys: readonly [string]; readonly turn: number }
  | { readonly kind: 'count'; readonly keys: readonly [string]; readonly laid: number; readonly wanted: number }
  | { readonly kind: 'unknown'; readonly sheet: number; readonly keys: readonly []; readonly piece: number };

/**
 * Checks a layout piece by piece against what was asked, by nothing but the outlines as they lie: the distance between
 * every two on a sheet (their shared area where they touch), the distance from the sheet's edges, the direction, and
 * how many there are. It uses nothing of what made the layout.
 * @param counts 'exact': each piece as often as wanted; 'atMost': no more often
 * @returns no faults for a layout that can be cut
 */
export function verifyLayout(
  pieces: readonly Piece[],
  format: SheetFormat,
  layout: Layout,
  counts: 'exact' | 'atMost' = 'exact',
): readonly Fault[] {
  const faults: Fault[] = [];
  const laid = pieces.map(() => 0);
  layout.forEach((placements, sheet) => {
    const placed: { key: string; ring: Ring; box: Box }[] = [];
    for (const { piece, x, y, turn } of placements) {
      const wanted = pieces[piece];
      if (!wanted || ![x, y, turn].every(Number.isFinite)) {
        faults.push({ kind: 'unknown', sheet, keys: [], piece });
        continue;
      }
      laid[piece]++;
      if (!allows(wanted.way, turn)) faults.push({ kind: 'way', sheet, keys: [wanted.key], turn });
      const ring = moved(wanted.ring, turn, x, y);
      placed.push({ key: wanted.key, ring, box: box(ring) });
    }
    for (const { key, box: b } of placed) {
      const edge = Math.min(b.left, b.bottom, format.length - b.right, format.width - b.top);
      if (edge < format.edgeTrim - TOLERANCE) faults.push({ kind: 'edgeTrim', sheet, keys: [key], gap: edge });
    }
    faults.push(...tooClose(placed, format.knifeRoom, sheet));
  });
  pieces.forEach(({ key, count }, i) => {
    const wrong = counts === 'exact' ? laid[i] !== count : laid[i] > count;
    if (wrong) faults.push({ kind: 'count', keys: [key], laid: laid[i], wanted: count });
  });
  return faults;
}

/** Every two pieces of a sheet that do not keep the knife room, found by sweeping them from left to right. */
function tooClose(placed: readonly { key: string; ring: Ring; box: Box }[], room: number, sheet: number): Fault[] {
  const faults: Fault[] = [];
  const sorted = [...placed].sort((a, b) => a.box.left - b.box.left);
  sorted.forEach((a, i) => {
    for (let j = i + 1; j < sorted.length; j++) {
      const b = sorted[j];
      if (b.box.left >= a.box.right + room) break;
      if (b.box.bottom >= a.box.top + room || a.box.bottom >= b.box.top + room) continue;
      const between = gap(a.ring, b.ring, Math.max(room, TOLERANCE), a.box, b.box);
      if (between >= room - TOLERANCE && between > 0) continue;
      // Pieces that may lie edge on edge touch or share a sliver thinner than arithmetic can avoid.
      if (room <= TOLERANCE && overlap(a.ring, b.ring) <= TOLERANCE) continue;
      faults.push({ kind: 'knifeRoom', sheet, keys: [a.key, b.key], gap: between });
    }
  });
  return faults;
}

/** A fault in words, for a message. */
export function describeFault(fault: Fault): string {
  switch (fault.kind) {
    case 'knifeRoom':
      return `sheet ${fault.sheet + 1}: ${fault.keys[0]} and ${fault.keys[1]} lie ${fault.gap.toFixed(2)} mm apart`;
    case 'edgeTrim':
      return `sheet ${fault.sheet + 1}: ${fault.keys[0]} lies ${fault.gap.toFixed(2)} mm from the edge`;
    case 'way':
      return `sheet ${fault.sheet + 1}: ${fault.keys[0]} lies turned by ${fault.turn.toFixed(1)}°, which it may not`;
    case 'count':
      return `${fault.keys[0]} is laid ${fault.laid} times and wanted ${fault.wanted} times`;
    case 'unknown':
      return `sheet ${fault.sheet + 1}: piece ${fault.piece} is not in the list`;
  }
}

/** Stops a layout with faults from leaving the core: it would be a mistake of the tool, never of the maker. */
export function mustBeSound(faults: readonly Fault[]): void {
  if (faults.length)
    throw new Error(`The layout does not stand the check: ${faults.slice(0, 3).map(describeFault).join('; ')}`);
}
