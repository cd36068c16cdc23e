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
import { wholeTurn } from '../sheet/way';

/** One half of each sheet, and a layout of the one of each pair that lies on it. */
export interface HalfSheets {
  readonly pieces: readonly Piece[];
  readonly format: SheetFormat;
  readonly layout: Layout;
  /** A layout of whole pairs from one of these: the other half as in a mirror. */
  unbound(layout: Layout): Layout;
}

/** How far the two of a pair may be off each other's place, mm: as much as layouts may. */
const MATCHED = 0.05;

/**
 * Takes for each sheet the half on one side of the backbone, with the flaws of both: what lies there lies on the other side
 * too, mirrored. Pieces of no pair are not laid so.
 * @returns undefined where a piece has no other across the backbone, or the sheet no such half
 */
export function halfSheets(pieces: readonly Piece[], format: SheetFormat, start: Layout): HalfSheets | undefined {
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
  const counts = pieces.map((_piece, kind) => sheets.flat().filter(({ piece }) => piece === kind).length);
  const whole = (one: Placement): Placements => {
    const own = { ...one, y: one.y + bottom };
    const other = { piece: mates.get(one.piece) ?? one.piece, x: one.x, turn: wholeTurn(-one.turn) };
    return [own, { ...other, y: 2 * backbone - own.y }];
  };
  return {
    pieces: pieces.map((piece, kind) => ({ ...piece, count: itemAt(counts, kind) })),
    format: { length, width: box(half.outline).top, knifeRoom, edgeTrim, natural: half },
    layout: { offcuts: [], sheets },
    unbound: (layout) => ({ offcuts: [], sheets: layout.sheets.map((sheet) => sheet.flatMap(whole)) }),
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
      ({ piece, x, y, turn }) =>
        piece !== one.piece &&
        pieces[piece]?.pair !== undefined &&
        pieces[piece]?.pair === pieces[one.piece]?.pair &&
        Math.hypot(x - one.x, y + one.y - 2 * backbone) <= MATCHED &&
        Math.abs(Math.sin(((turn + one.turn) * Math.PI) / 360)) < 1e-6,
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
  const { left, right, top } = box(outline);
  const upper = rectangleAbout({ left: left - 1, right: right + 1, bottom, top: Math.max(top, bottom) + 1 });
  const down = (ring: Ring) => moved(ring, 0, 0, -bottom);
  const parts = intersection(intersection([outline], [across(outline)]), [upper]);
  const largest = parts.reduce<Ring | undefined>(
    (most, one) => (area(one) > (most ? area(most) : 0) ? one : most),
    undefined,
  );
  if (!largest) return undefined;
  const within = (...rings: readonly Ring[]) =>
    rings.flatMap((ring) => intersection([ring], [upper]).filter((part) => area(part) > 0));
  const both = (rings: readonly Ring[]) => rings.flatMap((ring) => within(ring, across(ring)));
  const worse = zones.filter((zone) => zone.quality > quality);
  const better = zones.filter((zone) => zone.quality <= quality);
  const own: readonly Zone[] = [
    ...worse.flatMap((zone) => both([zone.ring]).map((ring) => ({ ring, quality: zone.quality }))),
    // Better ground is good only where the other side is as good.
    ...better.flatMap((one) =>
      better.flatMap((other) =>
        within(...intersection([one.ring], [across(other.ring)])).map((ring) => ({
          ring,
          quality: Math.max(one.quality, other.quality),
        })),
      ),
    ),
  ];
  return {
    outline: down(largest),
    holes: both(holes).map(down),
    zones: own.map((zone) => ({ ...zone, ring: down(zone.ring) })),
    quality,
    backbone: 0,
  };
}
