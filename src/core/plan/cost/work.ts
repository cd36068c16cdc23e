import type { Bottom } from '../../bottom/bottom';
import { scopesOf } from './adhesive';
import { joints } from './joints';
import type { Rates } from './rates';

/** Bench time for one pair, minutes: every piece, skive and joint of both feet, and what is counted by the pair. */
export function work(bottom: Bottom, style: string, rates: Rates): number {
  let foot = 0;
  for (const layer of bottom.layers) {
    const scopes = scopesOf(style, layer);
    foot += rates.sum('minutes a piece', scopes);
    if (layer.skive) foot += rates.sum('minutes a skive', scopes);
  }
  for (const { below } of joints(bottom)) foot += rates.sum('minutes a joint', scopesOf(style, below));
  return 2 * foot + rates.sum('minutes a pair', [style]);
}
