import { atLength } from '../last/profile';
import type { Bottom } from './bottom';
import type { Layer } from './layer';
import { breastLine } from './raise';

/** Heights over the ground of a layer's upper face, mm, as a gauge reads them on the finished bottom. */
export interface Gauge {
  readonly back: number;
  /** undefined where the layer does not reach so far. */
  readonly breast?: number | undefined;
  readonly tread?: number | undefined;
}

/** The gauge heights of every layer of a bottom but welt and cover, by its item (derived). */
export function gauges(bottom: Bottom): ReadonlyMap<number, Gauge> {
  const { layers, face, last, liftHeight } = bottom;
  const atBreast = Math.max(0, atLength(face, breastLine(last)).z);
  const result = new Map<number, Gauge>();
  let [back, breast, tread] = [0, 0, 0];
  let lifted = 0;
  const stack = layers.filter(({ part }) => part !== 'welt' && part !== 'cover');
  for (const layer of [...stack].reverse()) {
    if (layer.part === 'lift') {
      const upper = lifted + upright(layer, bottom);
      back += Math.min(upper, liftHeight) - Math.min(lifted, liftHeight);
      breast += Math.min(upper, atBreast) - Math.min(lifted, atBreast);
      lifted = upper;
    } else {
      if (layer.underSeat) [back, breast] = [back + layer.thickness, breast + layer.thickness];
      if (layer.underTread) tread += layer.thickness;
    }
    const long = layer.part !== 'lift' || layer.length >= atLength(face, breastLine(last)).x;
    result.set(layer.item, {
      back,
      breast: long ? breast : undefined,
      tread: layer.underTread ? tread : undefined,
    });
  }
  return result;
}

/** What a lift adds upright at the back: a bent one more than its thickness, where the seat is pitched. */
function upright({ thickness, follows }: Layer, { face }: Bottom): number {
  return follows ? thickness / Math.cos(((face.slope[0] as number) * Math.PI) / 180) : thickness;
}
