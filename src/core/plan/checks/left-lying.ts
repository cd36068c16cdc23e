import type { LayerMix } from '../../bottom/layer-mix';
import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { SizeRun, StyleRun } from '../runs';
import type { Check } from './check';

/** Sheets that a style names for lifts or platform and that no size of it is built from: too stout, or not needed. */
export function leftLying({ style, sizes }: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  return (['lift', 'platform'] as const).flatMap((part): readonly Check[] => {
    const mixOf = ({ bottom }: SizeRun): LayerMix | undefined => (part === 'lift' ? bottom.lifts : bottom.platform);
    const mixes = sizes.flatMap((size) => mixOf(size) ?? []);
    if (mixes.length === 0) return [];
    const highest = Math.max(...mixes.map(({ built }) => built));
    const codes = part === 'lift' ? style.lifts : style.platform;
    return codes.flatMap((code, i): readonly Check[] => {
      const stock = stocks.get(fold(code));
      if (!stock || mixes.some(({ counts }) => counts[i] !== 0)) return [];
      const { thickness } = stock;
      return [
        {
          kind: 'leftLying',
          subject: style.code,
          verdict: thickness > highest ? 'lookAt' : 'holds',
          stock: stock.code,
          part,
          thickness,
          highest,
        },
      ];
    });
  });
}
