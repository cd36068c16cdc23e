import { stockTable } from './stock';
import { number, optional, table, text } from './schema';

const { width, length, price, soldBy, pack, minimum, onHand } = stockTable.columns;

export const offersTable = table({
  name: 'Offers',
  argument: 'offers',
  meaning: 'One row for each other format or supplier of a sheet in Bottom stock; the plan takes what costs least',
  columns: {
    stock: text({ heading: 'Stock', meaning: 'Code of the sheet, as in Bottom stock' }),
    supplier: optional(text({ heading: 'Supplier', meaning: 'Who sells it' })),
    width: { ...width, meaning: 'Width of a sheet; blank is as in Bottom stock' },
    length: { ...length, meaning: 'Length of a sheet; blank is as in Bottom stock' },
    price: {
      ...price,
      meaning: 'For what the next column names; without one what is on hand is used and none is bought',
    },
    soldBy: { ...soldBy, fallback: undefined, meaning: 'What the price is for; blank is as in Bottom stock' },
    pack,
    minimum,
    onHand,
    days: optional(
      number({
        heading: 'Delivered in',
        unit: 'days',
        meaning: 'Days from the order until it is there',
        least: 0,
        most: 1000,
        format: '0',
      }),
    ),
  },
});
