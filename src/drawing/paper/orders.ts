import { fold } from '../../core/plan/codes';
import type { PlanInput } from '../../core/plan/inputs';
import type { SizeRun, StyleRun } from '../../core/plan/runs';
import { dayInWords, MONTHS } from '../../tables/day';

/** For whom a pair is made, and when it is due. */
export interface OrderedPair {
  readonly customer: string;
  readonly due: string;
  readonly cut: boolean;
}

/** The pairs of a style and size one by one, the first due first, those without a day last. */
export function orderedPairs(
  { pairage }: Pick<PlanInput, 'pairage'>,
  { style, last }: StyleRun,
  { size, system }: SizeRun,
): readonly OrderedPair[] {
  return pairage
    .filter((row) => fold(row.style) === fold(style.code) && (row.system ?? last.system) === system)
    .sort((a, b) => (a.due ?? Infinity) - (b.due ?? Infinity) || a.row - b.row)
    .flatMap((row) =>
      Array.from({ length: row.pairs.get(size) ?? 0 }, () => ({
        customer: row.customer ?? '',
        due: dayInWords(row.due),
        cut: row.cut === true,
      })),
    );
}

/** A day as it is called where the program runs, in words. */
export function dateInWords(date: Date): string {
  return `${date.getDate()} ${MONTHS[date.getMonth()]} ${date.getFullYear()}`;
}

/** Customers of a list of pairs with how many each has: "Market stall 3, Lock Lane shop 2". */
export function customersInWords(pairs: readonly OrderedPair[]): string {
  const counts = new Map<string, number>();
  for (const { customer } of pairs) if (customer) counts.set(customer, (counts.get(customer) ?? 0) + 1);
  return [...counts].map(([name, count]) => `${name} ${count}`).join(', ');
}

/** "2 pairs, 1 of them cut already"; nothing where none is cut. */
export function cutInWords({ pairs, toCut }: Pick<SizeRun, 'pairs' | 'toCut'>): string {
  if (toCut === pairs) return '';
  const all = pairs === 1 ? 'One pair' : `${pairs} pairs`;
  if (toCut > 0) return `${all}, ${pairs - toCut} of them cut already`;
  return pairs === 1 ? 'One pair, cut already' : `${all}, all of them cut already`;
}

/** The first day on which any of them is due. */
export function firstDue(pairs: readonly OrderedPair[]): string {
  return pairs.find(({ due }) => due)?.due ?? '';
}
