import { ADHESIVES, COVERED, HEEL_CORES, LAYINGS, RAISES, SOLE_ENDS, WELT_ENDS } from '../core/bottom/style';
import type { Style } from '../core/bottom/style';
import { qualities } from './quality';
import type { Reading } from './read';
import { choice, codes, defaulted, number, optional, table, text } from './schema';

const YES_NO = ['yes', 'no'] as const;

const zone = (place: string) =>
  optional(
    number({
      heading: `Projection ${place}`,
      ...(place === 'tread' && { former: ['Projection joint'] }),
      unit: 'mm',
      meaning: `The same at the ${place}, where it differs`,
      least: -10,
      most: 30,
      width: 84,
    }),
  );

const stock = (heading: string, meaning: string) => optional(text({ heading, meaning: `Stock code: ${meaning}` }));

export const stylesTable = table({
  name: 'Styles',
  argument: 'styles',
  meaning: 'One row for each style with what its bottom is built from',
  key: 'code',
  columns: {
    code: text({ heading: 'Style', meaning: 'Code of the style' }),
    last: text({ heading: 'Last', meaning: 'Code of its last, as in Lasts' }),
    insole: stock('Insole', 'the insole, against the last'),
    welt: stock('Welt', 'the welt strip, sewn on round the lasted edge'),
    midsole: stock('Midsole', 'a through or mid sole against the last, over the sole'),
    sole: stock('Sole', 'a full sole against the last, over the lifts'),
    quality: optional(
      qualities({
        heading: 'Quality',
        meaning: 'Least quality to cut from, A the best: B for all, or insole B, lifts C; without it the best',
        width: 130,
      }),
    ),
    soleEnds: defaulted(
      choice(
        {
          heading: 'Sole ends',
          former: ['Sole run'],
          meaning: 'Over a heel a sole goes on and ends at the back, or goes down the breast',
          width: 140,
        },
        SOLE_ENDS,
        { 'to the back': 'at the back' },
      ),
      'at the back' as const,
    ),
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
      choice(
        {
          heading: 'Laying',
          meaning:
            'Lifts lie flat, are bent round the last, or are glued up as a block that is sawn; with a finished heel and no platform it goes on under the tread',
          width: 74,
        },
        LAYINGS,
      ),
      'flat' as const,
    ),
    platform: defaulted(
      codes({
        heading: 'Platform',
        meaning: 'Stock codes of the platform: each once, or with a finished heel thicknesses to mix',
        width: 130,
      }),
      [],
    ),
    finishedHeel: optional(
      number({
        heading: 'Finished heel',
        unit: 'mm',
        meaning:
          'Wanted height at the back; the platform is built to reach it, or a wedge sawn as one block that goes on under the tread where there is no platform',
        least: 1,
        most: 300,
      }),
    ),
    outsole: stock('Outsole', 'the sole on the ground; before a heel, of the forepart'),
    topPiece: stock('Top piece', 'the ground layer of a heel, trimmed flush with the heel or its cover'),
    cover: stock(
      'Cover',
      'what covers the edges of wedge and platform, or heel and platform each for itself, once they are rasped',
    ),
    shank: defaulted(
      choice({ heading: 'Shank', meaning: 'Whether a shank stiffens the waist', width: 60 }, YES_NO),
      'no' as const,
    ),
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
    projectionToe: zone('toe'),
    projectionTread: zone('tread'),
    projectionWaist: zone('waist'),
    projectionSeat: zone('seat'),
    roundingAllowance: defaulted(
      number({
        heading: 'Rounding allowance',
        former: ['Rough edge'],
        unit: 'mm',
        meaning: 'Left a side for rasping or rounding; usual 2 to 3, leather 2 to 4',
        least: 0,
        most: 20,
      }),
      2,
    ),
    skiveTo: defaulted(
      number({
        heading: 'Skive to',
        former: ['Edge left'],
        unit: 'mm',
        meaning: 'Thickness that a front is skived to; usual 0.5 leather, 1 cork and foam',
        least: 0.1,
        most: 20,
      }),
      1,
    ),
    rasping: defaulted(
      number({
        heading: 'Most rasping',
        former: ['Rasping'],
        unit: 'mm',
        meaning: 'The most that may be rasped off the built height, or sawn off a block',
        least: 0,
        most: 30,
      }),
      1,
    ),
    frontSlant: defaulted(
      number({
        heading: 'Front slant',
        unit: '°',
        meaning: "Slant of a wedge's front with the foot's joints, inside forward; usual 10 to 15",
        least: -30,
        most: 30,
      }),
      12,
    ),
    heelTaper: defaulted(
      number({
        heading: 'Heel taper',
        unit: 'mm',
        meaning: 'How much a heel narrows a side down to the ground',
        least: 0,
        most: 20,
      }),
      0,
    ),
    soleSkive: optional(
      number({
        heading: 'Sole skive',
        former: ['Sole bevel'],
        unit: '°',
        meaning: 'Angle of the skived edge of a leather sole; blank is square',
        least: 1,
        most: 89,
      }),
    ),
    soleSkiveTo: defaulted(
      number({
        heading: 'Sole skive to',
        former: ['Sole edge'],
        unit: 'mm',
        meaning: 'Thickness that the edge of a sole is skived to; usual 1.5 to 2',
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
    weltEnds: defaulted(
      choice(
        {
          heading: 'Welt ends',
          former: ['Welt run'],
          meaning: 'Where the welt ends, or that it goes all round',
          width: 110,
        },
        WELT_ENDS,
        { 'to the seat': 'at the seat' },
      ),
      'at the seat' as const,
    ),
    weltWidth: defaulted(
      number({ heading: 'Welt width', unit: 'mm', meaning: 'Width of the welt strip', least: 3, most: 60 }),
      12,
    ),
    weltLap: defaulted(
      number({
        heading: 'Welt lap',
        unit: 'mm',
        meaning: 'Length added for the ends of the welt',
        least: 0,
        most: 100,
      }),
      15,
    ),
    boughtPrice: optional(
      number({
        heading: 'Bought price',
        meaning: 'Price of a pair of finished units that could be bought instead',
        least: 0,
        most: 1e5,
        format: '0.00',
      }),
    ),
    boughtTooling: defaulted(
      number({
        heading: 'Bought tooling',
        meaning: 'Moulds or tools for one size of bought units',
        least: 0,
        most: 1e6,
        format: '0.00',
      }),
      0,
    ),
    boughtMinimum: defaulted(
      number({
        heading: 'Bought minimum',
        meaning: 'Fewest pairs of bought units, of all sizes together',
        least: 0,
        most: 1e6,
        whole: true,
      }),
      0,
    ),
    heelCore: defaulted(
      choice(
        {
          heading: 'Heel core',
          meaning: 'What a heel of cork, foam or board has in it for nails and screws to hold in',
          width: 84,
        },
        HEEL_CORES,
      ),
      'none' as const,
    ),
    adhesive: optional(
      choice(
        {
          heading: 'Adhesive',
          meaning: 'Kind of adhesive: its usual times and coats hold where Costs and times are silent',
          width: 120,
        },
        ADHESIVES,
      ),
    ),
    breastAllowance: defaulted(
      number({
        heading: 'Breast allowance',
        unit: 'mm',
        meaning: 'Length that the bend of a sole down the breast takes; usual 3',
        least: 0,
        most: 30,
      }),
      3,
    ),
    tabLength: defaulted(
      number({
        heading: 'Tab length',
        unit: 'mm',
        meaning: 'Of a sole down the breast, turned on to the heel under the top piece; usual 3 to 4, 0 is none',
        least: 0,
        most: 30,
      }),
      4,
    ),
    tabWidth: defaulted(
      number({ heading: 'Tab width', unit: 'mm', meaning: 'Width of that tab; usual 10', least: 0, most: 80 }),
      10,
    ),
    coverLap: defaulted(
      number({
        heading: 'Cover lap',
        unit: 'mm',
        meaning:
          'How far each end of a cover goes past its seam, in the breast or at the back; both cut through; usual 5',
        least: 0,
        most: 40,
      }),
      5,
    ),
    boughtFitting: optional(
      number({
        heading: 'Bought fitting',
        unit: 'min',
        meaning:
          'Minutes to glue and fit a pair of bought units; blank is one joint on both feet, as in Costs and times',
        least: 0,
        most: 1e4,
        format: '0.#',
      }),
    ),
    boughtSizeMinimum: defaulted(
      number({
        heading: 'Bought minimum a size',
        meaning: 'Fewest pairs of one size of bought units; Bought minimum is of all sizes together',
        least: 0,
        most: 1e6,
        whole: true,
      }),
      0,
    ),
    covered: defaulted(
      choice(
        {
          heading: 'Covered',
          meaning:
            'Of a heel on a platform what the cover goes round, each with a piece of its own: both, or one of them; blank is both',
          width: 140,
        },
        COVERED,
      ),
      'heel and platform' as const,
    ),
  },
});

/** A style from its row. */
export function toStyle({
  bySize: _none,
  shank,
  quality = {},
  ...style
}: Reading<(typeof stylesTable)['columns']>['rows'][number]): Style {
  return { ...style, quality, shank: shank === 'yes' };
}
