import { itemAt } from '../../item-at';
import { mostRasping } from '../../bottom/allowances';
import { layerMix, type LayerMix } from '../../bottom/layer-mix';
import type { Style } from '../../bottom/style';
import { Problem } from '../../problem';
import type { Stock } from '../../stock/stock';
import { fold } from '../codes';
import type { SizeRun, StyleRun } from '../runs';
import type { Check, MixLayers } from './check';
import { worstSize } from './worst';

/** A mix leaps where it has more layers by this share than the sheets as sold would make (common practice). */
const LEAP = 1 / 3;

/** Rasping that is tried to keep a mix, mm: more takes too much of the edge's time (common practice). */
const RASPING_TRIED = [0.5, 1, 1.5, 2, 2.5, 3];

/** Rasping that is little more than allowed, mm: where it saves a layer, it is told (planning aid). */
const LITTLE_MORE = 0.5;

type MixedPart = 'lift' | 'platform';
type Stocks = ReadonlyMap<string, Stock>;

/**
 * Mixes of layers that a sheet a little off its thickness turns into far more and thinner ones, where more rasping would
 * keep them: told with the least that does; so are mixes that a little more would save a layer of (derived).
 */
export function mixLeaps(run: StyleRun, stocks: Stocks): readonly Check[] {
  return (['lift', 'platform'] as const).flatMap((part) => {
    const leap = leapOf(run, part, stocks);
    return leap.length > 0 ? leap : nearMiss(run, part, stocks);
  });
}

/** A mix with fewer layers that misses the rasping allowed by little, in the size that it saves most of. */
function nearMiss({ style, sizes }: StyleRun, part: MixedPart, stocks: Stocks): readonly Check[] {
  const offered = offeredFor(style, part, stocks);
  const allowed = mostRasping(style, offered);
  const thickest = Math.max(...offered.map(({ thickness }) => thickness));
  // No mix reaches the height with fewer layers than the thickest alone would.
  const isLeast = (mix: LayerMix) => layersIn(mix) <= Math.ceil(heightOf(mix) / thickest - 1e-9);
  const keptOf = (mix: LayerMix) =>
    isLeast(mix) ? mix : (mixIfAny(heightOf(mix), offered, allowed + LITTLE_MORE) ?? mix);
  const saved = (size: SizeRun) => {
    const mix = mixOf(size, part);
    return (mix && layersIn(mix) - layersIn(keptOf(mix))) || undefined;
  };
  const most = worstSize(sizes, saved);
  const mix = most && mixOf(most.sizeRun, part);
  if (!mix) return [];
  const kept = keptOf(mix);
  const wanted = Math.ceil(kept.rasped * 10 - 1e-6) / 10;
  return [told(style, part, offered, { mix, kept, wanted, size: most.size })];
}

function leapOf({ style, sizes }: StyleRun, part: MixedPart, stocks: Stocks): readonly Check[] {
  const offered = offeredFor(style, part, stocks);
  // As sold and as measured are the same mix.
  if (offered.every(({ soldThickness }) => soldThickness === undefined)) return [];
  const allowed = mostRasping(style, offered);
  const asSold = offered.map(({ thickness, soldThickness }) => ({ thickness: soldThickness ?? thickness }));
  const leap = (size: SizeRun) => {
    const mix = mixOf(size, part);
    const sold = mix && mixIfAny(heightOf(mix), asSold, allowed);
    return mix && sold && leaps(mix, sold) ? layersIn(mix) - layersIn(sold) : undefined;
  };
  const most = worstSize(sizes, leap);
  const mix = most && mixOf(most.sizeRun, part);
  const sold = mix && mixIfAny(heightOf(mix), asSold, allowed);
  if (!most || !mix || !sold) return [];
  for (const wanted of RASPING_TRIED.filter((rasping) => rasping > allowed)) {
    const kept = mixIfAny(heightOf(mix), offered, wanted);
    if (!kept || leaps(kept, sold)) continue;
    return [told(style, part, offered, { mix, kept, wanted, size: most.size, asSold: inLayers(sold, asSold) })];
  }
  return [];
}

interface Kept {
  readonly mix: LayerMix;
  readonly kept: LayerMix;
  readonly wanted: number;
  readonly size: number | undefined;
  readonly asSold?: readonly MixLayers[];
}

function told(
  style: Style,
  part: MixedPart,
  offered: readonly Stock[],
  { mix, kept, wanted, size, asSold }: Kept,
): Check {
  return {
    kind: 'mixLeap',
    subject: style.code,
    verdict: 'lookAt',
    part,
    found: mostRasping(style, offered),
    wanted,
    layers: inLayers(mix, offered),
    asSold,
    kept: inLayers(kept, offered),
    stock: offered.find((stock) => (stock.mostRasping ?? Infinity) < wanted)?.code,
    size,
  };
}

function offeredFor(style: Style, part: MixedPart, stocks: Stocks): readonly Stock[] {
  return (part === 'lift' ? style.lifts : style.platform).flatMap((code) => stocks.get(fold(code)) ?? []);
}

function mixOf({ bottom }: SizeRun, part: MixedPart): LayerMix | undefined {
  return part === 'lift' ? bottom.lifts : bottom.platform;
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
