import type { Problem } from '../problem';
import type { Check } from './checks/check';
import type { CostLine } from './cost/cost';
import type { Asked } from './inputs';
import type { LeftOut } from './left-out';
import type { OrderLine } from './order';

/** What the maker does next. */
export type NextStep =
  | { readonly kind: 'putRight' | 'late'; readonly check: Check }
  | { readonly kind: 'buy'; readonly stocks: number; readonly sheets: number }
  | { readonly kind: 'cut' | 'make' };

/** A run in one line. Money is the sheet's own, days are the spreadsheet's. */
export interface RunSummary {
  readonly pairs: number;
  /** Pairs in the pairage, those left out too. */
  readonly asked: number;
  /** Whether nothing is left out of what is bought, and of what is made. */
  readonly allBought: boolean;
  readonly allMade: boolean;
  /** Of all stock that has a price. */
  readonly toPay: number;
  /** Cost of all pairs. */
  readonly whole: number;
  /** Bench time that all pairs still take, hours. */
  readonly hours: number;
  /** The first day on which pairs are due; undefined where no row has one, or one that cannot be read. */
  readonly due: number | undefined;
  readonly putRight: number;
  readonly next: NextStep;
}

interface Summed {
  readonly asked: readonly Asked[];
  readonly orders: readonly OrderLine[];
  readonly costs: readonly CostLine[];
  readonly notOrdered: readonly LeftOut[];
  readonly notCosted: readonly LeftOut[];
  /** Slips in the tables among them. */
  readonly checks: readonly Check[];
}

/** Sums a run up: pairs, money, hours, the next day due, and what comes next. */
export function summary({ asked, orders, costs, notOrdered, notCosted, checks }: Summed): RunSummary {
  const putRight = checks.filter(({ verdict }) => verdict === 'putRight');
  // A day that cannot be read may be the first.
  const unclear = checks.some((check) => check.kind === 'problem' && isOfDays(check.problem));
  const days = unclear ? [] : asked.filter(({ pairs }) => pairs > 0).flatMap(({ due }) => due ?? []);
  return {
    pairs: sum(costs, ({ run }) => run.pairs),
    asked: sum(asked, ({ pairs }) => pairs),
    allBought: notOrdered.length === 0,
    allMade: notCosted.length === 0,
    toPay: sum(orders, ({ toPay }) => toPay ?? 0),
    whole: sum(costs, ({ whole }) => whole),
    hours: sum(costs, ({ hours }) => hours),
    due: days.length > 0 ? Math.min(...days) : undefined,
    putRight: putRight.length,
    next: nextStep(putRight, orders, costs.length > 0 && costs.every(({ run }) => run.toCut === 0)),
  };
}

function isOfDays({ place: { argument, row, column } }: Problem): boolean {
  return argument === 'pairage' && (column === 'Due' || (row === undefined && column === undefined));
}

/** What cannot be made comes before what is late, that before buying, buying before cutting, that before making. */
function nextStep(putRight: readonly Check[], orders: readonly OrderLine[], allCut: boolean): NextStep {
  const check = putRight.find(({ kind }) => kind !== 'late') ?? putRight[0];
  if (check) return { kind: check.kind === 'late' ? 'late' : 'putRight', check };
  if (allCut) return { kind: 'make' };
  const bought = orders.filter(({ buy }) => buy > 0);
  if (bought.length === 0) return { kind: 'cut' };
  return { kind: 'buy', stocks: bought.length, sheets: sum(bought, ({ buy }) => buy) };
}

function sum<T>(lines: readonly T[], of: (line: T) => number): number {
  return lines.reduce((all, line) => all + of(line), 0);
}
