import { fold } from '../codes';
import { askedOf, type PairageRow } from '../inputs';
import type { OrderLine } from '../order';
import { piecesFrom } from '../pieces';
import type { StyleRun } from '../runs';
import { costOfArea } from './stock-shares';

/** Stock of a style's pairs that are cut already. */
export interface StockCut {
  /** What it cost, as rows of the pairage have it. */
  readonly money: number;
  /** Pairs of rows that are cut and do not say what their stock cost. */
  readonly pairsWithout: number;
}

/** What the stock of the cut pairs of a style cost. */
export function stockCutOf(code: string, pairage: readonly PairageRow[]): StockCut {
  let [money, pairsWithout] = [0, 0];
  for (const row of pairage) {
    if (!row.cut || fold(row.style) !== fold(code)) continue;
    if (row.stockCut === undefined) pairsWithout += askedOf(row).pairs;
    else money += row.stockCut;
  }
  return { money, pairsWithout };
}

/**
 * What the stock of a row's pairs costs as it is planned: their part, by net area, of all sheets needed, as `stockShares` has
 * it of a style.
 * @returns undefined where sheets that they are cut from have no price
 */
export function stockOfRow(row: PairageRow, run: StyleRun, orders: readonly OrderLine[]): number | undefined {
  let money = 0;
  for (const order of orders) {
    const lines = piecesFrom(run, order.cutting.stock.code)?.lines ?? [];
    const own = lines.reduce((sum, { area, sizeRun: { size, system } }) => {
      return system === (row.system ?? run.last.system) ? sum + 2 * (row.pairs.get(size) ?? 0) * area : sum;
    }, 0);
    if (own === 0) continue;
    const part = costOfArea(order, own);
    if (part === undefined) return undefined;
    money += part;
  }
  return money;
}
