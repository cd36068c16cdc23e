/**
 * A style worked wholly by hand, for the help and for the test that holds the plan to it. The last is a ramp, so that
 * every figure is school arithmetic: gap 40 up to x 60, straight to 0 at x 160, 60 wide, square. Invented.
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
  ['Ramp shoe', 'Ramp', 'wedge', 'Cork 7, Cork 3', 'Foam 8', 'Rubber 4', 0, 0, 0, 0.1, 0, 0],
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
  // The bottom is 60 + √(100² + 40²) = 167.70 long to the tread, which lies at two thirds of its length.
  ['Ramp', 'EU', 38, 251.55, 40, 60, 60, 60, 'Ramp', 2, 2],
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
  ['Cork 7', 'cork', 7, 500, 1000, 12, 'sheet', 1, 250, 0, 0],
  ['Cork 3', 'cork', 3, 500, 1000, 20, 'kg', 0, 250, 0, 0],
  ['Foam 8', 'foam', 8, 500, 1000, 30, 'm²', 0, 200, 0, 0],
  ['Rubber 4', 'rubber', 4, 500, 1000, 4, 'ft²', 0, 1150, 0, 0],
];
const rates = [
  ['Item', 'For', 'Value', 'Unit'],
  ['Work', '', 30, 'money an hour'],
  ['Adhesive', '', 10, 'money a litre'],
  ['Adhesive', '', 4, 'm² a litre'],
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
    [0, 40],
    [60, 40],
    [60, 40],
    [160, 0],
  ].map(([x, y]) => ['Ramp', 'gap', x, y]),
  ...[
    [0, -30],
    [251.55, -30],
    [251.55, 30],
    [0, 30],
  ].map(([x, y]) => ['Ramp', 'bottom', x, y]),
];
/** The tables as the plan functions take them. */
export const rampShoe: readonly unknown[][][] = [pairage, styles, lasts, stock, rates, outlines];

/** What comes out, derived by hand from these tables; lengths in mm, areas in cm², from the last downward. */
export const BY_HAND = {
  thick: [3, 3, 3, 3, 7, 7, 7, 7, 8, 4],
  length: [67.25, 74.75, 82.25, 89.75, 107.25, 124.75, 142.25, 155, 243.85, 243.85],
  area: [40.35, 44.85, 49.35, 53.85, 64.35, 74.85, 85.35, 93, 146.31, 146.31],
  skive: [7.25, 7.25, 7.25, 7.25, 17.25, 17.25, 17.25, 12.5],
  angle: 21.8,
  sheets: [2, 1, 1, 1],
  areaUse: [63.51, 75.36, 58.524, 58.524],
  buy: [1, 1, 1, 1],
  price: [12, 7.5, 15, 21.5278],
  toPay: 56.0278,
  stock: 6.80278,
  adhesive: 79.857,
  minutes: 87,
  run: 529.814,
  batches: 5,
  days: 10,
  gauge: [52, 49, 46, 43, 40, 33, 26, 19, 12, 4],
} as const;
