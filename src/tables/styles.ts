import { LAYINGS, RAISES } from '../core/build/style';
import { choice, codes, defaulted, number, optional, table, text } from './schema';

const stock = (heading: string, meaning: string) => optional(text({ heading, meaning: `Stock code: ${meaning}` }));

export const stylesTable = table({
  name: 'Styles',
  argument: 'styles',
  meaning: 'Enter one row a style with what its bottom is built from',
  key: 'code',
  columns: {
    code: text({ heading: 'Style', meaning: 'Code of the style' }),
    last: text({ heading: 'Last', meaning: 'Code of its last, as in Lasts' }),
    insole: stock('Insole', 'the insole, against the last'),
    sole: stock('Sole', 'a full sole against the last, over the lifts'),
    raise: defaulted(
      choice(
        {
          heading: 'Raise',
          meaning: 'What raises the heel: a wedge to the tread, a heel up to its breast, or nothing',
          width: 74,
        },
        RAISES,
      ),
      'none' as const,
    ),
    lifts: defaulted(
      codes({ heading: 'Lifts', meaning: 'Stock codes of the lifts, one or more thicknesses to mix', width: 130 }),
      [],
    ),
    laying: defaulted(
      choice({ heading: 'Laying', meaning: 'Lifts lie flat, or are bent on along the last', width: 74 }, LAYINGS),
      'flat' as const,
    ),
    platform: stock('Platform', 'the platform, flat under the lifts'),
    outsole: stock('Outsole', 'the sole on the ground'),
    topPiece: stock('Top piece', 'the ground layer of a heel'),
    cover: stock('Cover', 'what covers the edges of wedge and platform'),
    lastedSubstance: defaulted(
      number({
        heading: 'Lasted substance',
        unit: 'mm',
        meaning: 'Upper, lining and stiffener, a side; usual 2 to 3',
        least: 0,
        most: 15,
      }),
      2.5,
    ),
    projection: defaulted(
      number({
        heading: 'Projection',
        unit: 'mm',
        meaning: 'Of sole, platform and outsole beyond the upper',
        least: -10,
        most: 30,
      }),
      0,
    ),
    roughEdge: defaulted(
      number({
        heading: 'Rough edge',
        unit: 'mm',
        meaning: 'Left a side for rasping or rounding; usual 2 to 3, leather 2 to 4',
        least: 0,
        most: 20,
      }),
      2,
    ),
    edgeLeft: defaulted(
      number({
        heading: 'Edge left',
        unit: 'mm',
        meaning: 'Thickness left at a skived front; usual 0.5 leather, 1 cork and foam',
        least: 0.1,
        most: 20,
      }),
      1,
    ),
    rasping: defaulted(
      number({
        heading: 'Rasping',
        unit: 'mm',
        meaning: 'The most that may be rasped off the built height',
        least: 0,
        most: 30,
      }),
      1,
    ),
    frontSlant: defaulted(
      number({
        heading: 'Front slant',
        unit: '°',
        meaning: "Slant of a wedge's front with the joints, inside forward; usual 10 to 15",
        least: -30,
        most: 30,
      }),
      12,
    ),
    soleBevel: optional(
      number({
        heading: 'Sole bevel',
        unit: '°',
        meaning: 'Angle of the skived edge of a leather sole; blank is square',
        least: 1,
        most: 89,
      }),
    ),
    soleEdge: defaulted(
      number({
        heading: 'Sole edge',
        unit: 'mm',
        meaning: 'Thickness left at a skived sole edge; usual 1.5 to 2',
        least: 0.1,
        most: 20,
      }),
      2,
    ),
    turnOver: defaulted(
      number({
        heading: 'Turn over',
        unit: 'mm',
        meaning: 'Of a cover, over the upper edge',
        least: 0,
        most: 60,
      }),
      12,
    ),
    turnUnder: defaulted(
      number({
        heading: 'Turn under',
        unit: 'mm',
        meaning: 'Of a cover, under the lower edge; usual 12 to 15',
        least: 0,
        most: 60,
      }),
      15,
    ),
  },
});
