import type { Bottom } from '../../bottom/bottom';
import type { Layer } from '../../bottom/layer';
import { adhesiveForArea } from './adhesive-for-area';
import { joints } from './joints';
import type { Rates } from './rates';

/**
 * Adhesive for one pair, ml, on both faces of every glued joint. Coats and coverage may differ by style, stock and
 * material.
 * @returns undefined where no coverage is given.
 */
export function adhesive(bottom: Bottom, style: string, rates: Rates): number | undefined {
  let foot = 0;
  for (const joint of joints(bottom)) {
    if (joint.sewn) continue;
    for (const face of [joint.above, joint.below]) {
      const scopes = face ? scopesOf(style, face) : [style];
      const coverage = rates.one('m² a litre', scopes);
      if (coverage === undefined || coverage === 0) return undefined;
      foot += adhesiveForArea(joint.area, rates.one('coats', scopes) ?? 1, coverage);
    }
  }
  return 2 * foot;
}

/** What a rate for a layer may be given for, the most particular first. */
export function scopesOf(style: string, { stock, material }: Layer): readonly string[] {
  return [style, stock, material];
}
