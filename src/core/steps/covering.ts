import { itemAt, itemRound } from '../item-at';
import { builtThickness, type Layer } from '../bottom/layer';
import type { CoverPiece } from '../bottom/cover-piece';
import type { Style } from '../bottom/style';
import { readying } from './gluing';
import { areaOf, faceOf, facesOf, operation, piecesOf } from './operation';
import type { Act, Face, Joint, Operation } from './step';

/** Margins of a cover: turned over on top, under, and in on to a heel's breast. */
export type Margin = 'over' | 'under' | 'in';

/** Whether what is covered is a heel, and no wedge and no platform. */
export function isOfHeel(covered: readonly Layer[], { raise }: Pick<Style, 'raise'>): boolean {
  return raise === 'heel' && covered.some(({ part }) => part === 'lift');
}

/** What of a cover lies on the upper and the lower face of what it covers, mm²: not more than nine tenths of them. */
export function margins(
  covered: readonly Layer[],
  strip: CoverPiece,
  style: Style,
): { readonly over: number; readonly under: number } {
  const areas = covered.map(areaOf);
  const most = 0.9 * Math.max(...areas);
  // A heel's ground face is its lowest lift; under a wedge that is bent on, all its layers come to the ground.
  const ground = isOfHeel(covered, style) ? 0.9 * itemRound(areas, -1) : most;
  return {
    over: Math.min(most, strip.over * style.turnOver),
    under: Math.min(ground, strip.under * style.turnUnder),
  };
}

/** Faces on which margins lie: where, and what the margins leave of them. */
export function underMargins(
  faces: readonly Face[],
  zone: Margin,
  by: number,
): { readonly lain: readonly Face[]; readonly left: readonly Face[] } {
  const sum = faces.reduce((all, { area: size }) => all + size, 0);
  const share = sum > 0 ? Math.min(1, by / sum) : 0;
  return {
    lain: faces.map(({ piece, side, area: size }) => ({ piece, side, zone, area: size * share })),
    left: faces.map((one) => ({ ...one, within: true, area: one.area * (1 - share) })),
  };
}

/**
 * The joint of a cover: its flesh all over against the wall and the faces that its margins are turned on to. Where what it
 * covers is on the last already, its top edge cannot be turned over and is folded on itself.
 * @param lain where its margins lie
 */
export function coverJoint(
  covered: readonly Layer[],
  cover: Layer,
  strip: CoverPiece,
  lain: readonly Face[],
  apart: boolean,
): Joint {
  const height = covered.reduce((sum, piece) => sum + builtThickness(piece), 0);
  const part = (piece: Layer, side: Face['side'], size: number): Face => ({ piece, side, area: size });
  return {
    above: [...covered.map((piece) => part(piece, 'edge', (strip.wall * builtThickness(piece)) / height)), ...lain],
    below: [part(cover, 'flesh', strip.area)],
    adds: [cover],
    brings: apart ? [] : [cover],
    apart,
  };
}

/** Covering an edge: the wall and where the margins lie made ready and coated, the cover laid, its margins turned. */
export function covering(joint: Joint, style: Style): readonly Operation[] {
  const cover = itemAt(joint.adds, 0);
  const { apart } = joint;
  const faces = facesOf(joint);
  const pieces = piecesOf(faces);
  const rest = { joint, apart };
  const grain = (zone: Margin): Face => ({ piece: cover, side: 'grain', zone, area: 0 });
  const closes = cover.cover?.closes === true;
  const ends: readonly Act[] = isOfHeel(pieces, style) && !closes ? ['turn in'] : [];
  const turned = [...(apart ? [grain('over')] : []), grain('under'), ...(ends.length > 0 ? [grain('in')] : [])];
  return [
    operation('skive', ['skive margins'], [cover], { ...rest, faces: [faceOf(cover, 'flesh')] }),
    ...(apart ? [] : [operation('cover', ['fold edge'], [cover], rest)]),
    ...readying(joint.above, rest),
    operation('cement', ['coat'], pieces, { ...rest, faces, coated: faces }),
    operation('cover', closes ? ['join', 'close seam'] : ['join'], pieces, { ...rest, faces }),
    operation('cover', ['pare pleats', ...(apart ? (['turn over'] as const) : []), 'turn under', ...ends], pieces, {
      ...rest,
      faces: turned,
    }),
  ];
}
