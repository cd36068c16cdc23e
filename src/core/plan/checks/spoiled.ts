import type { Cutting } from '../cutting';
import { ratesOf } from '../cost/rates';
import type { PlanInput } from '../inputs';
import type { Check } from './check';

/**
 * How many pieces a share spoiled stands for: it is counted in money alone, and none is cut or bought for it (pieces × share,
 * derived).
 */
export function spoiledChecks({ rates }: Pick<PlanInput, 'rates'>, { stocks }: Cutting): readonly Check[] {
  const found = ratesOf(rates);
  let [spare, all] = [0, 0];
  for (const { stock, lines, pieces } of stocks) {
    for (const [i, { run }] of lines.entries()) {
      const count = (pieces[2 * i]?.count ?? 0) + (pieces[2 * i + 1]?.count ?? 0);
      all += count;
      spare += count * (found.one('share spoiled', [run.style.code, stock.code, stock.material]) ?? 0);
    }
  }
  if (spare === 0) return [];
  return [{ kind: 'spoiled', subject: 'Costs and times', verdict: 'holds', pieces: Math.ceil(spare - 1e-9), of: all }];
}
