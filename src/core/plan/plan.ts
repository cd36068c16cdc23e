import { bytesOfRecords } from '../bytes';
import { keptWith } from '../derived';
import { Memo } from '../memo';
import { Problem } from '../problem';
import { shared } from '../shared';
import { finished, type Stepwise } from '../stepwise';
import { type FurtherWork, furtherWork } from '../steps/times';
import type { Stock } from '../stock/stock';
import { type Check, type NotSummed, problemCheck } from './checks/check';
import { checks } from './checks/checks';
import { benchOf } from './bench';
import { cost, type CostLine, readyCost } from './cost/cost';
import { fold } from './codes';
import { cutStock, type Cutting, type StockCutting } from './cutting';
import { stocksOf } from './finder';
import { askedOf, type PairageRow, type PlanInput } from './inputs';
import { distinctLeftOut, type LeftOut } from './left-out';
import { order, type OrderLine } from './order';
import { pieces, type PieceLine } from './pieces';
import { planMemory } from './plan-memory';
import { type Batch, batches } from './batches';
import { type BenchDays, benchDays } from './bench-days/bench-days';
import { type LateWithHelp, lateWithHelp } from './bench-days/late-orders';
import { type MadeDays, madeDays } from './bench-days/made';
import { ratesOf } from './cost/rates';
import { RunBuilder, type Runs, type StyleRun } from './runs';
import { type RunSummary, summary } from './summary';
import { ticket, type TicketStep } from './ticket';

export type UnreadHeading = { readonly table: string; readonly heading: string };

/** Headings under which 0 was taken for a blank cell although it may have been entered. */
export interface DoubtfulNoughts {
  readonly table: string;
  readonly headings: readonly string[];
}

/** What a plan comes to although something is left out of it. */
export interface Possible {
  readonly orders: readonly OrderLine[];
  readonly costs: readonly CostLine[];
  readonly notOrdered: readonly LeftOut[];
  readonly notCosted: readonly LeftOut[];
}

export type PlanStage = 'bottoms' | 'cutting' | 'order' | 'cost' | 'batches' | 'checks';

/** What each stage is worked out from. */
const BEFORE: Readonly<Record<PlanStage, readonly PlanStage[]>> = {
  bottoms: [],
  cutting: ['bottoms'],
  order: ['bottoms', 'cutting'],
  cost: ['bottoms', 'cutting', 'order'],
  batches: ['bottoms'],
  checks: ['bottoms', 'cutting', 'order', 'cost', 'batches'],
};

/** A part of a plan's work that can be done by itself, before whatever else is done. */
export interface PlanStep {
  readonly stage: PlanStage;
  /** The style or the stock that it is about, where it is one. */
  readonly subject?: string | undefined;
  /** Does it, or what is left of it, step by step; what it lacks is among the checks. */
  work(): Stepwise<void>;
}

/** How many plans the page has had, of all its bundles. */
const plans = shared('plans', () => ({ made: 0 }));

/**
 * Days at the bench by their plan, and bounded apart from it: they take more than all else that a plan holds, and only
 * some plans are asked for them.
 */
const daysOfPlans = new Memo<BenchDays>(planMemory, 'bench days', ({ lines }) => bytesOfRecords(6 * lines.length));

/** When orders are made is little, and kept apart from the days themselves. */
const madeBefore = keptWith<readonly PairageRow[], MadeDays | Problem>('when orders are made');
const lateBefore = keptWith<readonly PairageRow[], readonly LateWithHelp[]>('what is late, and what would help');

/**
 * The whole job, each stage worked out when it is first asked for. The stages: runs → pieces → cutting → order → cost,
 * checks, batches, ticket. Runs are built style by style and sheets laid stock by stock, so that whoever may not wait for all
 * of it can work step by step.
 */
export class Plan {
  private readonly builder: RunBuilder;
  private readonly laid = new Map<Stock, readonly StockCutting[] | Problem>();
  /** Stocks that are being laid: whoever goes on, goes on with the same. */
  private readonly laying = new Map<Stock, Stepwise<readonly StockCutting[] | Problem>>();
  /** Tells it from all other plans in the page. */
  private readonly number = String(plans.made++);
  private stages: {
    runs?: Runs;
    pieces?: readonly PieceLine[];
    cutting?: Cutting;
    orders?: readonly OrderLine[];
    costs?: readonly CostLine[];
    checks?: readonly Check[];
    possible?: Possible;
  } = {};

  constructor(
    readonly input: PlanInput,
    private readonly unread: readonly UnreadHeading[] = [],
    private readonly notSummed: readonly (NotSummed & { readonly table: string })[] = [],
    private readonly doubtful: readonly DoubtfulNoughts[] = [],
  ) {
    this.builder = new RunBuilder(input);
  }

  /** All work in the order in which each step finds done what it needs; a step that is done already takes no time. */
  get steps(): readonly PlanStep[] {
    const step = (stage: PlanStage, work: () => unknown, subject?: string): PlanStep => ({
      stage,
      subject,
      *work() {
        withoutProblem(work);
      },
    });
    return [
      ...this.builder.styles.map((style) => step('bottoms', () => this.builder.build(style), style.code)),
      ...this.input.stock.map((stock): PlanStep => {
        return { stage: 'cutting', subject: stock.code, work: () => this.lay(stock) };
      }),
      step('order', () => this.orders),
      { stage: 'cost', work: () => this.priceAll() },
      { stage: 'batches', work: () => this.readyBatches() },
      step('checks', () => this.checks),
    ];
  }

  /** All that a stage takes, and the stage itself, step by step. */
  *upTo(stage: PlanStage): Stepwise<void> {
    for (const step of this.steps) {
      if (step.stage !== stage && !BEFORE[stage].includes(step.stage)) continue;
      yield* step.work();
      yield;
    }
  }

  /** Styles and sizes that can be built, and what keeps others from it. */
  get runs(): Runs {
    return (this.stages.runs ??= this.builder.runs);
  }

  /** Pieces of what can be built. Never throws. */
  get buildable(): readonly PieceLine[] {
    return (this.stages.pieces ??= pieces(this.runs));
  }

  /** @throws Problem where a style cannot be built: an order without it would be short. */
  get pieces(): readonly PieceLine[] {
    sound(this.runs);
    return this.buildable;
  }

  /**
   * How the pieces of one stock lie, by the formats of its sheets; none where no pieces are cut from it.
   * @throws Problem where a piece fits on no sheet.
   */
  layoutsOf(stock: Stock): readonly StockCutting[] {
    const laid = this.layOf(stock);
    if (laid instanceof Problem) throw laid;
    return laid;
  }

  /** @throws Problem as pieces, or where a piece fits no sheet. */
  get cutting(): Cutting {
    sound(this.runs);
    return sound(this.layouts);
  }

  get orders(): readonly OrderLine[] {
    const orders = this.ordersOf(this.cutting);
    for (const { priceProblem } of orders) if (priceProblem) throw priceProblem;
    return orders;
  }

  get costs(): readonly CostLine[] {
    sound(this.runs);
    return this.costsOf(this.orders);
  }

  get batches(): readonly Batch[] {
    return this.batchesOf(sound(this.runs));
  }

  /**
   * What of all that can be made is done on which day at the bench, step by step.
   * @throws Problem where no hours of a day are given, and where it is more than could be followed.
   */
  *benchDays(): Stepwise<BenchDays> {
    const known = daysOfPlans.find(this.number);
    if (known) return known;
    yield* this.upTo('bottoms');
    const days = yield* benchDays(this.runs, this.input);
    const leftOut = distinctLeftOut([...(this.input.leftOut ?? []), ...this.runs.leftOut, ...days.leftOut]);
    return daysOfPlans.keep(this.number, { ...days, leftOut });
  }

  /** When the bench has made each order, step by step; undefined without hours of a day, a problem where it cannot be told. */
  private *madeDays(): Stepwise<MadeDays | Problem | undefined> {
    const { pairage, rates } = this.input;
    if (ratesOf(rates).one('hours a day', []) === undefined) return undefined;
    const from = this.daysFrom;
    const known = madeBefore.find(pairage, from);
    if (known) return known.made;
    try {
      return madeBefore.keep(pairage, from, madeDays(yield* this.benchDays()));
    } catch (error) {
      if (error instanceof Problem) return madeBefore.keep(pairage, from, error);
      throw error;
    }
  }

  /**
   * Orders that the bench makes after the day on which they are due, with what would help, step by step.
   * @throws Problem where its days cannot be told
   */
  *late(): Stepwise<readonly LateWithHelp[]> {
    const { pairage } = this.input;
    const from = this.daysFrom;
    const known = lateBefore.find(pairage, from);
    if (known) return known.made;
    return lateBefore.keep(pairage, from, yield* lateWithHelp(yield* this.benchDays(), this.runs, this.input));
  }

  /** What days at the bench hang on besides the pairs: no price changes them. */
  private get daysFrom(): readonly unknown[] {
    const { rates, stock } = this.input;
    return [rates, ...this.runs.styles, ...stock.map(({ mouldedFace }) => mouldedFace)];
  }

  private *readyBatches(): Stepwise<void> {
    const made = yield* this.madeDays();
    if (made && !(made instanceof Problem)) yield* this.late();
    withoutProblem(() => this.batches);
  }

  private batchesOf(runs: Runs): readonly Batch[] {
    const made = finished(this.madeDays());
    return batches(runs, this.input, made instanceof Problem ? undefined : made);
  }

  /** What can be bought and made, and what is left out of it. Never throws for what it can leave out. */
  get possible(): Possible {
    return (this.stages.possible ??= this.whatIsPossible());
  }

  /** The run in one line. @param slips in the tables, that it goes without */
  summary(slips: readonly Problem[] = []): RunSummary {
    const asked = this.input.asked ?? this.input.pairage.map(askedOf);
    return summary({ ...this.possible, asked, checks: this.checksBeside(slips) });
  }

  /**
   * Slips in the tables, then what else is to be put right, and thicknesses that may be its cause. What else is only to be
   * looked at, or holds, waits until the plan is whole; without slips, all checks.
   */
  checksBeside(slips: readonly Problem[]): readonly Check[] {
    if (slips.length === 0) return this.checks;
    const told = new Set(slips.map(({ message }) => message));
    const others = this.checks.filter(
      (check) =>
        (check.verdict === 'putRight' && !(check.kind === 'problem' && told.has(check.problem.message))) ||
        check.kind === 'thicknessFar' ||
        check.kind === 'measuredApart',
    );
    return [...slips.map(problemCheck), ...others];
  }

  /** Never throws for what it can list instead. */
  get checks(): readonly Check[] {
    return (this.stages.checks ??= this.check());
  }

  ticket(style: string, size?: number): readonly TicketStep[] {
    return ticket(this.runs, this.input, style, size);
  }

  /** Work on a style's pairs that is of no step. */
  workApart(style: string): FurtherWork {
    return furtherWork(style, benchOf(this.input).rates);
  }

  /** Where the pieces of what can be built lie, with the problems of stocks whose pieces do not fit. Never throws. */
  get layouts(): Cutting {
    return (this.stages.cutting ??= this.layAll());
  }

  private layAll(): Cutting {
    const all = this.input.stock.map((stock) => this.layOf(stock));
    return {
      stocks: all.flatMap((one) => (one instanceof Problem ? [] : one)),
      problems: all.filter((one) => one instanceof Problem),
    };
  }

  private layOf(stock: Stock): readonly StockCutting[] | Problem {
    finished(this.lay(stock));
    return this.laid.get(stock) ?? [];
  }

  private *lay(stock: Stock): Stepwise<void> {
    while (!this.laid.has(stock)) {
      this.layOn(stock);
      yield;
    }
  }

  /** One step further. */
  private layOn(stock: Stock): void {
    const laying = this.laying.get(stock) ?? cutStock(stock, this.runs, this.input);
    this.laying.set(stock, laying);
    let going = false;
    try {
      const { done, value } = laying.next();
      if (done) this.laid.set(stock, value);
      going = !done;
    } finally {
      if (!going) this.laying.delete(stock);
    }
  }

  private *priceAll(): Stepwise<void> {
    for (const run of this.stages.costs ? [] : this.runs.styles) {
      readyCost(run, this.input);
      yield;
    }
    withoutProblem(() => this.costs);
  }

  private ordersOf({ stocks }: Cutting): readonly OrderLine[] {
    return (this.stages.orders ??= order(stocks));
  }

  private costsOf(orders: readonly OrderLine[]): readonly CostLine[] {
    return (this.stages.costs ??= cost(this.runs, orders, this.input));
  }

  private whatIsPossible(): Possible {
    const orders = this.ordersOf(this.layouts);
    const unlaid = this.input.stock.flatMap((stock): readonly LeftOut[] => {
      const laid = this.layOf(stock);
      return laid instanceof Problem ? [{ name: stock.code, why: laid }] : [];
    });
    const unpriced = orders.flatMap(({ cutting: { stock }, priceProblem }): readonly LeftOut[] =>
      priceProblem ? [{ name: stock.code, why: priceProblem }] : [],
    );
    const sheets = [...unlaid, ...unpriced];
    const lacking = ({ run }: CostLine) => sheets.filter(({ name }) => uses(run, name));
    const all = this.costsOf(orders);
    const before = [...(this.input.leftOut ?? []), ...this.runs.leftOut];
    const uncosted = all.flatMap((line) => lacking(line).map(({ why }) => ({ name: line.run.style.code, why })));
    return {
      orders,
      costs: all.filter((line) => lacking(line).length === 0),
      notOrdered: distinctLeftOut([...before, ...sheets]),
      notCosted: distinctLeftOut([...before, ...uncosted]),
    };
  }

  private check(): readonly Check[] {
    const problems: Problem[] = [];
    const attempt = <T>(work: () => readonly T[]): readonly T[] => {
      const made = withoutProblem(work);
      if (!(made instanceof Problem)) return made;
      problems.push(made);
      return [];
    };
    // What one stock lacks keeps nothing of the others from being looked at.
    const all = this.ordersOf(this.layouts);
    for (const { priceProblem } of all) if (priceProblem) problems.push(priceProblem);
    const orders = all.filter(({ priceProblem }) => !priceProblem);
    const costs = attempt(() => this.costsOf(all));
    const made = finished(this.madeDays());
    return checks({
      input: this.input,
      runs: this.runs,
      finder: this.builder.finder,
      cutting: this.layouts,
      orders,
      costs,
      batches: this.batchesOf(this.runs),
      late: made && !(made instanceof Problem) ? finished(this.late()) : [],
      daysUntold: made instanceof Problem ? [made] : [],
      unread: this.unread,
      notSummed: this.notSummed,
      doubtful: this.doubtful,
      problems,
    });
  }
}

function uses({ style }: StyleRun, stock: string): boolean {
  return stocksOf(style).some((code) => fold(code) === fold(stock));
}

function sound<T extends { readonly problems: readonly Problem[] }>(stage: T): T {
  const [first] = stage.problems;
  if (first) throw first;
  return stage;
}

function withoutProblem<T>(work: () => T): T | Problem {
  try {
    return work();
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
