/** How long it waits before it tries again, at first and at most, ms. */
const FIRST_WAIT = 2000;
const LONGEST_WAIT = 60_000;

/** Tells how it goes. */
export interface KeeperListener {
  /** The latest content is kept. */
  readonly kept: () => void;
  readonly failed: (error: unknown) => void;
}

/** Keeps content that changes: what could not be kept is tried again, ever less often, until it is. */
export class Keeper {
  private changed = false;
  private wait = FIRST_WAIT;
  private again: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly keep: () => Promise<void>,
    private readonly listener: KeeperListener,
  ) {}

  /** Whether there is content that has not been handed over to be kept. */
  get due(): boolean {
    return this.changed;
  }

  change(): void {
    this.changed = true;
  }

  /** Keeps what has changed, if anything has. */
  now(): void {
    if (!this.changed) return;
    this.changed = false;
    clearTimeout(this.again);
    this.keep().then(
      () => {
        this.wait = FIRST_WAIT;
        this.listener.kept();
      },
      (error: unknown) => {
        this.changed = true;
        this.again = setTimeout(() => this.now(), this.wait);
        this.wait = Math.min(LONGEST_WAIT, 2 * this.wait);
        this.listener.failed(error);
      },
    );
  }
}
