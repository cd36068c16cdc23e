import { sameFormat } from '../../stock/offer';
import { fold } from '../codes';
import type { PlanInput } from '../inputs';
import type { OrderLine } from '../order';
import { offersOf } from '../quick-shares';
import type { Check } from './check';

/** Sheets of another format than those to buy that are on hand and stay there: no layout that cuts them costs less. */
export function leftOnHand(
  { stock, offers }: Pick<PlanInput, 'stock' | 'offers'>,
  orders: readonly OrderLine[],
): readonly Check[] {
  return stock.flatMap((one) => {
    const own = orders.filter(({ cutting }) => fold(cutting.stock.code) === fold(one.code));
    const bought = own.reduce((sum, { buy }) => sum + buy, 0);
    if (bought === 0) return [];
    const unused = offersOf(one, offers).filter(
      (offer) => offer.onHand > 0 && !own.some(({ cutting }) => sameFormat(cutting.stock, offer)),
    );
    return unused.map(({ onHand: sheets, width, length, offer }): Check => ({
      kind: 'leftOnHand',
      subject: one.code,
      verdict: 'lookAt',
      sheets,
      width,
      length,
      bought,
      offer,
    }));
  });
}
