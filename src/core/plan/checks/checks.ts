import type { Problem } from '../../problem';
import { derived } from '../../derived';
import type { Stock } from '../../stock/stock';
import { byCode, fold } from '../codes';
import type { CostLine } from '../cost/cost';
import type { Cutting } from '../cutting';
import { type Finder, stocksOf } from '../finder';
import type { PlanInput } from '../inputs';
import { type Limits, limitsOf, unknownLimits } from '../limits';
import type { OrderLine } from '../order';
import type { Batch } from '../batches';
import type { LateWithHelp } from '../bench-days/late-orders';
import { ratesOf } from '../cost/rates';
import type { Runs, StyleRun } from '../runs';
import { strayOffcuts, strayOffers, unreadRates } from '../unused';
import { bareEdge } from './bare-edge';
import { bendChecks } from './bends';
import { type Check, type NotSummed, problemCheck, type Verdict } from './check';
import { daysOnLast } from './days-on-last';
import { groundChecks } from './ground';
import { heightChecks } from './heights';
import { lastChecks } from './lasts';
import { leftOnHand } from './left-on-hand';
import { moneyChecks } from './money';
import { batchChecks } from './batches';
import { doubledRows } from './doubled-rows';
import { dueDayChecks } from './due-days';
import {
  cutChecks,
  layoutChecks,
  leatherChecks,
  measuredApart,
  offcutChecks,
  strayLayoutChecks,
  thicknessFar,
} from './sheets';
import { skiveChecks } from './skives';
import { spoiledChecks } from './spoiled';
import { weltChecks } from './welt';
import { idleMinutes, minutesOnAll, untimedWork } from './untimed-work';

/** What the checks look at. */
export interface Checked {
  readonly input: PlanInput;
  readonly runs: Runs;
  readonly finder: Finder;
  readonly cutting: Cutting;
  readonly orders: readonly OrderLine[];
  readonly costs: readonly CostLine[];
  readonly batches: readonly Batch[];
  /** What is late by the days at the bench, with what would help. */
  readonly late: readonly LateWithHelp[];
  /** Why the days on which orders are made cannot be told, where they cannot. */
  readonly daysUntold: readonly Problem[];
  /** Headings that no table knows. */
  readonly unread: readonly { readonly table: string; readonly heading: string }[];
  /** What the tables' own sums go without. */
  readonly notSummed: readonly (NotSummed & { readonly table: string })[];
  /** Where 0 was taken for a blank cell although it may have been entered. */
  readonly doubtful: readonly { readonly table: string; readonly headings: readonly string[] }[];
  /** What kept later stages from being made. */
  readonly problems: readonly Problem[];
}

/** The sixth stage: what to put right first, then what to look at, then what holds, each in the order of the tables. */
export function checks(checked: Checked): readonly Check[] {
  const { input, runs, finder, cutting, orders, costs, batches } = checked;
  const stocks = byCode(input.stock);
  const limits = limitsOf(input.rates);
  const all = [
    ...[...runs.problems, ...cutting.problems, ...unknownLimits(input.rates), ...checked.problems].map(problemCheck),
    ...runs.styles.flatMap((run) => runChecks(run, limits, finder, stocks)),
    ...daysOnLast(runs.styles, input),
    // Before what is late by it.
    ...dueDayChecks(input.pairage),
    ...doubledRows(input.pairage),
    ...batchChecks(batches, checked.late, ratesOf(input.rates).one('hours a day', [])),
    ...checked.daysUntold.map((problem): Check => ({
      kind: 'daysUntold',
      subject: 'Pairage',
      verdict: 'lookAt',
      problem,
    })),
    ...unreadRows(runs, input),
    ...measuredApart(input.stock),
    ...thicknessFar(input),
    ...cutChecks(runs),
    ...leatherChecks(cutting),
    ...offcutChecks(cutting),
    ...layoutChecks(cutting),
    ...strayLayoutChecks(cutting, input),
    ...leftOnHand(input, orders),
    ...moneyChecks(checked.input, orders, costs),
    ...spoiledChecks(input, cutting),
    ...untimedWork(runs, input),
    ...minutesOnAll(runs, input),
    ...unreadCells(checked),
  ];
  const order: readonly Verdict[] = ['putRight', 'lookAt', 'holds'];
  return order.flatMap((verdict) => all.filter((check) => check.verdict === verdict));
}

/** Rows of tables that nothing reads. */
function unreadRows(runs: Runs, input: PlanInput): readonly Check[] {
  return [
    ...[...unreadRates(input), ...idleMinutes(runs, input).map((rate) => ({ rate, why: 'step' as const }))].map(
      ({ rate, why }): Check => ({
        kind: 'unreadRate',
        subject: 'Costs and times',
        verdict: 'lookAt',
        rate,
        why,
      }),
    ),
    ...strayOffcuts(input).map(({ code, row, stock }): Check => ({
      kind: 'strayOffcut',
      subject: code,
      verdict: 'lookAt',
      row,
      stock,
    })),
    ...strayOffers(input).map(({ row, stock }): Check => ({
      kind: 'strayOffer',
      subject: stock,
      verdict: 'lookAt',
      row,
      stock,
    })),
  ];
}

/** Headings, noughts and sums that count for something else than they may be meant for. */
function unreadCells({ unread, doubtful, notSummed }: Checked): readonly Check[] {
  return [
    ...unread.map(({ table, heading }): Check => ({
      kind: 'unreadHeading',
      subject: table,
      verdict: 'lookAt',
      heading,
    })),
    ...doubtful.map(({ table, headings }): Check => ({
      kind: 'doubtfulNoughts',
      subject: table,
      verdict: 'lookAt',
      headings,
    })),
    ...notSummed.map(({ table, ...where }): Check => ({
      kind: 'notSummed',
      subject: table,
      verdict: where.missing ? 'putRight' : 'lookAt',
      ...where,
    })),
  ];
}

const before = derived<StyleRun, readonly Check[]>('checks of a run');

/** What its bottoms, its last and its stock tell of one style. */
function runChecks(
  run: StyleRun,
  limits: Limits,
  finder: Finder,
  stocks: ReadonlyMap<string, Stock>,
): readonly Check[] {
  const facts = stocksOf(run.style).map((code) => {
    const { smallestTube, mouldedFace, pairs, mostRasping, roundingAllowance, blockAllowance, soldThickness } =
      stocks.get(fold(code)) ?? {};
    return [smallestTube, mouldedFace, pairs, mostRasping, roundingAllowance, blockAllowance, soldThickness];
  });
  return before(run, [JSON.stringify([limits, facts]), finder.contentOf(run.last)], () => [
    ...heightChecks(run, limits, stocks),
    ...bendChecks(run, stocks),
    ...skiveChecks(run),
    ...groundChecks(run, stocks),
    ...bareEdge(run),
    ...weltChecks(run),
    ...lastChecks(run, limits, finder, stocks),
  ]);
}
