import { atLength } from '../last/profile';
import type { Bottom } from './bottom';
import type { Layer } from './layer';
import { breastLine } from './raise';

/** Heights over the ground of a layer's upper face, mm, as a gauge reads them on the finished bottom; blank where it does not reach. */
export interface Gauge {
  readonly back?: number | undefined;
  readonly breast?: number | undefined;
  readonly tread?: number | undefined;
}

/** The gauge heights of every layer of a bottom but welt and cover, by its item (derived). */
export function gauges(bottom: Bottom): ReadonlyMap<number, Gauge> {
  const { layers, face, last, liftHeight, through } = bottom;
  const atBreast = atLength(face, breastLine(last));
  const places = {
    back: { height: liftHeight, slope: face.slope[0]! },
    breast: { height: Math.max(0, atBreast.z), slope: atBreast.slope },
  };
  const welt = layers.find(({ part }) => part === 'welt')?.thickness ?? 0;
  const result = new Map<number, Gauge>();
  let [seat, tread] = [0, 0];
  let raised = false;
  for (const layer of [...layers].reverse()) {
    if (layer.part === 'welt' || layer.part === 'cover') continue;
    if (layer.part === 'lift') {
      raised = true;
      const upper = (place: keyof typeof places) => upperFace(layer, layers, places[place]);
      const long = (layer.lift?.front ?? layer.length) >= atBreast.x - 1e-6;
      result.set(layer.item, {
        back: seat + upper('back'),
        breast: long ? seat + upper('breast') : undefined,
        tread: layer.underTread ? tread + Math.min(through, layer.lift?.upper ?? 0) : undefined,
      });
      continue;
    }
    // The insole lies on the welt's far side.
    const thickness = layer.thickness - (layer.rasped ?? 0) + (layer.part === 'insole' ? welt : 0);
    if (layer.underSeat) seat += thickness;
    if (layer.underTread) tread += thickness;
    result.set(layer.item, {
      back: layer.underSeat ? seat + (raised ? places.back.height : 0) : undefined,
      breast: layer.underSeat ? seat + (raised ? places.breast.height : 0) : undefined,
      tread: layer.underTread ? tread + (raised ? through : 0) : undefined,
    });
  }
  return result;
}

/** Height of a lift's upper face over the ground face of the lifts, at a place where they are so high and the last slopes so. */
function upperFace(
  layer: Layer,
  layers: readonly Layer[],
  { height, slope }: { readonly height: number; readonly slope: number },
): number {
  if (layer.lift) return Math.min(height, layer.lift.upper);
  // Bent layers hang from the last: what lies above takes its substance, measured upright.
  const above = layers
    .filter(({ part, item }) => part === 'lift' && item < layer.item)
    .reduce((sum, { thickness }) => sum + thickness, 0);
  return Math.max(0, height - above / Math.cos((slope * Math.PI) / 180));
}
