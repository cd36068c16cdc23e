import { area } from '../../geometry/area';
import { adhesiveForArea } from '../../steps/adhesive-for-area';
import { USUAL_TIMES } from '../../steps/usual-times';
import type { StyleRun } from '../runs';
import type { Rates } from './rates';

/** What a pair of bought units takes before it is on the shoes: the lasted bottom and the unit glued to one another. */
export interface Fitting {
  readonly minutes: number;
  /** ml; nothing where no coverage is given. */
  readonly adhesive: number;
  /** Money of both. */
  readonly cost: number;
}

/**
 * Gluing and fitting bought units: the maker's own minutes, else one joint on both feet; adhesive on both faces of the whole
 * bottom, on the average of the sizes (derived).
 */
export function fittingOf({ style, sizes, pairs }: StyleRun, rates: Rates): Fitting {
  const { code, boughtFitting } = style;
  const minutes = boughtFitting ?? 2 * rates.sum('minutes a joint', [code]);
  const usual = USUAL_TIMES[style.adhesive ?? 'polychloroprene'];
  // The lasted bottom is of leather.
  const coats =
    (rates.one('coats', [code]) ?? usual.coats) + (rates.one('coats', [code, 'leather']) ?? usual.absorbent);
  const coverage = rates.one('m² a litre', [code, 'leather']) ?? 0;
  const bottoms = sizes.reduce((sum, one) => sum + one.pairs * area(one.bottom.last.outline), 0) / pairs;
  const adhesive = coverage > 0 ? 2 * adhesiveForArea(bottoms, coats, coverage) : 0;
  const cost =
    (minutes / 60) * (rates.one('money an hour', [code]) ?? 0) +
    (adhesive / 1000) * (rates.one('money a litre', [code]) ?? 0);
  return { minutes, adhesive, cost };
}
