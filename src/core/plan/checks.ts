import { leastRadius } from '../build/bend';
import { bendStrain } from '../build/bend';
import type { Bottom } from '../build/bottom';
import type { Layer, Part } from '../build/layer';
import type { Stock } from '../build/stock';
import { MODEL_HEEL_LIMIT } from '../last/model-profile';
import { type BendSide, tightestCurve } from '../last/tightest-curve';
import type { Problem } from '../problem';
import { byCode, fold } from './codes';
import type { CostLine } from './cost';
import type { Cutting } from './cutting';
import type { PlanInput } from './inputs';
import type { OrderLine } from './order';
import type { Round } from './rounds';
import type { Runs, StyleRun } from './runs';

/** holds: as it should be. look: the maker decides. mend: the plan does not work as it stands. */
export type Verdict = 'holds' | 'look' | 'mend';

/** One finding. `subject` is the style, last, stock or table that it is about; lengths in mm, shares 0…1. */
export type Check = { readonly subject: string; readonly verdict: Verdict } & (
  | { readonly kind: 'problem'; readonly problem: Problem }
  | {
      readonly kind: 'heelControl';
      readonly found: number;
      readonly wanted: number;
      readonly seat: number;
      readonly tread: number;
    }
  | { readonly kind: 'rasping'; readonly found: number; readonly wanted: number; readonly built: number }
  | { readonly kind: 'proud'; readonly found: number; readonly wanted: number; readonly item: number }
  | {
      readonly kind: 'bend';
      readonly found: number;
      readonly wanted: number;
      readonly item: number;
      readonly part: Part;
      readonly side: BendSide;
      readonly strain: number;
    }
  | { readonly kind: 'tubeUnknown'; readonly part: Part; readonly strain: number; readonly found: number }
  | { readonly kind: 'bareGround'; readonly part: Part; readonly material: Stock['material'] }
  | { readonly kind: 'modelHeel'; readonly found: number; readonly wanted: number }
  | { readonly kind: 'highHeel'; readonly found: number; readonly wanted: number }
  | { readonly kind: 'lasts'; readonly found: number; readonly wanted: number; readonly size: number }
  | { readonly kind: 'lastsUnknown' }
  | { readonly kind: 'price' }
  | { readonly kind: 'coverage' }
  | { readonly kind: 'layoutIgnored'; readonly reason: string }
  | { readonly kind: 'layoutUsed'; readonly found: number; readonly wanted: number }
  | { readonly kind: 'unreadHeading'; readonly heading: string }
);

/** Limits that the checks hold against (common practice). */
export const LIMITS = {
  /** |seat stack − tread stack − heel height|, mm. */
  heelControl: 1,
  /** How far a flat skive may stand proud before it is worth a warning, mm. */
  proud: 1,
  /** Built heel from which stability and heel attachment ask for a second look, mm. */
  highHeel: 50,
} as const;

/** What the checks look at. */
export interface Checked {
  readonly input: PlanInput;
  readonly runs: Runs;
  readonly cutting: Cutting;
  readonly orders: readonly OrderLine[];
  readonly costs: readonly CostLine[];
  readonly rounds: readonly Round[];
  /** Headings that no table knows. */
  readonly unread: readonly { readonly table: string; readonly heading: string }[];
  /** What the order could not be made from. */
  readonly orderProblems: readonly Problem[];
}

/** The sixth stage: what to mend first, then what to look at, then what holds, each in the order of the tables. */
export function checks(checked: Checked): readonly Check[] {
  const stocks = byCode(checked.input.stock);
  const all = [
    ...[...checked.runs.problems, ...checked.cutting.problems, ...checked.orderProblems].map(problemCheck),
    ...checked.runs.styles.flatMap((run) => styleChecks(run, stocks)),
    ...lastChecks(checked.rounds),
    ...checked.cutting.stocks.flatMap(({ stock, ignored, source, rows, layout }): Check[] => [
      ...(ignored === undefined
        ? []
        : [{ kind: 'layoutIgnored', subject: stock.code, verdict: 'look', reason: ignored } as const]),
      ...(source === 'search'
        ? [{ kind: 'layoutUsed', subject: stock.code, verdict: 'holds', found: layout.length, wanted: rows } as const]
        : []),
    ]),
    ...checked.orders
      .filter(({ sheetPrice }) => sheetPrice === undefined)
      .map(({ cutting }): Check => ({ kind: 'price', subject: cutting.stock.code, verdict: 'mend' })),
    ...checked.costs
      .filter((line) => line.adhesive === undefined)
      .map(({ run }): Check => ({ kind: 'coverage', subject: run.style.code, verdict: 'look' })),
    ...checked.unread.map(({ table, heading }): Check => ({
      kind: 'unreadHeading',
      subject: table,
      verdict: 'look',
      heading,
    })),
  ];
  const order: readonly Verdict[] = ['mend', 'look', 'holds'];
  return order.flatMap((verdict) => all.filter((check) => check.verdict === verdict));
}

function problemCheck(problem: Problem): Check {
  return { kind: 'problem', subject: problem.place.table ?? problem.place.argument, verdict: 'mend', problem };
}

function styleChecks({ style, last, sizes }: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const subject = style.code;
  const bottoms = sizes.map(({ bottom }) => bottom);
  const [first] = bottoms;
  if (!first) return [];
  const list: Check[] = [];
  const found = first.seatStack - first.treadStack;
  const off = Math.abs(found - last.heelHeight);
  list.push({
    kind: 'heelControl',
    subject,
    verdict: off <= LIMITS.heelControl + 1e-9 ? 'holds' : 'mend',
    found,
    wanted: last.heelHeight,
    seat: first.seatStack,
    tread: first.treadStack,
  });
  if (first.lifts && first.lifts.rasped > 0) {
    const { rasped, built } = first.lifts;
    list.push({ kind: 'rasping', subject, verdict: 'holds', found: rasped, wanted: style.rasping, built });
  }
  const proudest = worst(
    bottoms.flatMap(({ layers }) => layers),
    ({ lift }) => lift?.proud ?? 0,
  );
  if (proudest?.lift && proudest.lift.proud > 0.05) {
    list.push({
      kind: 'proud',
      subject,
      verdict: proudest.lift.proud > LIMITS.proud ? 'look' : 'holds',
      found: proudest.lift.proud,
      wanted: LIMITS.proud,
      item: proudest.item,
    });
  }
  list.push(...bendChecks(subject, first, stocks), ...groundCheck(subject, first, stocks));
  if (last.heelHeight > MODEL_HEEL_LIMIT && first.last.profile.source === 'model') {
    list.push({ kind: 'modelHeel', subject, verdict: 'look', found: last.heelHeight, wanted: MODEL_HEEL_LIMIT });
  }
  if (first.seatStack > LIMITS.highHeel) {
    list.push({ kind: 'highHeel', subject, verdict: 'look', found: first.seatStack, wanted: LIMITS.highHeel });
  }
  return list;
}

/** The layer of each part that comes nearest to cracking, outside of the ball's curve and into the waist's hollow. */
function bendChecks(subject: string, { layers, last }: Bottom, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  return (['outside', 'hollow'] as const).flatMap((side) => {
    const radius = tightestCurve(last.profile, side)?.radius;
    if (radius === undefined) return [];
    const stoutest = new Map<string, Layer>();
    for (const layer of layers) {
      if (!layer.follows) continue;
      const key = `${layer.part} ${fold(layer.stock)}`;
      if (!stoutest.has(key)) stoutest.set(key, layer);
    }
    return [...stoutest.values()].map((layer): Check => {
      const { part, item, thickness } = layer;
      const strain = 2 * radius > thickness ? bendStrain(thickness, radius, side) : 1;
      const tube = stocks.get(fold(layer.stock))?.smallestTube;
      if (tube === undefined) return { kind: 'tubeUnknown', subject, verdict: 'look', part, strain, found: radius };
      const wanted = leastRadius(thickness, tube / thickness, side);
      const verdict = radius >= wanted ? 'holds' : 'look';
      return { kind: 'bend', subject, verdict, found: radius, wanted, item, part, side, strain };
    });
  });
}

/** Foam and cork wear fast on the ground unless one face is moulded to be walked on. */
function groundCheck(subject: string, { layers }: Bottom, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const lowest = layers.filter(({ part }) => part !== 'cover').at(-1);
  if (!lowest) return [];
  const { part, material } = lowest;
  const soft = material === 'foam' || material === 'cork';
  if (!soft || stocks.get(fold(lowest.stock))?.mouldedFace) return [];
  return [{ kind: 'bareGround', subject, verdict: 'mend', part, material }];
}

function lastChecks(rounds: readonly Round[]): readonly Check[] {
  const unknown = new Set<string>();
  return rounds.flatMap(({ last, size, onHand }): Check[] => {
    if (onHand === undefined) {
      if (unknown.has(last)) return [];
      unknown.add(last);
      return [{ kind: 'lastsUnknown', subject: last, verdict: 'look' }];
    }
    return onHand === 0 ? [{ kind: 'lasts', subject: last, verdict: 'mend', found: 0, wanted: 1, size }] : [];
  });
}

function worst<T>(list: readonly T[], of: (one: T) => number): T | undefined {
  return list.reduce<T | undefined>((most, one) => (most === undefined || of(one) > of(most) ? one : most), undefined);
}
