import type { Check } from '../core/plan/checks';
import { PART_WORDS } from './words';

export interface CheckWords {
  readonly check: string;
  readonly found?: number | undefined;
  readonly wanted?: number | undefined;
  /** What to do, or why it holds. */
  readonly say: string;
}

const mm = (value: number) => String(Number(value.toFixed(1)));
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

/** A check as the maker reads it. */
export function checkInWords(check: Check): CheckWords {
  switch (check.kind) {
    case 'problem':
      return { check: 'Input', say: check.problem.message };
    case 'heelControl':
      return {
        check: 'Heel height, mm',
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `${mm(check.seat)} under the seat, ${mm(check.tread)} under the tread`
            : 'the stacks differ by something other than the last’s heel: raise the heel, or take a lower last',
      };
    case 'rasping':
      return {
        check: 'Rasping, mm',
        found: check.found,
        wanted: check.wanted,
        say: `the lifts build ${mm(check.built)}; rasp ${mm(check.found)} off`,
      };
    case 'proud':
      return {
        check: 'Proud of last, mm',
        found: check.found,
        wanted: check.wanted,
        say:
          check.verdict === 'holds'
            ? `lift ${check.item} follows the ball closely enough`
            : `lift ${check.item} stands proud where the ball curves: rasp it before gluing`,
      };
    case 'bend': {
      const where = check.side === 'outside' ? 'over the ball' : 'into the waist';
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
        say: `bare ${check.material} wears fast on the ground: add an outsole of rubber or leather, or take a sheet with a moulded face`,
      };
    case 'modelHeel':
      return {
        check: 'Model of the last, mm',
        found: check.found,
        wanted: check.wanted,
        say: 'the plain curve serves heels up to the wanted height: measure the gaps every 20 mm and enter them in Outlines',
      };
    case 'highHeel':
      return {
        check: 'High build, mm',
        found: check.found,
        wanted: check.wanted,
        say: 'look at stability, heel attachment and slip with a qualified person before it is worn',
      };
    case 'lasts':
      return {
        check: 'Lasts, pairs',
        found: check.found,
        wanted: check.wanted,
        say: `size ${check.size} has no pair on hand: enter it in Lasts or move the pairs to another size`,
      };
    case 'lastsUnknown':
      return { check: 'Lasts, pairs', say: 'enter the pairs on hand in Lasts; without them the rounds are not known' };
    case 'price':
      return { check: 'Price', say: 'no price is given, so order and cost lack it: enter it in Bottom stock' };
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
    case 'unreadHeading':
      return {
        check: 'Heading',
        say: `the column "${check.heading.replace(/\s+/g, ' ')}" is not read: correct the heading, or leave it if it is a note of yours`,
      };
  }
}
