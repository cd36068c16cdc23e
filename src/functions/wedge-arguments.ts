import { type BentLayer, bentLayers } from '../core/bottom/bent-layers';
import { type FlatLift, flatLifts } from '../core/bottom/flat-lifts';
import { DEFAULT_RASPING, type LayerMix, layerMix } from '../core/bottom/layer-mix';
import type { Last } from '../core/last/last';
import type { LastInSize } from '../core/last/last-in-size';
import { Problem } from '../core/problem';
import { type Cell, type Cells, isBlank, readChoice } from '../tables/cell';
import { readLengthOr, readNumbers } from './arguments';
import { readLast } from './last-argument';

/** A wedge as WEDGE lists it: its lifts flat or bent on, one of both. */
export interface Wedge {
  readonly last: Last;
  readonly inSize: LastInSize;
  /** What lies under it, what is kept at skived fronts, the most that may be rasped off, mm. */
  readonly under: number;
  readonly edge: number;
  readonly rasping: number;
  /** Height that the lifts are to reach, mm: of bent ones square to the seat. */
  readonly height: number;
  readonly thicknesses: readonly number[];
  readonly mix: LayerMix;
  /** From the ground up. */
  readonly flat: readonly FlatLift[];
  /** From the last downward; undefined where they lie flat. */
  readonly bent: readonly BentLayer[] | undefined;
}

/** Reads the arguments of WEDGE and builds it. @throws Problem where one cannot be, or there is nothing to raise. */
export function readWedge(
  code: Cell,
  lasts: Cells,
  given: Cells,
  platform?: Cell,
  laying?: Cell,
  edgeLeft?: Cell,
  raspingLeft?: Cell,
  size?: Cell,
  outlines?: Cells | null,
): Wedge {
  const { last, inSize } = readLast(code, lasts, size, outlines);
  const { profile, heelHeight } = inSize;
  if (heelHeight <= 0) {
    throw new Problem('unavailable', { argument: 'last' }, 'its heel height is 0, so there is nothing to raise');
  }
  const thicknesses = readNumbers(given, 'thicknesses', { unit: 'mm', least: 0.1, most: 500 });
  const under = readLengthOr(platform, 'platform', 0, { most: 200 });
  const isBent = !isBlank(laying) && readChoice(laying, ['flat', 'bent'] as const, { argument: 'laying' }) === 'bent';
  const edge = readLengthOr(edgeLeft, 'edge_left', 1, { most: 20 });
  const rasping = readLengthOr(raspingLeft, 'rasping', DEFAULT_RASPING, { most: 30 });
  const pitch = isBent ? ((profile.slope[0] as number) * Math.PI) / 180 : 0;
  const height = heelHeight * Math.cos(pitch);
  const mix = layerMix(
    height,
    thicknesses.map((thickness) => ({ thickness })),
    rasping,
  );
  const courses = thicknesses
    .flatMap((thickness, i) => new Array<number>(mix.counts[i] as number).fill(thickness))
    .sort((a, b) => b - a);
  return {
    last,
    inSize,
    under,
    edge,
    rasping,
    height,
    thicknesses,
    mix,
    flat: isBent ? [] : flatLifts(profile, courses, { keptEdge: edge }),
    bent: isBent ? bentLayers(profile, [...courses].reverse(), edge) : undefined,
  };
}
