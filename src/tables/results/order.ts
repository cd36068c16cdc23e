import type { OrderLine } from '../../core/plan/order';
import { formatName } from '../../core/stock/offer';
import type { Stock } from '../../core/stock/stock';
import { counted } from '../counted';
import { allInWords, leftOutBeside, nameInWords, whyInWords } from '../left-out-in-words';
import { figure, MONEY, type ResultTable, sumOf, words } from '../result';
import { PART_WORDS } from '../words';

/** What to buy. */
export const orderTable: ResultTable<OrderLine> = {
  name: 'Order',
  meaning: 'Sheets needed, on hand and to buy, with what they cost',
  columns: [
    words('Stock', ({ cutting }) => cutting.stock.code, { total: allInWords, leftOut: nameInWords }),
    words('Sold by', ({ cutting }) => cutting.stock.soldBy, { width: 70, leftOut: leftOutBeside('For') }),
    figure('Thick', ({ cutting }) => cutting.stock.thickness, { unit: 'mm', format: '0.0#' }),
    figure('Pieces', ({ cutting }) => cutting.count, { unit: 'number', format: '0' }),
    figure('Area use', ({ cutting }) => 100 * cutting.areaUse, { unit: '%' }),
    figure('Least possible', ({ cutting }) => cutting.least, { format: '0' }),
    figure('Need', ({ need }) => need, { format: '0' }),
    figure('On hand', ({ onHand }) => onHand, { format: '0' }),
    figure('Buy', ({ buy }) => buy, { format: '0' }),
    figure('Price', ({ sheetPrice }) => sheetPrice, { unit: `${MONEY} a sheet`, format: '0.00' }),
    figure('To pay', ({ toPay }) => toPay, {
      unit: MONEY,
      format: '0.00',
      width: 84,
      total: sumOf(({ toPay }) => toPay),
    }),
    // The last, so that no neighbour cuts it off.
    words('For', usesInWords, { width: 130, leftOut: whyInWords }),
  ],
};

function usesInWords({ uses, cutting }: OrderLine): string {
  const parts = new Map<string, string[]>();
  for (const { style, part } of uses) parts.set(part, [...(parts.get(part) ?? []), style]);
  const words = [...parts]
    .map(([part, styles]) => {
      const word = PART_WORDS[part as keyof typeof PART_WORDS].toLowerCase();
      return `${styles.join(', ')} ${part === 'lift' ? 'lifts' : word}`;
    })
    .join('; ');
  return [...offerInWords(cutting.stock), words].join(': ');
}

/** The offer that sheets are of, where it is not the stock's own row: "Quay Cork, 1000 × 500 mm, in 5 days". */
function offerInWords(stock: Stock): readonly string[] {
  const { offer, supplier, days } = stock;
  if (offer === undefined) return [];
  const when = days === undefined ? [] : [`in ${counted(days, 'day')}`];
  return [[...(supplier === undefined ? [] : [supplier]), `${formatName(stock)} mm`, ...when].join(', ')];
}
