import { sheetArea } from '../../core/stock/stock';
import type { OrderLine } from '../../core/plan/order';
import { inPacks } from '../../core/stock/purchase';
import { convertUnit } from '../../core/units';
import { offersTable } from '../../tables/offers';
import { step } from '../working';
import { cell, type ColumnWorking, type ColumnWorkings, type Context } from './context';
import { cuttingColumns } from './cutting';

const ofCutting =
  (key: string): ColumnWorkings<OrderLine>[string] =>
  ({ cutting }, context) =>
    cuttingColumns[key]!(cutting, context);

/** A cell of the stock's own row, or of its row in Offers where that has the column. */
const stock = (
  context: Context,
  { cutting: { stock: of } }: OrderLine,
  name: string,
  symbol?: string,
  value?: number,
) =>
  of.offer !== undefined && name in offersTable.columns
    ? cell(context, 'offers', of.offer, name, symbol, value)
    : cell(context, 'stock', of.row, name, symbol, value);

/** What is bought of one of several offers of a format. */
function boughtOfOne(line: OrderLine, context: Context): ColumnWorking {
  const { stock: of, offers, sheets } = line.cutting;
  const { minimum, pack } = of;
  const shelf = offers.reduce((sum, offer) => sum + offer.onHand, 0);
  const bought = line.need - line.shelf;
  const others = offers.filter((offer) => offer !== of);
  return {
    given: [
      stock(context, line, 'price'),
      stock(context, line, 'onHand'),
      stock(context, line, 'minimum', 'm', minimum),
      stock(context, line, 'pack', 'k', pack),
      ...others.flatMap((offer) => {
        const one = { ...line, cutting: { ...line.cutting, stock: offer } };
        return ['price', 'onHand', 'minimum', 'pack'].map((name) => stock(context, one, name));
      }),
    ],
    steps: [
      step('n', 'Sheets of this format', undefined, sheets),
      step('h', 'On the shelf, of all its offers', undefined, shelf),
      step('l', 'Sheets that lack', 'max(0, n − h)', Math.max(0, sheets - shelf)),
      step('x', 'Of these bought of this offer: at least cost, tried out over all offers', undefined, bought),
    ],
    symbol: 'B',
    what: bought === 0 ? 'Nothing to buy of it' : 'No fewer than are sold, in whole packs',
    formula: inPacks(of, bought) === line.buy ? (bought === 0 ? 'x' : '⌈max(x, m) / k⌉ · k') : undefined,
  };
}

export const orderColumns: ColumnWorkings<OrderLine> = {
  Stock: ofCutting('Stock'),
  For: ({ uses }, context) => ({
    given: [...new Set(uses.map(({ style }) => style))].flatMap((style) => {
      const row = context.plan.runs.styles.find((one) => one.style.code === style)?.style.row;
      return row === undefined ? [] : [cell(context, 'styles', row, 'code')];
    }),
    what: 'Styles and parts whose stock this is, as in Styles',
  }),
  'Thick mm': ofCutting('Thick mm'),
  'Pieces number': ofCutting('Pieces number'),
  'Area use %': ofCutting('Area use %'),
  'Least possible': ofCutting('Least possible'),
  Need: ofCutting('Sheets'),
  'On hand': (line, context) => ({
    given: [stock(context, line, 'onHand')],
    what: 'Sheets on the shelf, as in Bottom stock or Offers',
  }),
  Buy: (line, context) => {
    const { stock: of, offers } = line.cutting;
    const { onHand, minimum, pack } = of;
    if (offers.length > 1) return boughtOfOne(line, context);
    const lack = Math.max(0, line.need - onHand);
    return {
      given: [
        stock(context, line, 'onHand', 'h', onHand),
        stock(context, line, 'minimum', 'm', minimum),
        stock(context, line, 'pack', 'k', pack),
      ],
      steps: [step('n', 'Sheets needed', undefined, line.need), step('l', 'Sheets that lack', 'max(0, n − h)', lack)],
      symbol: 'B',
      what: lack === 0 ? 'Nothing to buy' : 'No fewer than are sold, in whole packs',
      formula: lack === 0 ? 'l' : '⌈max(l, m) / k⌉ · k',
    };
  },
  'Sold by': (line, context) => ({
    given: [stock(context, line, 'soldBy')],
    what: 'What the price is for, as in Bottom stock or Offers',
  }),
  'Price ¤ a sheet': (line, context) => {
    const { soldBy, thickness, density = 0, price = 0 } = line.cutting.stock;
    const area = sheetArea(line.cutting.stock);
    const from = [stock(context, line, 'price', 'c', price), stock(context, line, 'soldBy')];
    const size = [stock(context, line, 'width'), stock(context, line, 'length')];
    const whole = step('A', 'Area of a sheet', undefined, area, 'mm²');
    const symbol = 's';
    if (soldBy === 'sheet')
      return { given: from, symbol, what: 'Price of a sheet, as in Bottom stock or Offers', formula: 'c' };
    if (soldBy === 'kg') {
      return {
        given: [...from, ...size, stock(context, line, 'density', 'ρ', density)],
        steps: [whole, step('t', 'Its thickness', undefined, thickness, 'mm')],
        symbol,
        what: 'Price of a sheet by its weight: a kg/m³ is a kg in 1,000,000,000 mm³',
        formula: 'c · A · t · ρ / 1000000000',
      };
    }
    const unit = soldBy === 'm²' ? 'm2' : 'ft2';
    return {
      given: [...from, ...size],
      steps: [whole, step('a', `The same in ${soldBy}`, undefined, convertUnit(area, 'mm2', unit), soldBy)],
      symbol,
      what: 'Price of a sheet by its area',
      formula: 'c · a',
    };
  },
  'To pay ¤': (line, context) => ({
    given: [stock(context, line, 'price')],
    steps: [
      step('s', 'Price of a sheet', undefined, line.sheetPrice ?? 0),
      step('B', 'Sheets to buy', undefined, line.buy),
    ],
    symbol: 'z',
    what: 'What they cost',
    formula: 's · B',
  }),
};
