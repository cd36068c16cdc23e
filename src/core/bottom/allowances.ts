import type { Stock } from '../stock/stock';
import type { Part } from './layer';
import type { Style } from './style';

/** Left a side for rasping or rounding a piece, mm: of a block what its saw leaves, else what its stock or style leaves. */
export function roundingAllowance(
  style: Pick<Style, 'roundingAllowance'>,
  stock: Pick<Stock, 'roundingAllowance' | 'blockAllowance'>,
  block = false,
): number {
  return (block ? stock.blockAllowance : undefined) ?? stock.roundingAllowance ?? style.roundingAllowance;
}

/** The most that may be rasped off a height that is built from some stocks, mm: the least of what they allow. */
export function mostRasping(style: Pick<Style, 'rasping'>, stocks: readonly Pick<Stock, 'mostRasping'>[]): number {
  return Math.min(...stocks.map(({ mostRasping: own }) => own ?? style.rasping));
}

/** The sheet that allows so much itself; undefined where the style does. */
export function leastRasped<T extends Pick<Stock, 'mostRasping'>>(
  style: Pick<Style, 'rasping'>,
  stocks: readonly T[],
): T | undefined {
  const least = mostRasping(style, stocks);
  return stocks.find((stock) => stock.mostRasping === least);
}

/** Where that is given: the column, with the sheet that allows less than the style. */
export function whereMostRasping(
  style: Pick<Style, 'rasping'>,
  stocks: readonly Pick<Stock, 'code' | 'mostRasping'>[],
): string {
  const own = leastRasped(style, stocks);
  return own ? `Most rasping of ${own.code} in Bottom stock` : 'Most rasping in Styles';
}

/** Pieces that are cut to their finished edge. */
const AS_CUT: ReadonlySet<Part> = new Set(['insole', 'welt', 'cover'] as const);

/** What is left for rasping or rounding along the edge of a piece, mm; 0 where it is cut to its finished edge. */
export function edgeAllowance(
  part: Part,
  style: Pick<Style, 'roundingAllowance' | 'laying'>,
  stock: Pick<Stock, 'roundingAllowance' | 'blockAllowance'>,
): number {
  if (AS_CUT.has(part)) return 0;
  return roundingAllowance(style, stock, part === 'lift' && style.laying === 'block');
}
