import type { MixLayers } from '../../core/plan/checks/check';
import { LIMIT_ITEMS } from '../../core/plan/limits';
import { PART_WORDS } from '../words';
import type { WordsOf } from './words-of';

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** What is said of how a bottom is built. */
export const bottomWords: WordsOf<
  | 'heelControl'
  | 'rasping'
  | 'mixLeap'
  | 'leftLying'
  | 'proud'
  | 'heelBase'
  | 'rocker'
  | 'bend'
  | 'toeGround'
  | 'tubeUnknown'
  | 'bareGround'
  | 'bareEdge'
  | 'skiveWide'
  | 'shank'
  | 'weltHidden'
  | 'heelHold'
  | 'highBuild'
  | 'unusedPart'
> = {
  heelControl: (check, { mm, size }) => ({
    check: `${LIMIT_ITEMS.heelControl}, mm`,
    say:
      check.verdict === 'holds'
        ? `${size}${mm(check.seat)} at the back, ${mm(check.tread)} under the tread`
        : `${size}${mm(check.seat)} at the back and ${mm(check.tread)} under the tread do not differ by the last’s heel: set Raise to wedge or heel, or take a last of that heel`,
  }),
  rasping: (check, { mm, size }) => ({
    check: check.sawn ? 'Sawn off, mm' : check.part === 'lift' ? 'Rasping, mm' : 'Rasping of platform, mm',
    say: `${size}${check.sawn ? 'the block is' : check.part === 'lift' ? 'the lifts build' : 'the platform builds'} ${mm(check.built)}: ${check.sawn ? 'saw' : 'rasp'} ${PART_WORDS[check.part].toLowerCase()} ${check.item} to ${mm(check.left)}${check.much ? `; ${percent(check.much.share)} of that piece of ${check.much.stock} goes as dust: take a thinner sheet for it, or another mix` : ''}`,
  }),
  mixLeap: (check, { mm, size }) => ({
    check: check.part === 'lift' ? 'Rasping, mm' : 'Rasping of platform, mm',
    say: `${size}${check.asSold ? 'as the sheets measure, ' : ''}${check.part === 'lift' ? 'the lifts are' : 'the platform is'} ${mixInWords(check.layers, mm)}${check.asSold ? `; as sold ${mixInWords(check.asSold, mm)}` : ''}: with ${mm(check.wanted)} of rasping ${mixInWords(check.kept, mm)}, so enter that under Most rasping${check.stock === undefined ? '' : ' in Bottom stock'}`,
  }),
  leftLying: (check, { mm }) => ({
    check: check.part === 'lift' ? 'Lifts' : 'Platform',
    say:
      check.verdict === 'holds'
        ? `nothing is built from ${check.stock}: the others reach the height with fewer layers or less rasping`
        : `nothing is built from ${check.stock}: a sheet of ${mm(check.thickness)} is stouter than the ${mm(check.highest)} that are built; look at Thick in Bottom stock, or name another sheet`,
  }),
  proud: (check, { size }) => ({
    check: `${LIMIT_ITEMS.proud}, mm`,
    say:
      check.verdict === 'holds'
        ? `${size}lift ${check.item} follows the ball closely enough`
        : `${size}lift ${check.item} stands proud where the ball curves: rasp it before gluing`,
  }),
  heelBase: (check, { mm, size }) => {
    const middle =
      Math.abs(check.ahead) < 0.5 ? 'under' : `${mm(Math.abs(check.ahead))} ${check.ahead > 0 ? 'before' : 'behind'}`;
    const stands = `${size}${mm(check.height)} high on a base ${mm(check.width)} wide, ${(check.area / 100).toFixed(1)} cm², its middle ${middle} the seat line`;
    const mend = [
      ...(check.narrow ? ['it tips easily sideways: take less taper or a lower heel'] : []),
      ...(check.apart ? ['it tips easily to the front or back: bring the base under the seat line'] : []),
    ];
    return {
      check: `${LIMIT_ITEMS.tipAngle}, °`,
      say: `${[stands, ...mend].join('; ')}${mend.length > 0 ? ', fix it with nails or a screw besides adhesive, and have it judged' : ''} (planning aid, common practice)`,
    };
  },
  rocker: (check, { mm, size }) => ({
    check: 'Toe rise, mm',
    say:
      check.verdict === 'holds'
        ? `${size}${mm(check.tread)} under the tread bend little, and roll over the toe`
        : `${size}${mm(check.tread)} under the tread bend little with the foot: the toe spring of ${mm(check.found)} alone does not roll: round the ground face from the tread on until it rises ${mm(check.wanted)} at the toe, or take a thinner platform (planning aid: rockers of 15° were tried)`,
  }),
  bend: (check) => {
    const way = { over: 'over the ball', hollow: 'into the waist', toe: 'up to the toe' }[check.side];
    const piece = PART_WORDS[check.part].toLowerCase();
    return {
      check: 'Curve, radius mm',
      say:
        check.verdict === 'holds'
          ? `the ${piece} goes ${way} uncracked, stretched ${percent(check.strain)}`
          : `the ${piece} may crack ${way}, stretched ${percent(check.strain)}: bend it warm or wet, try a scrap, or take it thinner`,
    };
  },
  toeGround: (check, { mm, size }) => ({
    check: 'Forepart ground, mm',
    say: `${size}${mm(check.found)} glued up flat do not bend up the ${mm(check.toeSpring)} of toe spring: they are ground to the last, which takes ${mm(check.wanted)} at the toe; glue up so much there, bend each sheet before it is glued, or take a last with less toe spring`,
  }),
  tubeUnknown: (check) => ({
    check: 'Curve, radius mm',
    say: `the ${PART_WORDS[check.part].toLowerCase()} is stretched ${percent(check.strain)}: bend a scrap over tubes and enter the smallest in Bottom stock`,
  }),
  bareGround: (check) => ({
    check: 'Ground face',
    say: `bare ${check.material} wears fast on the ground: add ${check.part === 'lift' ? 'a top piece' : 'an outsole'} of rubber or leather, or take a sheet with a moulded face`,
  }),
  bareEdge: () => ({
    check: 'Cover',
    say: 'it goes round the heel alone: the edge of the platform stays bare; leave Covered blank to cover it too',
  }),
  skiveWide: (check) => ({
    check: 'Skive, mm',
    say: `the skive of ${PART_WORDS[check.part].toLowerCase()} ${check.item} is wider than the piece has room for: take it steeper, skive it to more or take it thinner`,
  }),
  shank: (check, { mm, size }) => ({
    check: `${LIMIT_ITEMS.shank}, under, mm`,
    say: `${size}a heel of ${mm(check.wanted)} or more without a wedge wants a shank in the waist: enter yes under Shank, or take a lower last`,
  }),
  weltHidden: () => ({
    check: 'Welt beyond the upper, mm',
    say: 'too little of the welt shows at toe and tread to stitch the sole to it: enter more under Projection, or a wider welt (planning aid)',
  }),
  heelHold: (check, { mm, size }) => ({
    check: `${LIMIT_ITEMS.heelFixing}, under, mm`,
    say: `${size}a heel of ${mm(check.wanted)} or more is nailed from inside, and ${check.material} holds no nail: enter a Heel core of wood or leather, or take lifts of leather`,
  }),
  highBuild: (_, { size }) => ({
    check: `${LIMIT_ITEMS.highBuild}, mm`,
    say: `${size}look at stability, heel attachment and slip with a qualified person before it is worn`,
  }),
  unusedPart: (check) => ({
    check: 'Construction',
    say:
      check.part === 'lift'
        ? 'lifts are named and Raise is none, so they are not built: set Raise to wedge or heel, or leave Lifts blank'
        : 'a top piece belongs under a heel, so it is not built: set Raise to heel, or name it as outsole',
  }),
};

/** "9 of 6 and 2 of 3": the stoutest first. */
function mixInWords(layers: readonly MixLayers[], mm: (height: number) => string): string {
  return layers.map(({ count, thickness }) => `${count} of ${mm(thickness)}`).join(' and ');
}
