import { area } from '../../geometry/area';
import { box } from '../../geometry/box';
import { ARC_TOLERANCE, difference, grown, intersection } from '../../geometry/regions';
import { rectangle } from '../../geometry/rectangle';
import type { Ring } from '../../geometry/ring';
import { unionOutline } from '../../geometry/union-outline';

/** Quality of leather or other stock: 1 is the best, and a piece may be cut from any that is as good as it needs. */
export type Quality = number;

export const BEST: Quality = 1;

/** Part of a sheet that is of another quality than the rest. */
export interface Zone {
  readonly ring: Ring;
  readonly quality: Quality;
}

/**
 * A sheet of any outline, such as a hide: holes and flaws to keep clear of, and zones of other quality. Where zones lie
 * over each other the worst counts. Left and right pieces match across y = `backbone`.
 */
export interface NaturalSheet {
  readonly outline: Ring;
  readonly holes: readonly Ring[];
  readonly zones: readonly Zone[];
  /** Quality outside of all zones. */
  readonly quality: Quality;
  readonly backbone: number;
}

/** A rectangle as a sheet of its own outline; its backbone runs along its middle. */
export function rectangular({ length, width }: { readonly length: number; readonly width: number }): NaturalSheet {
  return { outline: rectangle(length, width), holes: [], zones: [], quality: BEST, backbone: width / 2 };
}

/** Where pieces of one quality may lie: within one of the outlines, off the rings that are closed to them. */
export interface Ground {
  readonly outlines: readonly Ring[];
  readonly closed: readonly Ring[];
}

/** The ground for pieces that need a quality, without regard to holes. */
export function groundFor({ outline, zones, quality }: NaturalSheet, needed: Quality): Ground {
  const closed = zones.filter((zone) => zone.quality > needed).map(({ ring }) => ring);
  if (quality <= needed) return { outlines: [outline], closed };
  const good = unionOutline(zones.filter((zone) => zone.quality <= needed).map(({ ring }) => ring));
  return { outlines: intersection(good, [outline]).filter((ring) => area(ring) > 0), closed };
}

/**
 * Where pieces of a quality may reach that keep the trim from edges and holes, each of them let out, so that they reach so far
 * beyond the ground on which they may lie (derived). Never less than where they truly may.
 * @param half what pieces are let out by: half the knife room, mm
 */
export function usableGround(sheet: NaturalSheet, needed: Quality, trim: number, half = 0): readonly Ring[] {
  const { outlines, closed } = groundFor(sheet, needed);
  // Pieces keep the trim from the sheet's edge, and none from that of a zone that does for them.
  const within = grown([sheet.outline], -trim);
  const room = sheet.quality <= needed ? within : intersection(within, outlines);
  const lost = [...grown(sheet.holes, trim), ...closed];
  const ground = difference(room, lost);
  return half > 0 ? grown(ground, half + ARC_TOLERANCE) : ground;
}

/** A sheet moved so that the box about it begins at the origin, as layouts are drawn. */
export function fromOrigin(sheet: NaturalSheet): NaturalSheet {
  const { left, bottom } = box(sheet.outline);
  const shifted = (ring: Ring): Ring => ring.map(([x, y]) => [x - left, y - bottom]);
  return {
    ...sheet,
    outline: shifted(sheet.outline),
    holes: sheet.holes.map(shifted),
    zones: sheet.zones.map(({ ring, quality }) => ({ ring: shifted(ring), quality })),
    backbone: sheet.backbone - bottom,
  };
}
