import type { Stock } from '../stock/stock';
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
