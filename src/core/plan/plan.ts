import { Problem } from '../problem';
import type { Check } from './checks/check';
import { checks } from './checks/checks';
import { cost, type CostLine } from './cost/cost';
import { cutting, type Cutting } from './cutting';
import type { PlanInput } from './inputs';
import { limitsOf } from './limits';
import { order, type OrderLine } from './order';
import { pieces, type PieceLine } from './pieces';
import { type Batch, batches } from './batches';
import { type Runs, runs } from './runs';
import { ticket, type TicketStep } from './ticket';

export type UnreadHeading = { readonly table: string; readonly heading: string };

/**
 * The whole job, each stage worked out when it is first asked for. The stages: runs → pieces → cutting → order → cost,
 * checks, batches, ticket.
 */
export class Plan {
  private stages: {
    runs?: Runs;
    pieces?: readonly PieceLine[];
    cutting?: Cutting;
    orders?: readonly OrderLine[];
    costs?: readonly CostLine[];
    batches?: readonly Batch[];
    checks?: readonly Check[];
  } = {};

  constructor(
    readonly input: PlanInput,
    private readonly unread: readonly UnreadHeading[] = [],
  ) {}

  /** Styles and sizes that can be built, and what keeps others from it. */
  get runs(): Runs {
    return (this.stages.runs ??= runs(this.input));
  }

  /** Pieces of what can be built. Never throws. */
  get buildable(): readonly PieceLine[] {
    return (this.stages.pieces ??= pieces(this.runs));
  }

  /** @throws Problem where a style cannot be built: an order without it would be short. */
  get pieces(): readonly PieceLine[] {
    this.sound(this.runs);
    return this.buildable;
  }

  /** @throws Problem as pieces, or where a piece fits no sheet. */
  get cutting(): Cutting {
    this.sound(this.runs);
    return this.sound(this.layouts);
  }

  get orders(): readonly OrderLine[] {
    return (this.stages.orders ??= order(this.cutting.stocks));
  }

  get costs(): readonly CostLine[] {
    return (this.stages.costs ??= cost(this.runs, this.pieces, this.orders, this.input));
  }

  get batches(): readonly Batch[] {
    return (this.stages.batches ??= batches(this.sound(this.runs), this.input));
  }

  /** Never throws for what it can list instead. */
  get checks(): readonly Check[] {
    return (this.stages.checks ??= this.check());
  }

  ticket(style: string, size?: number): readonly TicketStep[] {
    return ticket(this.runs, this.input, style, size);
  }

  /** Where the pieces of what can be built lie, with the problems of stocks whose pieces do not fit. Never throws. */
  get layouts(): Cutting {
    return (this.stages.cutting ??= cutting(this.buildable, this.input.stock, this.input.layouts, this.input.offcuts));
  }

  private check(): readonly Check[] {
    const problems: Problem[] = [];
    const attempt = <T>(work: () => readonly T[]): readonly T[] => {
      try {
        return work();
      } catch (error) {
        if (!(error instanceof Problem)) throw error;
        problems.push(error);
        return [];
      }
    };
    attempt(() => [limitsOf(this.input.rates)]);
    const orders = attempt(() => order(this.layouts.stocks));
    const costs = attempt(() => cost(this.runs, this.buildable, orders, this.input));
    return checks({
      input: this.input,
      runs: this.runs,
      cutting: this.layouts,
      orders,
      costs,
      batches: batches(this.runs, this.input),
      unread: this.unread,
      problems,
    });
  }

  private sound<T extends { readonly problems: readonly Problem[] }>(stage: T): T {
    const [first] = stage.problems;
    if (first) throw first;
    return stage;
  }
}
