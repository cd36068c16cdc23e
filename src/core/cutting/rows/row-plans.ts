import { itemRound } from '../../item-at';
import type { Sequence } from './fill-rows';
import type { Direction } from './fill-sheet';

/** A direction of rows and how they follow each other. */
export interface RowsPlan {
  readonly direction: Direction;
  readonly sequence: Sequence;
}

const FIRST_SEQUENCE: Sequence = 'inTurn';
const MORE_SEQUENCES: readonly Sequence[] = ['greedy', 'same', 'closer', 'inTurnReversed'];

/** Directions in which every sequence is tried on the first sheet. */
const DIRECTIONS_TRIED = 2;

/** Which plans to try, by how well each filled the last sheet that it was tried on: pieces get smaller from sheet to sheet. */
export class Plans {
  private readonly plans: readonly RowsPlan[];
  private readonly filled = new Map<RowsPlan, number>();
  private turn = 0;

  constructor(private readonly directions: readonly Direction[]) {
    this.plans = [FIRST_SEQUENCE, ...MORE_SEQUENCES].flatMap((sequence) =>
      directions.map((direction) => ({ direction, sequence })),
    );
  }

  note(plan: RowsPlan, area: number): void {
    this.filled.set(plan, area);
  }

  /** So many plans, one after the other and from the first again. */
  inTurn(count: number): readonly RowsPlan[] {
    return Array.from({ length: Math.ceil(count) }, (_, i) => itemRound(this.plans, i));
  }

  /** One plan in each direction, for a first look. */
  firstLook(): readonly RowsPlan[] {
    return this.plans.slice(0, this.directions.length);
  }

  /** The other plans in the directions that looked best. */
  closerLook(): readonly RowsPlan[] {
    const promising = this.ranked(this.firstLook()).slice(0, DIRECTIONS_TRIED);
    const others = this.plans.slice(this.directions.length);
    return others.filter(({ direction }) => promising.some((plan) => plan.direction === direction));
  }

  /** The `count` plans that filled their last sheet best, and one of the others in turn. */
  best(count: number): readonly RowsPlan[] {
    const ranked = this.ranked(this.plans);
    const others = this.plans.filter((plan) => ranked.indexOf(plan) >= count);
    return [...ranked.slice(0, count), ...(others.length ? [itemRound(others, this.turn++)] : [])];
  }

  private ranked(plans: readonly RowsPlan[]): readonly RowsPlan[] {
    const areaOf = (plan: RowsPlan) => this.filled.get(plan) ?? 0;
    return [...plans].sort((a, b) => areaOf(b) - areaOf(a));
  }
}
