import { isoOf } from '../../core/calendar';
import type { Rate } from '../../core/plan/inputs';
import type { WhyUnread } from '../../core/plan/unused';
import { codesInWords } from '../../core/plan/codes-in-words';
import type { CheckOf } from '../../core/plan/checks/check';
import type { Help } from '../../core/plan/bench-days/late-orders';
import { changeInWords } from '../bench-days-in-words';
import { counted } from '../counted';
import { dayInWords } from '../day';
import { UNREAD_AT } from '../check-place';
import { WORK_WORDS } from '../words';
import type { WordsOf } from './words-of';

/** What is said of prices, rates, minutes and days. */
export const moneyWords: WordsOf<
  | 'price'
  | 'stockCut'
  | 'coverage'
  | 'paste'
  | 'spoiled'
  | 'minutesOnAll'
  | 'workRate'
  | 'untimedWork'
  | 'unreadRate'
  | 'makeOrBuy'
  | 'late'
  | 'daysUntold'
  | 'dueFar'
  | 'doubledRow'
> = {
  price: () => ({ check: 'Price', say: 'no price is given, so order and cost lack it: enter it in Bottom stock' }),
  stockCut: ({ pairs }) => ({
    check: 'Stock cut',
    say: `the cost is without the stock of ${counted(pairs, 'pair')} cut earlier: enter it under Stock cut`,
  }),
  coverage: () => ({
    check: 'Adhesive',
    say: 'no coverage is given, so the adhesive is not counted: enter m² a litre in Costs and times',
  }),
  paste: ({ styles }) => ({
    check: 'Adhesive',
    say: `no coverage is given for the paste of ${codesInWords(styles)}, so it is not counted: enter m² a litre in Costs and times, paste under For`,
  }),
  spoiled: ({ pieces, of }) => ({
    check: 'Spoiled',
    say: `some ${pieces} of ${of} pieces are in the cost alone, and no spare is cut or bought: add pairs, or work out What to buy with the share`,
  }),
  minutesOnAll: ({ rates, minutes }) => ({
    check: 'Minutes',
    say: `${minutes} a pair (${rates.map(({ item }) => item).join(', ')}) count on every style: name a style under For, or the Step, where they do not`,
  }),
  workRate: () => ({
    check: 'Work',
    say: 'no rate is given, so the work costs nothing: enter money an hour in Costs and times',
  }),
  untimedWork: (check) => ({
    check: 'Minutes',
    say: `no minutes are given for ${check.kinds.map(({ kind, styles }) => `${WORK_WORDS[kind]} of ${codesInWords(styles)}`).join('; ')}, and bench hours go without: enter minutes a pair with the Step in Costs and times, unless a row without a step has them`,
  }),
  unreadRate: ({ rate, why }, { where }) => ({
    check: 'Costs and times',
    say: `${where({ argument: 'rates', table: 'Costs and times', row: rate.row, column: UNREAD_AT[why] })}: ${unreadInWords(rate, why)}`,
  }),
  makeOrBuy: (check) => {
    const from = check.breakEven === undefined ? 'never' : `from ${check.breakEven} pairs`;
    return {
      check: 'Make or buy, a pair',
      say:
        check.verdict === 'holds'
          ? `building costs less than buying; buying pays ${from}; a bought unit fits one last only`
          : `buying costs less for this run (it pays ${from}), but a bought unit fits one last only`,
    };
  },
  late: (check) => ({
    check: 'Due, days late',
    found: check.found - check.wanted,
    wanted: 0,
    say: `${check.customer ? `for ${check.customer}, ` : ''}${check.sizes.length === 1 ? 'size' : 'sizes'} ${check.sizes.join(', ')}: made ${dayInWords(check.found)}, due ${dayInWords(check.wanted)}; ${remedyInWords(check)}`,
  }),
  daysUntold: (check) => ({ check: 'Days made', say: check.problem.reason }),
  doubledRow: ({ row, above }, { where }) => {
    const at = (one: number) => where({ argument: 'pairage', table: 'Pairage', row: one, column: 'Style' });
    return {
      check: 'Entered twice',
      say: `${at(row)}: the same style, customer, day and pairs as ${at(above)}; delete one if it stands there by mistake`,
    };
  },
  dueFar: (check, { where }) => ({
    check: 'Due',
    say: `${where({ argument: 'pairage', table: 'Pairage', row: check.row, column: 'Due' })}: ${isoOf(check.day)} lies far from the other days due of the run; ${isoOf(check.meant)} is probably meant: enter it with its year`,
  }),
};

function remedyInWords({ helps, hours, again }: CheckOf<'late'>): string {
  if (helps === undefined || hours === undefined) {
    return again ? 'start sooner, or get another pair of lasts' : 'start sooner';
  }
  const enough = helps.filter(({ days }) => days === 0);
  const changes = (list: readonly Help[]) => list.map(({ change }) => changeInWords(change, hours)).join(', or ');
  if (enough.length > 0) return `on time with ${changes(enough)}`;
  if (helps.length > 0) return `less late with ${changes(helps)}; else agree on a later day`;
  return 'neither longer days, lasts, another order of styles nor some days sooner help by themselves: take pairs out, or agree on a later day';
}

function unreadInWords({ scope = '', unit, step }: Rate, why: WhyUnread): string {
  if (why === 'twice') return `${unit} is given twice for the same; keep one row, or name under For what it holds for`;
  const idle = {
    scope: `"${scope}" is no style, stock or material of this plan`,
    'styles alone': `${unit} hold for a style, and ${scope} is none`,
    'all alone': `${unit} holds for the whole bench, not for ${scope} alone`,
    step: `${scope} has no ${step && WORK_WORDS[step]}`,
  }[why];
  return `${idle}, so the row counts nothing: ${why === 'all alone' ? 'leave For blank' : 'correct it'}`;
}
