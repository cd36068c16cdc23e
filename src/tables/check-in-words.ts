import { isoOf } from '../core/calendar';
import type { Check, MixLayers, NotSummed } from '../core/plan/checks/check';
import type { Rate } from '../core/plan/inputs';
import { LIMIT_ITEMS } from '../core/plan/limits';
import { type Place, type PlaceWords, placeInWords } from '../core/problem';
import { PART_WORDS, WORK_WORDS } from './words';

export interface CheckWords {
  readonly check: string;
  readonly found?: number | undefined;
  readonly wanted?: number | undefined;
  /** What to do, or why it holds. */
  readonly say: string;
}

const inMm = (value: number) => String(Number(value.toFixed(1)));
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** How figures and places are written. */
interface Writing {
  /** A height of so many mm; the sheet has mm. */
  readonly mm?: ((height: number) => string) | undefined;
  readonly where?: PlaceWords;
}

/** A check as the maker reads it. */
export function checkInWords(check: Check, { mm = inMm, where = placeInWords }: Writing = {}): CheckWords {
  // The worst size is named first, where the sizes differ.
  const size = 'size' in check && check.size !== undefined ? `size ${check.size}: ` : '';
  switch (check.kind) {
    case 'problem':
      return { check: 'Input', say: check.problem.inWords(where) };
    case 'heelControl':
      return {
        check: `${LIMIT_ITEMS.heelControl}, mm`,
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `${size}${mm(check.seat)} under the seat, ${mm(check.tread)} under the tread`
            : `${size}${mm(check.seat)} under the seat and ${mm(check.tread)} under the tread do not differ by the last’s heel: set Raise to wedge or heel, or take a last of that heel`,
      };
    case 'rasping':
      return {
        check: check.part === 'lift' ? 'Rasping, mm' : 'Rasping of platform, mm',
        found: check.found,
        wanted: check.wanted,
        say: `${size}${check.part === 'lift' ? 'the lifts build' : 'the platform builds'} ${mm(check.built)}: rasp ${PART_WORDS[check.part].toLowerCase()} ${check.item} to ${mm(check.left)}`,
      };
    case 'mixLeap':
      return {
        check: check.part === 'lift' ? 'Rasping, mm' : 'Rasping of platform, mm',
        found: check.found,
        wanted: check.wanted,
        say: `${size}as the sheets measure, ${check.part === 'lift' ? 'the lifts are' : 'the platform is'} ${mixInWords(check.layers, mm)}; as sold ${mixInWords(check.asSold, mm)}: with ${mm(check.wanted)} of rasping ${mixInWords(check.kept, mm)}, so enter that under Most rasping${check.stock === undefined ? '' : ' in Bottom stock'}`,
      };
    case 'proud':
      return {
        check: `${LIMIT_ITEMS.proud}, mm`,
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `${size}lift ${check.item} follows the ball closely enough`
            : `${size}lift ${check.item} stands proud where the ball curves: rasp it before gluing`,
      };
    case 'heelBase': {
      const middle =
        Math.abs(check.ahead) < 0.5 ? 'under' : `${mm(Math.abs(check.ahead))} ${check.ahead > 0 ? 'before' : 'behind'}`;
      const stands = `${size}${mm(check.height)} high on a base ${mm(check.width)} wide, ${(check.area / 100).toFixed(1)} cm², its middle ${middle} the seat line`;
      const mend = [
        ...(check.narrow ? ['it tips easily sideways: take less taper or a lower heel'] : []),
        ...(check.apart ? ['it tips easily to the front or back: bring the base under the seat line'] : []),
      ];
      return {
        check: `${LIMIT_ITEMS.tipAngle}, °`,
        found: check.found,
        wanted: check.wanted,
        say: `${[stands, ...mend].join('; ')}${mend.length > 0 ? ', fix it with nails or a screw besides adhesive, and have it judged' : ''} (planning aid, common practice)`,
      };
    }
    case 'rocker':
      return {
        check: 'Toe spring, mm',
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `${size}${mm(check.tread)} under the tread bend little, and roll over the toe`
            : `${size}${mm(check.tread)} under the tread bend little with the foot: roll the ground face from the tread on, by so much at the toe, or take a thinner platform (planning aid: rockers of 15° were tried)`,
      };
    case 'bend': {
      const where = check.side === 'over' ? 'over the ball' : 'into the waist';
      const piece = PART_WORDS[check.part].toLowerCase();
      return {
        check: 'Curve, radius mm',
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `the ${piece} goes ${where} uncracked, stretched ${percent(check.strain)}`
            : `the ${piece} may crack ${where}, stretched ${percent(check.strain)}: bend it warm or wet, try a scrap, or take it thinner`,
      };
    }
    case 'tubeUnknown':
      return {
        check: 'Curve, radius mm',
        found: check.found,
        say: `the ${PART_WORDS[check.part].toLowerCase()} is stretched ${percent(check.strain)}: bend a scrap over tubes and enter the smallest in Bottom stock`,
      };
    case 'bareGround':
      return {
        check: 'Ground face',
        say: `bare ${check.material} wears fast on the ground: add ${check.part === 'lift' ? 'a top piece' : 'an outsole'} of rubber or leather, or take a sheet with a moulded face`,
      };
    case 'skiveWide':
      return {
        check: 'Skive, mm',
        found: check.found,
        wanted: check.wanted,
        say: `the skive of ${PART_WORDS[check.part].toLowerCase()} ${check.item} is wider than the piece has room for: take it steeper, skive it to more or take it thinner`,
      };
    case 'shank':
      return {
        check: `${LIMIT_ITEMS.shank}, mm`,
        found: check.found,
        wanted: check.wanted,
        say: `${size}so high a heel without a wedge wants a shank in the waist: enter yes under Shank, or take a lower last`,
      };
    case 'weltHidden':
      return {
        check: 'Welt beyond the upper, mm',
        found: check.found,
        wanted: check.wanted,
        say: 'too little of the welt shows at toe and tread to stitch the sole to it: enter more under Projection, or a wider welt (planning aid)',
      };
    case 'heelHold':
      return {
        check: `${LIMIT_ITEMS.heelFixing}, mm`,
        found: check.found,
        wanted: check.wanted,
        say: `${size}so high a heel is nailed from inside, and ${check.material} holds no nail: enter a Heel core of wood or leather, or take lifts of leather`,
      };
    case 'plainModel':
      return {
        check: `${LIMIT_ITEMS.plainModel}, mm`,
        found: check.found,
        wanted: check.wanted,
        say: `${size}the plain curve serves heels up to the wanted height: measure the gaps every 20 mm, inside and outside, and enter them in Outlines`,
      };
    case 'misfit':
      return {
        check: `${LIMIT_ITEMS.misfit}, mm`,
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `${size}the curve passes the waist height as measured`
            : `${size}the curve misses the waist height by so much: measure again, or measure the gaps every 20 mm`,
      };
    case 'modelAgainstGaps':
      return {
        check: `${LIMIT_ITEMS.misfit}, mm`,
        found: check.found,
        say: 'the measured gaps are used; the plain curve would be off by up to so much',
      };
    case 'gapsAgainstHeel':
      return {
        check: 'Gap at the back, mm',
        found: check.found,
        wanted: check.wanted,
        say: 'the first gap is not the heel height that Lasts gives: prop the last at its heel height and measure again, or correct the heel height',
      };
    case 'widths':
      return {
        check: 'Widths of the last, mm',
        found: check.found,
        wanted: check.wanted,
        say: `the ${check.of} is wider than the tread: look whether the widths are in each other’s columns`,
      };
    case 'farFromBase':
      return {
        check: 'Size and last, mm',
        found: check.found,
        wanted: check.wanted,
        say: `size ${check.size} is graded far from the last as measured: look at the size, at the base size and its system, or measure a last nearer to it`,
      };
    case 'unusedPart':
      return {
        check: 'Construction',
        say:
          check.part === 'lift'
            ? 'lifts are named and Raise is none, so they are not built: set Raise to wedge or heel, or leave Lifts blank'
            : 'a top piece belongs under a heel, so it is not built: set Raise to heel, or name it as outsole',
      };
    case 'unreadRate':
      return {
        check: 'Costs and times',
        say:
          check.why === 'scope'
            ? `${where(rateCell(check.rate, 'For'))}: "${check.rate.scope ?? ''}" is no style, stock or material of this plan, so the row counts nothing: correct it`
            : `${where(rateCell(check.rate, 'Unit'))}: ${check.rate.unit} is given twice for the same; keep one row, or name under For what it holds for`,
      };
    case 'twist':
      return {
        check: `${LIMIT_ITEMS.twist}, mm`,
        found: check.found,
        wanted: check.wanted,
        say: 'inside and outside gaps differ; lifts are fitted to their mean, so rasp them slanting across',
      };
    case 'leatherPairs':
      return {
        check: `${LIMIT_ITEMS.pairSubstance}, mm`,
        wanted: check.wanted,
        say:
          check.pairs === 'anywhere'
            ? `cut the ${PART_WORDS[check.part].toLowerCase()}s of a pair from like places along the backbone, within so much of one substance: choose it under Pairs in Bottom stock`
            : `the ${PART_WORDS[check.part].toLowerCase()}s of a pair are laid ${check.pairs}; keep them within so much of one substance`,
      };
    case 'highBuild':
      return {
        check: `${LIMIT_ITEMS.highBuild}, mm`,
        found: check.found,
        wanted: check.wanted,
        say: `${size}look at stability, heel attachment and slip with a qualified person before it is worn`,
      };
    case 'lasts':
      return {
        check: 'Lasts, pairs',
        found: check.found,
        wanted: check.wanted,
        say: `size ${check.size} has no pair on hand: enter it in Lasts or move the pairs to another size`,
      };
    case 'lastsUnknown':
      return { check: 'Lasts, pairs', say: 'enter the pairs on hand in Lasts; without them the batches are not known' };
    case 'daysOnLast':
      return {
        check: 'Days on last',
        found: check.found,
        wanted: check.wanted,
        say: `${check.style}, ${size}its steps keep a pair on its last for so many working days${check.nights > 0 ? `, ${check.nights} ${check.nights === 1 ? 'night' : 'nights'} of drying or curing among them` : ''}: enter as many or more, or the batches come out too soon`,
      };
    case 'late':
      return {
        check: 'Due, days late',
        found: check.found - check.wanted,
        wanted: 0,
        say: `size ${check.size}${check.customer ? ` for ${check.customer}` : ''} comes off its last after the day due: start sooner, or get another pair of lasts`,
      };
    case 'dueFar':
      return {
        check: 'Due',
        say: `${where({ argument: 'pairage', table: 'Pairage', row: check.row, column: 'Due' })}: ${isoOf(check.day)} lies far from the other days due of the run; ${isoOf(check.meant)} is probably meant: enter it with its year`,
      };
    case 'workRate':
      return {
        check: 'Work',
        say: 'no rate is given, so the work costs nothing: enter money an hour in Costs and times',
      };
    case 'untimedWork':
      return {
        check: 'Minutes',
        say: `no minutes are given for ${check.kinds.map((kind) => WORK_WORDS[kind]).join(', ')} of some styles, and bench hours go without: enter minutes a pair with the Step in Costs and times, unless a row without a step has them`,
      };
    case 'makeOrBuy': {
      const from = check.breakEven === undefined ? 'never' : `from ${check.breakEven} pairs`;
      return {
        check: 'Make or buy, a pair',
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `building costs less than buying; buying pays ${from}; a bought unit fits one last only`
            : `buying costs less for this run (it pays ${from}), but a bought unit fits one last only`,
      };
    }
    case 'price':
      return { check: 'Price', say: 'no price is given, so order and cost lack it: enter it in Bottom stock' };
    case 'measuredApart':
      return {
        check: 'Thickness, mm',
        found: check.found,
        wanted: check.wanted,
        say: 'the measured thickness counts, and it is not what the sheet is sold as: measure again, or correct one of the two',
      };
    case 'coverage':
      return {
        check: 'Adhesive',
        say: 'no coverage is given, so the adhesive is not counted: enter m² a litre in Costs and times',
      };
    case 'layoutIgnored':
      return { check: 'Layouts', say: `the layout written there is not used: ${check.reason}; search again` };
    case 'layoutUsed':
      return {
        check: 'Layouts, sheets',
        found: check.found,
        wanted: check.wanted,
        say: 'the layout found by the search is used, checked anew',
      };
    case 'strayOffcut':
      return {
        check: 'Offcut',
        say: `no piece lies on it: ${check.stock} is not in Bottom stock; correct the code of its stock`,
      };
    case 'strayOffer':
      return {
        check: 'Offer',
        say: `nothing is bought of it: ${check.stock} is not in Bottom stock; correct the code of its stock`,
      };
    case 'offcutsUsed':
      return {
        check: 'Offcuts',
        say: `pieces lie on ${check.codes.join(', ')}: take it before a whole sheet, measured and looked over`,
      };
    case 'notSummed':
      return { check: 'Sums', found: check.found, wanted: check.wanted, say: notSummedInWords(check, where) };
    case 'notRead':
      return {
        check: 'Rows',
        say: `${where({ argument: check.subject, table: check.subject, row: check.row })}: what stands from here down is below the table, and counts nothing: insert rows within the table and move it there`,
      };
    case 'doubtfulNoughts':
      return { check: 'Blank cells', say: doubtfulInWords(check.headings) };
    case 'unreadHeading':
      return {
        check: 'Heading',
        say: `the column "${check.heading.replace(/\s+/g, ' ')}" is not read: correct the heading, or leave it if it is a note of yours`,
      };
  }
}

/** "9 of 6 and 2 of 3": the stoutest first. */
function mixInWords(layers: readonly MixLayers[], mm: (height: number) => string): string {
  return layers.map(({ count, thickness }) => `${count} of ${mm(thickness)}`).join(' and ');
}

function rateCell({ row }: Rate, column: string): Place {
  return { argument: 'rates', table: 'Costs and times', row, column };
}

function notSummedInWords(
  { subject: table, row, heading, found }: NotSummed & { readonly subject: string },
  where: PlaceWords,
): string {
  const place: Place = {
    argument: table,
    table,
    ...(row !== undefined && { row }),
    ...(heading !== undefined && { column: heading }),
  };
  if (found !== undefined)
    return `${where(place)}: the sum is not that of the sizes: copy the formula of another row there`;
  return row === undefined
    ? `${where(place)}: the size is planned, but is to the right of the sums, which go without it: move the column to their left`
    : `${where(place)}: the row is planned, but is below the sums, which go without it: move it above them`;
}

/** More headings than this are counted. */
const MOST_NAMED = 4;

function doubtfulInWords(headings: readonly string[]): string {
  const named = headings.slice(0, MOST_NAMED);
  const others = headings.length - named.length;
  const where = named.join(', ') + (others === 0 ? '' : ` and ${others} more`);
  return `Excel hands blank cells over as 0, so 0 counts as blank under ${where}: for 0 to count there, write IF(range="","",range) for this table’s range in the formula`;
}
