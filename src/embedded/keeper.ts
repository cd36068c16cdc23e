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
  private stopped = false;
  private wait = FIRST_WAIT;
  private again: ReturnType<typeof setTimeout> | undefined;
  private underWay = 0;
  private latest: Promise<void> = Promise.resolve();

  constructor(
    private readonly keep: () => Promise<void>,
    private readonly listener: KeeperListener,
  ) {}

  /** Whether there is content that is not known to be kept. */
  get due(): boolean {
    return this.changed || this.underWay > 0;
  }

  change(): void {
    this.changed = true;
  }

  /** Keeps nothing any more. */
  stop(): void {
    this.stopped = true;
    clearTimeout(this.again);
  }

  /** Keeps what has changed, if anything has. @returns settles as that does */
  now(): Promise<void> {
    if (!this.changed || this.stopped) return this.latest;
    this.changed = false;
    this.underWay++;
    clearTimeout(this.again);
    this.latest = this.keep();
    this.latest.then(
      () => {
        this.underWay--;
        this.wait = FIRST_WAIT;
        this.listener.kept();
      },
      (error: unknown) => {
        this.underWay--;
        this.changed = true;
        if (this.stopped) return;
        this.again = setTimeout(() => {
          this.now().catch(() => undefined);
        }, this.wait);
        this.wait = Math.min(LONGEST_WAIT, 2 * this.wait);
        this.listener.failed(error);
      },
    );
    return this.latest;
  }
}
