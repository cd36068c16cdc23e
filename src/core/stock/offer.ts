import type { SoldBy, Stock } from './stock';

/** A format in which somebody sells a stock, besides the stock's own row in Bottom stock. */
export interface Offer {
  readonly row: number;
  /** Code of the stock. */
  readonly stock: string;
  readonly supplier?: string | undefined;
  /** mm; without them the sheet is as in Bottom stock, its outline too. */
  readonly width?: number | undefined;
  readonly length?: number | undefined;
  /** Without one nothing is bought of it: what is on hand is used. */
  readonly price?: number | undefined;
  /** Without it as in Bottom stock. */
  readonly soldBy?: SoldBy | undefined;
  readonly pack: number;
  readonly minimum: number;
  readonly onHand: number;
  /** Days until it is delivered. */
  readonly days?: number | undefined;
}

/** A stock as an offer has it. */
export function offeredAs(stock: Stock, offer: Offer): Stock {
  const { natural: _none, ...sheet } = stock;
  const { row, supplier, width, length, price, soldBy, pack, minimum, onHand, days } = offer;
  const own = width === undefined && length === undefined;
  return {
    ...(own ? stock : sheet),
    offer: row,
    supplier,
    width: width ?? stock.width,
    length: length ?? stock.length,
    price,
    soldBy: soldBy ?? stock.soldBy,
    pack,
    minimum,
    onHand,
    days,
  };
}

/** Whether sheets of two offers of a stock are alike. */
export function sameFormat(a: Stock, b: Stock): boolean {
  return a.width === b.width && a.length === b.length && a.natural === b.natural;
}

/** A sheet's format as layouts name it: "1000 × 500". */
export function formatName({ length, width }: Pick<Stock, 'length' | 'width'>): string {
  return [length, width].map((side) => String(Math.round(side * 10) / 10)).join(' × ');
}

/** Offers of one stock by their format, in the order in which the formats come first; of each the offers in theirs. */
export function byFormat(offers: readonly Stock[]): readonly (readonly Stock[])[] {
  const groups: Stock[][] = [];
  for (const offer of offers) {
    const group = groups.find(([first]) => first && sameFormat(first, offer));
    if (group) group.push(offer);
    else groups.push([offer]);
  }
  return groups;
}
