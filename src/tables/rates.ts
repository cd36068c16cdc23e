import { RATE_UNITS } from '../core/plan/inputs';
import { choice, number, optional, table, text } from './schema';

export const ratesTable = table({
  name: 'Costs and times',
  argument: 'rates',
  meaning: 'Enter one row an operation or cost: what it is, its value and what the value counts',
  columns: {
    item: text({ heading: 'Item', meaning: 'What it is, in your words', width: 180 }),
    scope: optional(
      text({ heading: 'For', meaning: 'A style, a stock or a material that it holds for; blank is all' }),
    ),
    value: number({ heading: 'Value', meaning: 'How much', least: 0, most: 1e6, format: '0.00' }),
    unit: choice({ heading: 'Counts', meaning: 'What the value counts', width: 150 }, RATE_UNITS),
  },
});
