import { makeOrBuy } from '../core/plan/cost/make-or-buy';
import type { CostLine } from '../core/plan/cost/cost';
import { counted } from './counted';
import { fixed } from './figures';

/**
 * Whether a style is cheaper built or bought, in a sentence, with money as the sheet Cost shows it: "Scar: built 14.20 € a
 * pair, bought 11.86 € with 6 pairs left over: buying is cheaper by 2.34 € a pair." undefined where no price is given.
 * @param known whether all that building costs is known
 */
export function makeOrBuyInWords(line: CostLine, known: boolean, money: string): string | undefined {
  const choice = makeOrBuy(line);
  if (!choice) return undefined;
  const { style } = line.run;
  const paid = (value: number) => [fixed(value, 2), money].filter(Boolean).join(' ');
  const { left } = choice;
  const bought = `bought ${paid(choice.buy)}${left > 0 ? ` with ${counted(left, 'pair')} left over` : ''}`;
  if (!known) return `${style.code}: ${bought} a pair; what it costs built lacks what Checks names.`;
  // What is shown is compared, so that the difference is that of the figures beside it.
  const [make, buy] = [Number(fixed(choice.make, 2)), Number(fixed(choice.buy, 2))];
  return `${style.code}: built ${paid(make)} a pair, ${bought}: ${verdict(make, buy, choice.breakEven, paid)}.`;
}

function verdict(make: number, buy: number, breakEven: number | undefined, paid: (value: number) => string): string {
  if (make === buy) return 'they cost the same';
  if (buy < make) return `buying is cheaper by ${paid(make - buy)} a pair`;
  const from = breakEven === undefined ? 'never pays' : `pays from ${counted(breakEven, 'pair')}, as many of each size`;
  return `building is cheaper by ${paid(buy - make)} a pair; buying ${from}`;
}
