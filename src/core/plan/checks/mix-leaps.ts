import { itemAt } from '../../item-at';
import { mostRasping } from '../../bottom/allowances';
import { layerMix, type LayerMix } from '../../bottom/layer-mix';
import { Problem } from '../../problem';
import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { StyleRun } from '../runs';
import type { Check, MixLayers } from './check';
import { worstSize } from './worst';

/** A mix leaps where it has more layers by this share than the sheets as sold would make (common practice). */
const LEAP = 1 / 3;

/** Rasping that is tried to keep a mix, mm: more takes too much of the edge's time (common practice). */
const RASPING_TRIED = [0.5, 1, 1.5, 2, 2.5, 3];

/**
 * Mixes of layers that a sheet a little off its thickness turns into far more and thinner ones, where more rasping would
 * keep them: told with the least that does (derived).
 */
export function mixLeaps(run: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  return (['lift', 'platform'] as const).flatMap((part) => leapOf(run, part, stocks));
}

function leapOf(
  { style, sizes }: StyleRun,
  part: 'lift' | 'platform',
  stocks: ReadonlyMap<string, Stock>,
): readonly Check[] {
  const codes = part === 'lift' ? style.lifts : style.platform;
  const offered = codes.flatMap((code) => stocks.get(fold(code)) ?? []);
  // As sold and as measured are the same mix.
  if (offered.every(({ soldThickness }) => soldThickness === undefined)) return [];
  const allowed = mostRasping(style, offered);
  const asSold = offered.map(({ thickness, soldThickness }) => ({ thickness: soldThickness ?? thickness }));
  const mixOf = ({ bottom }: StyleRun['sizes'][number]) => (part === 'lift' ? bottom.lifts : bottom.platform);
  const leap = (size: StyleRun['sizes'][number]) => {
    const mix = mixOf(size);
    const sold = mix && mixIfAny(heightOf(mix), asSold, allowed);
    return mix && sold && leaps(mix, sold) ? layersIn(mix) - layersIn(sold) : undefined;
  };
  const most = worstSize(sizes, leap);
  const mix = most && mixOf(most.sizeRun);
  const sold = mix && mixIfAny(heightOf(mix), asSold, allowed);
  if (!most || !mix || !sold) return [];
  for (const wanted of RASPING_TRIED.filter((rasping) => rasping > allowed)) {
    const kept = mixIfAny(heightOf(mix), offered, wanted);
    if (!kept || leaps(kept, sold)) continue;
    return [
      {
        kind: 'mixLeap',
        subject: style.code,
        verdict: 'lookAt',
        part,
        found: allowed,
        wanted,
        layers: inLayers(mix, offered),
        asSold: inLayers(sold, asSold),
        kept: inLayers(kept, offered),
        stock: offered.find((stock) => (stock.mostRasping ?? Infinity) < wanted)?.code,
        size: most.size,
      },
    ];
  }
  return [];
}

/** What a mix was to reach, mm. */
function heightOf({ built, rasped }: LayerMix): number {
  return built - rasped;
}

function layersIn({ counts }: LayerMix): number {
  return counts.reduce((sum, count) => sum + count, 0);
}

function leaps(mix: LayerMix, sold: LayerMix): boolean {
  return layersIn(mix) > (1 + LEAP) * layersIn(sold);
}

/** As many of each as needed, whatever is on hand. @returns undefined where no layers reach the height */
function mixIfAny(
  height: number,
  offers: readonly { readonly thickness: number }[],
  rasping: number,
): LayerMix | undefined {
  try {
    return layerMix(
      height,
      offers.map(({ thickness }) => ({ thickness })),
      rasping,
    );
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

function inLayers({ counts }: LayerMix, offers: readonly { readonly thickness: number }[]): readonly MixLayers[] {
  return offers
    .map(({ thickness }, i) => ({ count: itemAt(counts, i), thickness }))
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.thickness - a.thickness);
}
