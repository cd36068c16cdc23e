import type { Stock } from '../../stock/stock';
import type { OrderLine } from '../order';
import { piecesFrom } from '../pieces';
import type { StyleRun } from '../runs';

/** What a style has of a stock's sheets: its share by net area, and what that costs. */
export interface StockShare {
  readonly stock: Stock;
  readonly share: number;
  readonly money: number;
}

/** Of all sheets needed that have a price and that the style's pieces are cut from. */
export function stockShares(run: StyleRun, orders: readonly OrderLine[]): readonly StockShare[] {
  return orders.flatMap((order): readonly StockShare[] => {
    const { stock, netOfStock } = order.cutting;
    const own = piecesFrom(run, stock.code)?.area;
    const money = own === undefined ? undefined : costOfArea(order, own);
    return own === undefined || money === undefined ? [] : [{ stock, share: own / netOfStock, money }];
  });
}

/** What pieces of so much net area, mm², cost of the sheets needed; undefined where those have no price. */
export function costOfArea({ cutting, sheetPrice, need }: OrderLine, area: number): number | undefined {
  return sheetPrice === undefined ? undefined : (sheetPrice * need * area) / cutting.netOfStock;
}
