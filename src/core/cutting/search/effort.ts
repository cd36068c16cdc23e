/** Lets the one who started a search stop it. */
export interface Token {
  readonly stopped: boolean;
}

/** How often the token is looked at, in evaluations. */
const LOOK_AFTER = 1000;

/** How often a listener is told how far the search has come, in evaluations. */
const TELL_AFTER = 500_000;

/** Counts evaluations: a search ends by their number, never by the clock, or when it is told to stop. */
export class Effort {
  spent = 0;
  private limit: number;
  private look = 0;
  private told = 0;
  private stopped = false;

  /**
   * @param total evaluations in all
   * @param tell told from time to time how many have been spent
   */
  constructor(
    readonly total: number,
    private readonly token: Token,
    private readonly tell?: (spent: number) => void,
  ) {
    this.limit = total;
  }

  /** Lets the search go on until so many evaluations have been spent in all. */
  until(evaluations: number): void {
    this.limit = Math.min(evaluations, this.total);
  }

  /** Whether to go on; looks at the token from time to time. */
  goesOn(): boolean {
    if (this.spent >= this.look) {
      this.look = this.spent + LOOK_AFTER;
      this.stopped ||= this.token.stopped;
      if (this.tell && this.spent >= this.told + TELL_AFTER) {
        this.told = this.spent;
        this.tell(this.spent);
      }
    }
    return !this.stopped && this.spent < this.limit;
  }
}
