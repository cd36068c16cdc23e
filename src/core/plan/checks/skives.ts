import type { Layer } from '../../bottom/layer';
import type { StyleRun } from '../runs';
import type { Check } from './check';
import { layersOf, worst } from './worst';

/** A skive that is longer than its piece, or wider than half of it all round, cannot be cut. */
export function skiveChecks({ style, sizes }: StyleRun): readonly Check[] {
  const room = ({ skive, length, width }: Layer) => (skive?.at === 'edge' ? Math.min(length, width) / 2 : length);
  const widest = worst(
    layersOf(sizes).filter(({ skive }) => skive),
    (layer) => (layer.skive?.width ?? 0) / room(layer),
  );
  if (!widest?.skive || widest.skive.width <= room(widest)) return [];
  const { item, part, skive } = widest;
  return [
    {
      kind: 'skiveWide',
      subject: style.code,
      verdict: 'putRight',
      item,
      part,
      found: skive.width,
      wanted: room(widest),
    },
  ];
}
