import { SHEET_DIRECTIONS, MATERIALS, SOLD_BY, type SoldBy, type Stock, THICKEST } from '../core/stock/stock';
import { PAIRS } from '../core/cutting/sheet/matching-pairs';
import { box } from '../core/geometry/box';
import type { Outline } from '../core/plan/inputs';
import { tracedSheet } from '../core/plan/traced-sheet';
import { Problem } from '../core/problem';
import type { Reading } from './read';
import { choice, defaulted, number, optional, share, table, text } from './schema';

/** No sheet is thinner, mm. */
const LEAST = 0.1;

/** Other words for what a price is for: a whole sheet is a piece to who sells it, and a hide is one. */
const OTHERWISE_SOLD: Readonly<Record<string, SoldBy>> = {
  sheets: 'sheet',
  piece: 'sheet',
  pieces: 'sheet',
  pcs: 'sheet',
  each: 'sheet',
  unit: 'sheet',
  hide: 'sheet',
  skin: 'sheet',
  kilo: 'kg',
  'sq ft': 'ft²',
  'sq m': 'm²',
};

export const stockTable = table({
  name: 'Bottom stock',
  argument: 'stock',
  meaning: 'One row for each kind of sheet or hide that you can cut from',
  key: 'code',
  columns: {
    code: text({ heading: 'Stock', meaning: 'Code of the sheet' }),
    material: choice(
      { heading: 'Material', meaning: 'What it is; EVA is foam, microcellular rubber is rubber', width: 84 },
      MATERIALS,
      { EVA: 'foam', 'microcellular rubber': 'rubber' },
    ),
    nominal: number({
      heading: 'Thick',
      unit: 'mm',
      meaning: 'Thickness as sold',
      least: 0.1,
      most: THICKEST,
    }),
    measured: optional(
      number({
        heading: 'Measured',
        unit: 'mm',
        meaning: 'Thickness as measured, which the plan builds with; sheets differ by 0.2',
        least: 0.1,
        most: THICKEST,
        format: '0.0#',
      }),
    ),
    faceLoss: defaulted(
      number({
        heading: 'Face loss',
        unit: 'mm',
        meaning: 'Sanded off a sheet before it is glued; usual 0.5 to 1 a finished face',
        least: 0,
        most: 10,
      }),
      0,
    ),
    width: optional(
      number({
        heading: 'Width',
        unit: 'mm',
        meaning:
          'Width of a sheet; may be blank where it has an outline; of a hide known by its area alone, that of a rectangle of that area',
        least: 20,
        most: 20_000,
        format: '0',
      }),
    ),
    length: optional(
      number({
        heading: 'Length',
        unit: 'mm',
        meaning: 'Length of a sheet; of a hide, along its backbone',
        least: 20,
        most: 100_000,
        format: '0',
      }),
    ),
    outline: optional(
      text({ heading: 'Outline', meaning: 'Code in Outlines of a traced hide; it goes before width and length' }),
    ),
    price: optional(
      number({
        heading: 'Price',
        meaning: 'For what the next column names; the unit in this heading names your money',
        least: 0,
        most: 1e6,
        format: '0.00',
      }),
    ),
    soldBy: defaulted(
      choice(
        {
          heading: 'Sold by',
          meaning: 'What the price is for; what is sold by the piece, hide or skin is a sheet',
          width: 70,
        },
        SOLD_BY,
        OTHERWISE_SOLD,
      ),
      'sheet' as const,
    ),
    pack: defaulted(
      number({ heading: 'Pack', meaning: 'Sheets in a pack', least: 1, most: 10_000, whole: true, width: 70 }),
      1,
    ),
    minimum: defaulted(
      number({ heading: 'Minimum', meaning: 'Fewest sheets that are sold', least: 0, most: 100_000, whole: true }),
      0,
    ),
    onHand: defaulted(
      number({ heading: 'On hand', meaning: 'Whole sheets on the shelf', least: 0, most: 100_000, whole: true }),
      0,
    ),
    density: optional(
      number({
        heading: 'Density',
        unit: 'kg/m³',
        meaning: 'For weights, and for prices by kg',
        least: 5,
        most: 20_000,
        format: '0',
      }),
    ),
    smallestTube: optional(
      number({
        heading: 'Smallest tube',
        unit: 'mm',
        meaning: 'Diameter of the smallest tube that it rounds uncracked, from your own test',
        least: 0.1,
        most: 10_000,
        format: '0',
      }),
    ),
    direction: defaulted(
      choice(
        {
          heading: 'Direction',
          former: ['Lies'],
          meaning: 'How pieces may lie: any way, end for end along the length, or one way',
          width: 112,
        },
        SHEET_DIRECTIONS,
      ),
      'any way' as const,
    ),
    pairs: defaulted(
      choice(
        {
          heading: 'Pairs',
          meaning: 'Where left and right come from: anywhere, side by side, or mirrored across the backbone',
          width: 130,
        },
        PAIRS,
      ),
      'anywhere' as const,
    ),
    knifeRoom: defaulted(
      number({ heading: 'Knife room', unit: 'mm', meaning: 'Between pieces; usual 3 to 5', least: 0, most: 50 }),
      4,
    ),
    edgeTrim: defaulted(
      number({ heading: 'Edge trim', unit: 'mm', meaning: 'Lost along each edge of a sheet', least: 0, most: 500 }),
      10,
    ),
    mouldedFace: defaulted(
      choice({ heading: 'Moulded face', meaning: 'Whether one face is moulded to be walked on', width: 84 }, [
        'yes',
        'no',
      ] as const),
      'no' as const,
    ),
    usableShare: defaulted(
      share({
        heading: 'Usable share',
        meaning: 'Of a sheet or hide, unless it has an outline; of a hide usual 75 to 85',
        least: 0.05,
      }),
      1,
    ),
    roundingAllowance: optional(
      number({
        heading: 'Rounding allowance',
        unit: 'mm',
        meaning: 'Left a side for rasping or rounding; blank is as in Styles; usual 0.5 rubber, 1 cork, 1 to 1.5 foam',
        least: 0,
        most: 20,
      }),
    ),
    blockAllowance: optional(
      number({
        heading: 'Block allowance',
        unit: 'mm',
        meaning: 'Left a side by the saw where it makes a block; blank is as its other edges; usual 3 to 5',
        least: 0,
        most: 20,
      }),
    ),
    mostRasping: optional(
      number({
        heading: 'Most rasping',
        unit: 'mm',
        meaning: 'The most that may be rasped off a height built from it; blank is as in Styles',
        least: 0,
        most: 30,
      }),
    ),
    supplier: optional(text({ heading: 'Supplier', meaning: 'Who sells it; the shopping list is by supplier' })),
  },
});

/** A measured sheet seldom differs more from what it is sold as, mm (common practice). */
const MOST_APART = 0.5;

/** A stock from its row: what its thickness is once it is built in, and its outline where one is traced. */
export function toStock(
  {
    bySize: _none,
    nominal,
    measured,
    faceLoss,
    mouldedFace,
    width,
    length,
    outline,
    ...sheet
  }: Reading<(typeof stockTable)['columns']>['rows'][number],
  outlines: readonly Outline[] = [],
): Stock {
  const thickness = (measured ?? nominal) - faceLoss;
  if (thickness < LEAST) {
    throw new Problem(
      'invalid',
      { argument: 'stock', table: 'Bottom stock', row: sheet.row, column: 'Face loss' },
      `${faceLoss} mm sanded off leave less than ${LEAST} mm of it; give less`,
    );
  }
  const apart = measured !== undefined && Math.abs(measured - nominal) > MOST_APART + 1e-9;
  const made = {
    ...sheet,
    thickness,
    mouldedFace: mouldedFace === 'yes',
    ...(measured !== undefined && measured !== nominal && { soldThickness: nominal - faceLoss }),
    ...(thickness !== nominal && { nominal }),
    ...(apart && { apart: { nominal, measured } }),
  };
  if (outline !== undefined) {
    const across = sheet.pairs === 'across the backbone';
    const natural = tracedSheet({ row: sheet.row, outline, across }, outlines);
    const { right, top } = box(natural.outline);
    return { ...made, natural, width: top, length: right };
  }
  if (width === undefined || length === undefined) {
    throw new Problem(
      'invalid',
      { argument: 'stock', table: 'Bottom stock', row: sheet.row, column: width === undefined ? 'Width' : 'Length' },
      `it is blank; enter a number in mm, or name the outline of a traced hide under Outline${ofItsArea(sheet.soldBy)}`,
    );
  }
  return { ...made, width, length };
}

/** What is entered for a hide of which the area alone is known: a price by area takes it as length × width. */
function ofItsArea(soldBy: SoldBy): string {
  return soldBy === 'ft²' || soldBy === 'm²'
    ? '; a hide of which you know the area alone is a rectangle of that area, such as 1000 × 929 for 10 ft², with its Usable share'
    : '';
}
