import { itemAt } from '../../../../src/core/item-at';
import type { Placements } from '../../../../src/core/cutting/sheet/layout';
import type { NaturalSheet } from '../../../../src/core/cutting/sheet/natural-sheet';
import type { Piece } from '../../../../src/core/cutting/sheet/piece';
import { moved } from '../../../../src/core/geometry/moved';
import type { Point, Ring } from '../../../../src/core/geometry/ring';
import { areaOutside, complaints, sharedArea, toEdge } from '../oracle';
import { rectangle, regular } from '../outlines';

/** An invented hide, 1000 × 600 mm, bulged by waves of several heights. */
export function hideOf(waves: readonly number[]): Ring {
  return Array.from({ length: 48 }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / 48;
    const bulge = waves.reduce((sum, wave, k) => sum + wave * Math.cos((k + 2) * angle + k), 1);
    return [500 + 420 * bulge * Math.cos(angle), 300 + 240 * bulge * Math.sin(angle)];
  });
}

export function at(ring: Ring, x: number, y: number): Ring {
  return moved(ring, 0, x, y);
}

export const SHEET: NaturalSheet = {
  outline: hideOf([0.05, -0.04, 0.03]),
  holes: [at(regular(7, 18), 430, 320), at(regular(5, 12), 700, 220)],
  zones: [{ ring: at(rectangle(1000, 170), 0, 0), quality: 2 }],
  quality: 1,
  backbone: 300,
};
export const FORMAT = { length: 1000, width: 600, knifeRoom: 3, edgeTrim: 5, natural: SHEET };

/** What is wrong with natural sheets by arithmetic that the project does not use. */
export function naturalComplaints(
  pieces: readonly Piece[],
  format: typeof FORMAT,
  sheets: readonly Placements[],
): string[] {
  const { outline, holes, zones } = format.natural;
  const found = complaints(pieces, { ...format, edgeTrim: 0 }, sheets);
  sheets.forEach((sheet, number) => {
    for (const { piece, turn, x, y } of sheet) {
      const { key, ring, quality = 1 } = itemAt(pieces, piece);
      const laid = moved(ring, turn, x, y);
      const here = `sheet ${number}: ${key}`;
      if (areaOutside(laid, outline) > 0.05) found.push(`${here} leaves the outline`);
      for (const edge of [outline, ...holes]) {
        const gap = Math.min(...laid.map((p) => toEdge(p, edge)), ...edge.map((p) => toEdge(p, laid)));
        if (gap < format.edgeTrim - 2e-3) found.push(`${here} lies ${gap} from an edge`);
      }
      if (holes.some((hole) => sharedArea(laid, hole) > 0)) found.push(`${here} lies on a hole`);
      for (const zone of zones) {
        const shared = zone.quality > quality ? sharedArea(laid, zone.ring) : 0;
        if (shared > 0.1) found.push(`${here} has ${shared} mm² on a zone that does not do`);
      }
    }
  });
  return found;
}
