import type { Check } from '../../core/plan/checks/check';
import { fold } from '../../core/plan/codes';
import { cellIn, columnUnder } from '../../tables/block-cell';
import { bare } from '../../tables/cell';
import { placeOfCheck } from '../../tables/check-place';
import { INPUT_TABLES } from '../../tables/input-tables';
import { given, type Given, step, told, type WorkedStep } from '../working';
import type { ColumnWorkings, Context } from './context';

/** How the figures of each kind of check are worked out: found, then wanted. */
const HOW: Readonly<Partial<Record<Check['kind'], readonly [found: string, wanted: string]>>> = {
  heelControl: [
    'What stands at the back less what stands under the tread',
    'Heel height of the last, in the size where it differs most',
  ],
  rasping: [
    'Height that the mix builds, less the height that it is to reach',
    'The most that may be rasped off: the least of what its sheets allow, as in Bottom stock, else in Styles',
  ],
  proud: ['Greatest gap between a flat skive and the curved bottom, over all sizes', 'Limit, usual 1 mm'],
  bend: [
    'Tightest radius of the last’s curve, over all sizes',
    'Smallest radius that the sheet goes round: from its smallest tube, F · t / 2, and t more in a hollow',
  ],
  toeGround: ['What is glued up flat under the tread', 'The same with the toe spring of the last'],
  tubeUnknown: ['Tightest radius of the last’s curve, over all sizes', ''],
  skiveWide: ['Width of the skive', 'Room for it: the piece’s length, or half its width all round'],
  heelBase: [
    'Lean at which it tips over the edge of its base: atan(width / 2 · height), in the size where it is least',
    'Limit, usual 15°',
  ],
  rocker: [
    'Toe spring of the last',
    'Rise of a roll of 15° from the tread line to the toe, for a forepart too thick to bend, usual 20 mm',
  ],
  weltHidden: [
    'Projection at toe or tread, but no more than the welt’s width less the lasted substance',
    'Room for a sole stitch, 3 mm',
  ],
  shank: ['Greatest heel height of the last', 'Heel from which a waist wants a shank, usual 30 mm'],
  heelHold: ['Greatest heel height of the last', 'Heel from which more than adhesive fixes it, usual 30 mm'],
  plainModel: ['Greatest heel height of the last', 'Heel up to which the plain model serves, usual 50 mm'],
  misfit: ['How far the model misses the waist height, in the size where that is most', 'Limit, usual 1 mm'],
  modelAgainstGaps: ['Greatest difference between the plain model and the measured gaps', 'Limit, usual 1 mm'],
  twist: ['Greatest difference of the gaps at the two edges', 'Limit, usual 4 mm'],
  highBuild: [
    'Height at the back, in the size where it is most',
    'Height from which stability wants a second look, usual 50 mm',
  ],
  leatherPairs: ['', 'Difference in substance between the soles of a pair, usual 0.3 mm'],
  pairsCut: ['Pairs of rows that are cut', 'All pairs of the style'],
  lasts: ['Pairs of lasts on hand in that size', 'One pair or more'],
  late: ['Days from the day due to the day that the last pair is off its last', 'None'],
  makeOrBuy: [
    'Cost of a built pair',
    'Cost of a bought pair, glued and fitted, with its share of tooling and left-over pairs',
  ],
  layoutUsed: ['Sheets of the layout in Layouts', 'Sheets by quick rows'],
};

/** The cell by which a check is put right, with what stands there. */
function input(check: Check, { plan, tables }: Context): readonly Given[] {
  const lastOf = (style: string) => plan.input.styles.find((one) => fold(one.code) === fold(style))?.last;
  const { table, code, row, heading } = placeOfCheck(check, lastOf);
  const known = Object.values(INPUT_TABLES).find(({ name }) => name === table);
  if (!known || (row === undefined && code === undefined)) return [];
  const block = tables[known.argument as keyof typeof tables];
  const at = cellIn(block, { table, code, row, heading }).row;
  if (at < 1) return [];
  const column = heading === undefined ? -1 : columnUnder(table, block[0] ?? [], heading);
  const value = bare(block[at]?.[column]);
  const shown = typeof value === 'number' || (typeof value === 'string' && value !== '') ? value : 'blank';
  return [given(undefined, heading ?? table, shown, undefined, { argument: known.argument, row: at, column: heading })];
}

const about =
  (part: 0 | 1): ColumnWorkings<Check>[string] =>
  (check, context) => ({
    given: input(check, context),
    steps: seat(check, part),
    what: HOW[check.kind]?.[part] || (part === 0 ? 'What was found' : 'What is wanted'),
    formula: check.kind === 'heelControl' && part === 0 ? 'S − T' : undefined,
    source: 'limits are common practice; a row of Costs and times whose unit is limit changes one',
  });

function seat(check: Check, part: 0 | 1): readonly WorkedStep[] {
  if (check.kind === 'heelControl' && part === 0) {
    return [
      step('S', 'At the back', undefined, check.seat, 'mm'),
      step('T', 'Under the tread', undefined, check.tread, 'mm'),
    ];
  }
  if (check.kind === 'rasping' && part === 0) return [told('Height that the mix builds', check.built, 'mm')];
  return [];
}

const words =
  (what: string): ColumnWorkings<Check>[string] =>
  (check, context) => ({ given: input(check, context), what });

export const checkColumns: ColumnWorkings<Check> = {
  Subject: words('The style, last, sheet or table that the check is about'),
  Check: words('What is checked, with its unit'),
  Found: about(0),
  Wanted: about(1),
  Result: words('Holds, is to be looked at, or is to be put right'),
  'What to do': words('What would put it right, or why it holds'),
};
