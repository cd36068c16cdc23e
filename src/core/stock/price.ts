import { Problem } from '../problem';
import { convertUnit } from '../units';
import { sheetArea, type Stock } from './stock';
import { sheetWeight } from './weight';

/**
 * Money for a whole sheet, whatever it is sold by; undefined where no price is given.
 * @throws Problem where it is sold by weight and no density is given.
 */
export function priceOfSheet(stock: Stock): number | undefined {
  const { price } = stock;
  return price === undefined ? undefined : price * amountOfSheet(stock);
}

/**
 * How much a whole sheet is of what it is sold by: 1, or its m², ft² or kg.
 * @throws Problem where it is sold by weight and no density is given.
 */
export function amountOfSheet(stock: Stock): number {
  const { soldBy, thickness, density } = stock;
  if (soldBy === 'sheet') return 1;
  const area = sheetArea(stock);
  if (soldBy === 'm²') return convertUnit(area, 'mm2', 'm2');
  if (soldBy === 'ft²') return convertUnit(area, 'mm2', 'ft2');
  if (density === undefined) {
    throw new Problem(
      'invalid',
      { argument: 'stock', table: 'Bottom stock', row: stock.row, column: 'Density' },
      'what is sold by kg needs its density; enter it in kg/m³',
    );
  }
  return convertUnit(sheetWeight(area, thickness, density), 'g', 'kg');
}

/** Money for a m² that can be cut, by which sheets of any size compare; undefined where it cannot be told. */
export function pricePerArea(stock: Stock): number | undefined {
  const { price, soldBy, density, usableShare, natural } = stock;
  if (price === undefined || (soldBy === 'kg' && density === undefined)) return undefined;
  const usable = sheetArea(stock) * (natural ? 1 : usableShare);
  return priceOfSheet(stock)! / convertUnit(usable, 'mm2', 'm2');
}
