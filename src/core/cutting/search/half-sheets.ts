import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { mirror } from '../../geometry/mirror';
import { moved } from '../../geometry/moved';
import { rectangleAbout } from '../../geometry/rectangle';
import { intersection } from '../../geometry/regions';
import type { Ring } from '../../geometry/ring';
import { itemAt } from '../../item-at';
import type { Layout, Placement, Placements } from '../sheet/layout';
import { type NaturalSheet, rectangular, type Zone } from '../sheet/natural-sheet';
import type { Piece } from '../sheet/piece';
import type { SheetFormat } from '../sheet/sheet';
import type { Bound } from './taken-apart';

/** How far the two of a pair may be off each other's place, mm: as much as layouts may. */
const MATCHED = 0.05;

/**
 * Takes for each sheet the half on one side of the backbone, with the flaws of both: what lies there lies on the other side
 * too, mirrored. Pieces of no pair are not laid so.
 * @returns undefined where a piece has no other across the backbone, or the sheet no such half
 */
export function halfSheets(pieces: readonly Piece[], format: SheetFormat, start: Layout): Bound | undefined {
  const { length, knifeRoom, edgeTrim } = format;
  const natural = format.natural ?? rectangular(format);
  const { backbone } = natural;
  // Pieces keep half the knife room from the backbone, where it is no edge.
  const bottom = backbone - (edgeTrim - knifeRoom / 2);
  const half = halfOf(natural, bottom);
  if (!half) return undefined;
  const mates = new Map<number, number>();
  const sheets: Placements[] = [];
  for (const sheet of start.sheets) {
    const laid = onHalf(pieces, sheet, backbone, mates);
    if (!laid) return undefined;
    sheets.push(laid.map((one) => ({ ...one, y: one.y - bottom })));
  }
  return {
    pieces: pieces.map((own, kind) => ({ ...own, count: sheets.flat().filter(({ piece }) => piece === kind).length })),
    format: { length, width: box(half.outline).top, knifeRoom, edgeTrim, natural: half },
    layout: { offcuts: [], sheets },
    twos: pieces.map((_, kind) => {
      const mate = mates.get(kind);
      return mate === undefined ? undefined : { mate, bottom, backbone };
    }),
  };
}

/** What lies beyond the backbone of a sheet; undefined where one of them has no other in its place, or another other than before. */
function onHalf(
  pieces: readonly Piece[],
  sheet: Placements,
  backbone: number,
  mates: Map<number, number>,
): Placements | undefined {
  const above = (one: Placement) => {
    const { bottom, top } = box(moved(itemAt(pieces, one.piece).ring, one.turn, one.x, one.y));
    return bottom + top > 2 * backbone;
  };
  const laid = sheet.filter(above);
  const others = sheet.filter((one) => !above(one));
  for (const one of laid) {
    const at = others.findIndex(
      ({ piece, x, y }) =>
        piece !== one.piece &&
        pieces[piece]?.pair !== undefined &&
        pieces[piece]?.pair === pieces[one.piece]?.pair &&
        Math.hypot(x - one.x, y + one.y - 2 * backbone) <= MATCHED,
    );
    const [mate] = at < 0 ? [] : others.splice(at, 1);
    if (!mate || (mates.get(one.piece) ?? mate.piece) !== mate.piece) return undefined;
    mates.set(one.piece, mate.piece);
  }
  return others.length === 0 ? laid : undefined;
}

/** What of a sheet lies above a line and is sound on both sides of its backbone, moved down by the height of the line. */
function halfOf({ outline, holes, zones, quality, backbone }: NaturalSheet, bottom: number): NaturalSheet | undefined {
  const across = (ring: Ring) => moved(mirror(ring), 0, 0, 2 * backbone);
  const down = (ring: Ring) => moved(ring, 0, 0, -bottom);
  const both = (ring: Ring) => [down(ring), down(across(ring))];
  const { left, right, top } = box(outline);
  const above = rectangleAbout({ left, right, bottom, top: Math.max(top, bottom) });
  const [largest] = [...intersection(intersection([outline], [across(outline)]), [above])].sort(
    (a, b) => area(b) - area(a),
  );
  const halves = zones.flatMap((zone): readonly Zone[] => {
    if (zone.quality > quality) return both(zone.ring).map((ring) => ({ ...zone, ring }));
    // Better ground is good only where the other side is as good.
    return zones.flatMap((other) =>
      intersection([zone.ring], [across(other.ring)]).map((ring) => ({
        ring: down(ring),
        quality: Math.max(zone.quality, other.quality),
      })),
    );
  });
  return largest && { outline: down(largest), holes: holes.flatMap(both), zones: halves, quality, backbone: 0 };
}
