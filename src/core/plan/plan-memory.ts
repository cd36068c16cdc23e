import { Memory } from '../memory';
import { shared } from '../shared';

/** Three generations of the plan at hand may be held: what an edit changes, what it changes back, and one edit more. */
const GENERATIONS = 3;

/** Bytes that plans may always hold, and those that older ones may hold beside a large one. */
const LEAST = 16e6;
const MOST = 512e6;

/** Plans that tell how large the plan at hand is: one that was not worked out to its end tells too little. */
const LOOKED_BACK = 8;

/** What the stages of plans have worked out, bounded by what the plan at hand holds. */
export class PlanMemory extends Memory {
  private used = 0;
  private readonly before: number[] = [];

  constructor() {
    super(LEAST);
  }

  /** Another plan begins. */
  next(): void {
    this.plan += 1;
    this.before.push(this.used);
    if (this.before.length > LOOKED_BACK) this.before.shift();
    this.used = 0;
  }

  protected override get most(): number {
    const own = Math.max(this.used, ...this.before);
    return Math.max(LEAST, own, Math.min(MOST, GENERATIONS * own));
  }

  protected override use(bytes: number): void {
    this.used += bytes;
  }
}

/** One for all bundles of a page. */
export const planMemory = shared('plan memory', () => new PlanMemory());
