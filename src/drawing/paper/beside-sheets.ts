import { fold } from '../../core/plan/codes';
import { PASTE, pasteOf } from '../../core/plan/cost/beside-stock';
import { workOf } from '../../core/plan/cost/cost';
import { ratesOf } from '../../core/plan/cost/rates';
import { decimals } from '../../tables/figures';
import type { PaperJob } from './chosen';

/** What heads it. */
export const BESIDE = 'Beside the sheets';

/** Something that pairs take beside their sheets. */
export interface BesideLine {
  readonly what: string;
  /** ml of adhesive, pairs of all else; undefined where it cannot be worked out. */
  readonly amount: number | undefined;
  readonly unit: 'ml' | 'pairs';
  /** Money; undefined where no price is given. */
  readonly total: number | undefined;
}

/** Adhesive by its kind, paste, and what Costs and times has by the pair, such as shanks and nails, for the whole run, as its sheets are. */
export function besideSheets(job: PaperJob): readonly BesideLine[] {
  const { input } = job.plan;
  const rates = ratesOf(input.rates);
  const [adhesives, items] = [new Map<string, BesideLine>(), new Map<string, BesideLine>()];
  for (const run of job.plan.runs.styles) {
    const { sizes } = run;
    const { code, adhesive = 'polychloroprene' } = run.style;
    const work = workOf(run, input);
    const amount = sumOf(sizes.map((size) => times(size.pairs, work.get(size)?.adhesive)));
    const litre = rates.row('money a litre', [code])?.value;
    // A bottom that is stitched or nailed throughout takes none.
    if (amount !== 0)
      add(adhesives, { what: `Adhesive, ${adhesive}`, amount, unit: 'ml', total: times(litre, amount, 1e-3) });
    const paste = sumOf(sizes.map((size) => times(size.pairs, pasteOf(rates, work.get(size)?.pasted ?? 0))));
    const pasteLitre = rates.one('money a litre', [PASTE, code]);
    if (paste !== 0)
      add(adhesives, { what: 'Paste', amount: paste, unit: 'ml', total: times(pasteLitre, paste, 1e-3) });
    const pairs = sizes.reduce((sum, size) => sum + size.pairs, 0);
    for (const { item, value } of rates.items('money a pair', [code]))
      add(items, { what: item.trim(), amount: pairs, unit: 'pairs', total: value * pairs });
  }
  return [...adhesives.values(), ...items.values()];
}

/** An amount with its unit: "1.25 l", "40 pairs". */
export function amountInWords({ amount, unit }: BesideLine): string {
  if (amount === undefined) return 'not known: give the coverage in Costs and times';
  if (unit === 'pairs') return `${amount} ${amount === 1 ? 'pair' : 'pairs'}`;
  return amount >= 1000 ? `${decimals(amount / 1000, 2)} l` : `${decimals(Math.ceil(amount), 0)} ml`;
}

function add(lines: Map<string, BesideLine>, line: BesideLine): void {
  const before = lines.get(fold(line.what));
  const { amount, total } = before ?? { amount: 0, total: 0 };
  lines.set(fold(line.what), { ...line, amount: sumOf([amount, line.amount]), total: sumOf([total, line.total]) });
}

/** undefined where one of them is. */
function sumOf(all: readonly (number | undefined)[]): number | undefined {
  return all.reduce<number | undefined>(
    (sum, one) => (sum === undefined || one === undefined ? undefined : sum + one),
    0,
  );
}

function times(one: number | undefined, other: number | undefined, of = 1): number | undefined {
  return one === undefined || other === undefined ? undefined : one * other * of;
}
