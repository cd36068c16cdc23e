import { bendStrain, leastRadius } from '../build/bend';
import type { Bottom } from '../build/bottom';
import type { Layer, Part } from '../build/layer';
import type { Material, Stock } from '../build/stock';
import type { Pairs } from '../cutting/pairs';
import type { Last } from '../last/last';
import { atGround, type Profile } from '../last/profile';
import { modelProfile } from '../last/model-profile';
import { type BendSide, tightestCurve } from '../last/tightest-curve';
import { Problem } from '../problem';
import { byCode, fold } from './codes';
import type { CostLine } from './cost';
import type { Cutting } from './cutting';
import { Finder } from './finder';
import type { PlanInput, Rate } from './inputs';
import { type Limits, limitsOf, USUAL_LIMITS } from './limits';
import { makeOrBuy } from './make-or-buy';
import type { OrderLine } from './order';
import { Rates } from './rates';
import type { Round } from './rounds';
import type { Runs, StyleRun } from './runs';
import { strayOffcuts, unreadRates, unusedParts } from './unused';

/** holds: as it should be. look: the maker decides. mend: the plan does not work as it stands. */
export type Verdict = 'holds' | 'look' | 'mend';

/** A finding with what was found and what is wanted. */
interface Measured {
  readonly found: number;
  readonly wanted: number;
}

/** One finding. `subject` is the style, last, stock or table that it is about; lengths in mm, shares 0…1. */
export type Check = { readonly subject: string; readonly verdict: Verdict } & (
  | { readonly kind: 'problem'; readonly problem: Problem }
  | ({ readonly kind: 'heelControl'; readonly seat: number; readonly tread: number } & Measured)
  | ({ readonly kind: 'rasping'; readonly part: Part; readonly built: number } & Measured)
  | ({ readonly kind: 'proud'; readonly item: number } & Measured)
  | ({ readonly kind: 'bend'; readonly part: Part; readonly side: BendSide; readonly strain: number } & Measured)
  | { readonly kind: 'tubeUnknown'; readonly part: Part; readonly strain: number; readonly found: number }
  | ({ readonly kind: 'skiveWide'; readonly item: number; readonly part: Part } & Measured)
  | { readonly kind: 'bareGround'; readonly part: Part; readonly material: Material }
  | ({ readonly kind: 'shank' } & Measured)
  | ({ readonly kind: 'plainModel' } & Measured)
  | ({ readonly kind: 'misfit' } & Measured)
  | ({ readonly kind: 'modelAgainstGaps' } & Measured)
  | ({ readonly kind: 'twist' } & Measured)
  | ({ readonly kind: 'gapsAgainstHeel' } & Measured)
  | ({ readonly kind: 'widths'; readonly of: 'waist' | 'seat' } & Measured)
  | ({ readonly kind: 'farFromBase'; readonly size: number } & Measured)
  | { readonly kind: 'unusedPart'; readonly part: Part }
  | { readonly kind: 'unreadRate'; readonly rate: Rate; readonly why: 'scope' | 'twice' }
  | ({ readonly kind: 'highBuild' } & Measured)
  | { readonly kind: 'leatherPairs'; readonly wanted: number; readonly part: Part; readonly pairs: Pairs }
  | ({ readonly kind: 'lasts'; readonly size: number } & Measured)
  | { readonly kind: 'lastsUnknown' }
  | ({ readonly kind: 'late'; readonly customer: string | undefined; readonly size: number } & Measured)
  | { readonly kind: 'price' }
  | { readonly kind: 'coverage' }
  | { readonly kind: 'workRate' }
  | ({ readonly kind: 'makeOrBuy'; readonly breakEven: number | undefined } & Measured)
  | { readonly kind: 'layoutIgnored'; readonly reason: string }
  | ({ readonly kind: 'layoutUsed' } & Measured)
  | { readonly kind: 'strayOffcut'; readonly row: number; readonly stock: string }
  | { readonly kind: 'offcutsUsed'; readonly codes: readonly string[] }
  | { readonly kind: 'unreadHeading'; readonly heading: string }
);

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
  /** What kept later stages from being made. */
  readonly problems: readonly Problem[];
}

/** The sixth stage: what to mend first, then what to look at, then what holds, each in the order of the tables. */
export function checks(checked: Checked): readonly Check[] {
  const { input, runs, cutting, orders, costs, rounds } = checked;
  const stocks = byCode(input.stock);
  const finder = new Finder(input);
  // A limit that no check knows is told by the stage before; here the usual ones serve.
  const limits = checked.problems.length > 0 ? USUAL_LIMITS : limitsOf(input.rates);
  const all = [
    ...[...runs.problems, ...cutting.problems, ...checked.problems].map(problemCheck),
    ...runs.styles.flatMap((run) => [
      ...heightChecks(run, limits),
      ...bendChecks(run, stocks),
      ...skiveChecks(run),
      ...groundChecks(run, stocks),
      ...lastChecks(run, limits, finder, stocks),
    ]),
    ...roundChecks(rounds),
    ...unreadRates(input).map(({ rate, why }): Check => ({
      kind: 'unreadRate',
      subject: 'Costs and times',
      verdict: 'look',
      rate,
      why,
    })),
    ...strayOffcuts(input).map(({ code, row, stock }): Check => ({
      kind: 'strayOffcut',
      subject: code,
      verdict: 'look',
      row,
      stock,
    })),
    ...offcutChecks(cutting),
    ...layoutChecks(cutting),
    ...moneyChecks(checked.input, orders, costs),
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

/** A problem as a check: it is always to be mended. */
export function problemCheck(problem: Problem): Check {
  return { kind: 'problem', subject: problem.place.table ?? problem.place.argument, verdict: 'mend', problem };
}

function heightChecks({ style, sizes }: StyleRun, limits: Limits): readonly Check[] {
  const subject = style.code;
  const [first] = sizes;
  if (!first) return [];
  const { seatStack: seat, treadStack: tread, last, lifts, platform } = first.bottom;
  const found = seat - tread;
  const held = Math.abs(found - last.heelHeight) <= limits.heelControl + 1e-9;
  const list: Check[] = [
    { kind: 'heelControl', subject, verdict: held ? 'holds' : 'mend', found, wanted: last.heelHeight, seat, tread },
  ];
  for (const [part, mix] of [
    ['lift', lifts],
    ['platform', platform],
  ] as const) {
    if (!mix || mix.rasped <= 0) continue;
    const { rasped, built } = mix;
    list.push({ kind: 'rasping', subject, verdict: 'holds', found: rasped, wanted: style.rasping, part, built });
  }
  if (seat > limits.highBuild) {
    list.push({ kind: 'highBuild', subject, verdict: 'look', found: seat, wanted: limits.highBuild });
  }
  const proudest = worst(layersOf(sizes), ({ lift }) => lift?.proud ?? 0);
  if (proudest?.lift && proudest.lift.proud > 0.05) {
    const { proud } = proudest.lift;
    const verdict = proud > limits.proud ? 'look' : 'holds';
    list.push({ kind: 'proud', subject, verdict, found: proud, wanted: limits.proud, item: proudest.item });
  }
  if (last.heelHeight >= limits.shank && !style.shank && style.raise !== 'wedge') {
    list.push({ kind: 'shank', subject, verdict: 'look', found: last.heelHeight, wanted: limits.shank });
  }
  return list;
}

/** Each stock that follows the last, in the size where it comes nearest to cracking: over the ball, and into the waist. */
function bendChecks({ style, sizes }: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const subject = style.code;
  return (['outside', 'hollow'] as const).flatMap((side) => {
    const tightest = worst(sizes, ({ bottom }) => 1 / (radiusOf(bottom, side) ?? Infinity));
    const radius = tightest && radiusOf(tightest.bottom, side);
    if (!tightest || radius === undefined) return [];
    const bent = new Map<string, Layer>();
    for (const layer of tightest.bottom.layers)
      if (layer.follows) bent.set(`${layer.part} ${fold(layer.stock)}`, layer);
    return [...bent.values()].map((layer): Check => {
      const { part, thickness } = layer;
      const strain = 2 * radius > thickness ? bendStrain(thickness, radius, side) : 1;
      const tube = stocks.get(fold(layer.stock))?.smallestTube;
      if (tube === undefined) return { kind: 'tubeUnknown', subject, verdict: 'look', part, strain, found: radius };
      const wanted = leastRadius(thickness, tube / thickness, side);
      return {
        kind: 'bend',
        subject,
        verdict: radius >= wanted ? 'holds' : 'look',
        found: radius,
        wanted,
        part,
        side,
        strain,
      };
    });
  });
}

function radiusOf(bottom: Bottom, side: BendSide): number | undefined {
  return tightestCurve(bottom.last.profile, side)?.radius;
}

/** A skive that is longer than its piece, or wider than half of it all round, cannot be cut. */
function skiveChecks({ style, sizes }: StyleRun): readonly Check[] {
  const room = ({ skive, length, width }: Layer) => (skive?.at === 'edge' ? Math.min(length, width) / 2 : length);
  const widest = worst(
    layersOf(sizes).filter(({ skive }) => skive),
    (layer) => (layer.skive?.width ?? 0) / room(layer),
  );
  if (!widest?.skive || widest.skive.width <= room(widest)) return [];
  const { item, part, skive } = widest;
  return [
    { kind: 'skiveWide', subject: style.code, verdict: 'mend', item, part, found: skive.width, wanted: room(widest) },
  ];
}

function groundChecks({ style, sizes }: StyleRun, stocks: ReadonlyMap<string, Stock>): readonly Check[] {
  const subject = style.code;
  const layers = sizes[0]?.bottom.layers ?? [];
  const list: Check[] = [];
  // What is walked on: under the tread the lowest layer there, under the seat the lowest of all.
  const stack = layers.filter(({ part }) => part !== 'cover' && part !== 'welt');
  const walked = new Set([stack.at(-1), stack.filter(({ underTread }) => underTread).at(-1)]);
  for (const layer of walked) {
    if (!layer) continue;
    const { part, material, stock } = layer;
    // All but leather, rubber and a steel tip wear fast on the ground unless one face is moulded to be walked on.
    const soft = material !== 'leather' && material !== 'rubber' && material !== 'steel';
    if (soft && !stocks.get(fold(stock))?.mouldedFace) {
      list.push({ kind: 'bareGround', subject, verdict: 'mend', part, material });
    }
  }
  return list;
}

/** A size whose last is so much longer or shorter than the base size's is most likely a slip: eight or nine sizes. */
const FAR_FROM_BASE = 0.22;

function lastChecks(
  { style, last, sizes }: StyleRun,
  limits: Limits,
  finder: Finder,
  stocks: ReadonlyMap<string, Stock>,
): readonly Check[] {
  const subject = style.code;
  const profile = sizes[0]?.bottom.last.profile;
  if (!profile) return [];
  const list: Check[] = [];
  const { heelHeight } = last;
  if (heelHeight > limits.plainModel && profile.source === 'model') {
    list.push({ kind: 'plainModel', subject, verdict: 'look', found: heelHeight, wanted: limits.plainModel });
  }
  if (profile.misfit !== undefined) {
    const verdict = profile.misfit > limits.misfit ? 'look' : 'holds';
    list.push({ kind: 'misfit', subject, verdict, found: profile.misfit, wanted: limits.misfit });
  }
  for (const part of unusedParts(style)) list.push({ kind: 'unusedPart', subject, verdict: 'look', part });
  for (const { size, bottom } of sizes) {
    const { length } = bottom.last;
    if (Math.abs(length / last.length - 1) <= FAR_FROM_BASE) continue;
    list.push({ kind: 'farFromBase', subject, verdict: 'look', found: length, wanted: last.length, size });
  }
  // The tread is the widest place of a bottom, the waist the narrowest.
  if (last.waist > last.tread) {
    list.push({ kind: 'widths', subject, verdict: 'look', found: last.waist, wanted: last.tread, of: 'waist' });
  }
  if (last.seat > last.tread) {
    list.push({ kind: 'widths', subject, verdict: 'look', found: last.seat, wanted: last.tread, of: 'seat' });
  }
  const measured = finder.measured(last);
  const back = measured?.gaps?.[0]?.z;
  if (back !== undefined && Math.abs(back - heelHeight) > limits.heelControl + 1e-9) {
    list.push({ kind: 'gapsAgainstHeel', subject, verdict: 'mend', found: back, wanted: heelHeight });
  }
  if (measured?.gaps && heelHeight > 0) {
    const model = plainModel(last);
    if (model) {
      const found = Math.max(...measured.gaps.map(({ x, z }) => Math.abs(atGround(model, x).z - z)));
      list.push({ kind: 'modelAgainstGaps', subject, verdict: 'holds', found, wanted: limits.misfit });
    }
  }
  if (measured?.twist !== undefined && measured.twist > limits.twist) {
    list.push({ kind: 'twist', subject, verdict: 'look', found: measured.twist, wanted: limits.twist });
  }
  const leather = sizes[0]?.bottom.layers.find(
    ({ part, material }) => material === 'leather' && (part === 'sole' || part === 'outsole' || part === 'midsole'),
  );
  if (leather) {
    const pairs = stocks.get(fold(leather.stock))?.pairs ?? 'anywhere';
    const verdict = pairs === 'anywhere' ? 'look' : 'holds';
    list.push({ kind: 'leatherPairs', subject, verdict, wanted: limits.pairSubstance, part: leather.part, pairs });
  }
  return list;
}

/** The plain model of a last, or undefined where there is none for its heel. */
function plainModel({ length, heelHeight, toeSpring, seatPitch }: Last): Profile | undefined {
  try {
    return modelProfile({ length, heelHeight, toeSpring, seatPitch });
  } catch (error) {
    if (error instanceof Problem) return undefined;
    throw error;
  }
}

function roundChecks(rounds: readonly Round[]): readonly Check[] {
  const told = new Set<string>();
  const once = (key: string, check: Check): readonly Check[] => {
    if (told.has(key)) return [];
    told.add(key);
    return [check];
  };
  return rounds.flatMap(({ last, size, onHand, due, done, style, customer }): readonly Check[] => {
    if (onHand === undefined) return once(last, { kind: 'lastsUnknown', subject: last, verdict: 'look' });
    if (onHand === 0) {
      return once(`${last} ${size}`, { kind: 'lasts', subject: last, verdict: 'mend', found: 0, wanted: 1, size });
    }
    if (due === undefined || done === undefined || done <= due) return [];
    return [{ kind: 'late', subject: style, verdict: 'mend', found: done, wanted: due, customer, size }];
  });
}

function offcutChecks({ stocks }: Cutting): readonly Check[] {
  return stocks
    .filter(({ offcuts }) => offcuts.length > 0)
    .map(({ stock: { code: subject }, offcuts }): Check => ({
      kind: 'offcutsUsed',
      subject,
      verdict: 'holds',
      codes: offcuts.map(({ code }) => code),
    }));
}

function layoutChecks({ stocks }: Cutting): readonly Check[] {
  return stocks.flatMap(({ stock: { code: subject }, ignored, source, rows, sheets }): readonly Check[] => {
    if (ignored !== undefined) return [{ kind: 'layoutIgnored', subject, verdict: 'look', reason: ignored }];
    if (source === 'rows') return [];
    return [{ kind: 'layoutUsed', subject, verdict: 'holds', found: sheets, wanted: rows }];
  });
}

function moneyChecks(
  input: Pick<PlanInput, 'rates'>,
  orders: readonly OrderLine[],
  costs: readonly CostLine[],
): readonly Check[] {
  const rates = new Rates(input.rates);
  return [
    ...orders
      .filter(({ sheetPrice }) => sheetPrice === undefined)
      .map(({ cutting }): Check => ({ kind: 'price', subject: cutting.stock.code, verdict: 'mend' })),
    ...costs.flatMap((line): readonly Check[] => {
      const subject = line.run.style.code;
      const list: Check[] = [];
      if (line.adhesive === undefined) list.push({ kind: 'coverage', subject, verdict: 'look' });
      if (rates.one('money an hour', [subject]) === undefined)
        list.push({ kind: 'workRate', subject, verdict: 'look' });
      const choice = makeOrBuy(line);
      if (choice) {
        const { make: found, buy: wanted, breakEven } = choice;
        list.push({
          kind: 'makeOrBuy',
          subject,
          verdict: found <= wanted ? 'holds' : 'look',
          found,
          wanted,
          breakEven,
        });
      }
      return list;
    }),
  ];
}

function layersOf(sizes: StyleRun['sizes']): readonly Layer[] {
  return sizes.flatMap(({ bottom }) => bottom.layers);
}

function worst<T>(list: readonly T[], of: (one: T) => number): T | undefined {
  return list.reduce<T | undefined>((most, one) => (most === undefined || of(one) > of(most) ? one : most), undefined);
}
