/**
 * A style worked wholly by hand, for the help and for the test that holds the plan to it. The last is a ramp, so that
 * every figure is school arithmetic: gap 45 up to x 60, straight to 0 at x 168, 60 wide, square. Invented.
 */

const pairage = [
  ['Style', 38],
  ['Ramp shoe', 10],
];
const styles = [
  [
    'Style',
    'Last',
    'Raise',
    'Lifts',
    'Platform',
    'Outsole',
    'Lasted substance',
    'Projection',
    'Rounding allowance',
    'Skive to',
    'Most rasping',
    'Front slant',
  ],
  ['Ramp shoe', 'Ramp', 'wedge', 'Cork 6, Cork 4', 'Foam 10', 'Rubber 4', 0, 0, 0, 0.1, 1, 0],
];
const lasts = [
  [
    'Last',
    'System',
    'Base size',
    'Bottom length',
    'Heel height',
    'Tread',
    'Waist',
    'Seat',
    'Measured',
    'Pairs on hand',
    'Days on last',
  ],
  // The bottom is 60 + √(108² + 45²) = 177 long to the tread, which lies at two thirds of its length.
  ['Ramp', 'EU', 38, 265.5, 45, 60, 60, 60, 'Ramp', 2, 2],
];
const stock = [
  [
    'Stock',
    'Material',
    'Thick',
    'Width',
    'Length',
    'Price',
    'Sold by',
    'On hand',
    'Density',
    'Knife room',
    'Edge trim',
  ],
  ['Cork 6', 'cork', 6, 500, 1000, 12, 'sheet', 2, 250, 0, 0],
  ['Cork 4', 'cork', 4, 500, 1000, 20, 'kg', 0, 250, 0, 0],
  ['Foam 10', 'foam', 10, 500, 1000, 30, 'm²', 0, 200, 0, 0],
  ['Rubber 4', 'rubber', 4, 500, 1000, 4, 'ft²', 0, 1150, 0, 0],
];
const rates = [
  ['Item', 'For', 'Value', 'Unit'],
  ['Work', '', 30, 'money an hour'],
  ['Adhesive', '', 10, 'money a litre'],
  ['Adhesive', '', 4, 'm² a litre'],
  ['Coats', '', 1, 'coats'],
  ['Spoilage', '', 0.05, 'share spoiled'],
  ['Cutting', '', 1, 'minutes a piece'],
  ['Skiving', '', 2, 'minutes a skive'],
  ['Gluing', '', 1, 'minutes a joint'],
  ['Finishing', '', 15, 'minutes a pair'],
  ['Sock', '', 1.5, 'money a pair'],
];
const outlines = [
  ['Code', 'Role', 'x', 'y'],
  ...[
    [0, 45],
    [60, 45],
    [60, 45],
    [168, 0],
  ].map(([x, y]) => ['Ramp', 'gap', x, y]),
  ...[
    [0, -30],
    [265.5, -30],
    [265.5, 30],
    [0, 30],
  ].map(([x, y]) => ['Ramp', 'bottom', x, y]),
];
/** The tables as the plan functions take them. */
export const rampShoe: readonly unknown[][][] = [pairage, styles, lasts, stock, rates, outlines];

/** The same on a bench of six hours a day. */
export const rampShoeByDay: readonly unknown[][][] = rampShoe.with(4, [...rates, ['Bench', '', 6, 'hours a day']]);

/** What comes out, derived by hand from these tables; lengths in mm, areas in cm², from the last downward. */
export const BY_HAND = {
  thick: [4, 6, 6, 6, 6, 6, 6, 6, 10, 4],
  length: [69.36, 83.76, 98.16, 112.56, 126.96, 141.36, 155.76, 163, 256.5, 256.5],
  area: [41.616, 50.256, 58.896, 67.536, 76.176, 84.816, 93.456, 97.8, 153.9, 153.9],
  skive: [9.36, 14.16, 14.16, 14.16, 14.16, 14.16, 14.16, 7],
  skiveTo: [0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 3.0833],
  angle: 22.62,
  sheets: [3, 1, 1, 1],
  areaUse: [70.5248, 16.6464, 61.56, 61.56],
  buy: [1, 1, 1, 1],
  price: [12, 10, 15, 21.5278],
  toPay: 58.5278,
  stock: 8.25278,
  adhesive: 87.8352,
  minutes: 87,
  run: 545.877,
  batches: 5,
  days: 10,
  gauge: [46, 45, 55, 59],
} as const;
