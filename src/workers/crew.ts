import type { Token } from '../core/cutting/search/effort';

/**
 * Works a task through to its answer, at once or as a promise.
 * @param found told of the best so far
 */
export type Work<T, A> = (task: T, token: Token, found?: (answer: Awaited<A>) => void) => A;

/** What a worker sends: the best so far, time and again, and at last the answer. */
export interface Message<A> {
  readonly answer: A;
  readonly ended: boolean;
}

/** What a search needs of a worker: that of a page, or of another engine in the same clothes. */
export interface WorkerLike {
  postMessage(task: unknown): void;
  terminate(): void;
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  onerror: ((event: unknown) => void) | null;
}

/** How often a task is handed to another worker when one has died over it, before it is worked through here. */
const MOST_DEATHS = 2;

/** How often the token is looked at while workers work, ms. */
const LOOK_EVERY = 50;

/** A task that waits for a worker, or is at work. */
interface Order<T, A> {
  readonly task: T;
  readonly rank: number;
  readonly token: Token;
  readonly stop: Stop;
  readonly found: (answer: A) => void;
  /** @param answer undefined where the work was stopped */
  readonly done: (answer: A | undefined) => void;
  readonly failed: (error: unknown) => void;
}

/**
 * Workers that work tasks through side by side, those of several searches too. Without workers it does so itself, one task
 * after the other. Workers stay, with what they have prepared, until they are sent home.
 */
export class Crew<T, A> {
  private readonly workers: (WorkerLike | undefined)[];
  /** Seats at which nobody works, and what waits for one, by rank. */
  private readonly free: number[];
  private readonly waiting: Order<T, A>[] = [];

  /**
   * @param work what its workers do, for where there are none
   * @param hire makes a worker; undefined or throwing where there can be none
   */
  constructor(
    private readonly work: Work<T, A | Promise<A>>,
    private readonly hire: (() => WorkerLike | undefined) | undefined,
    size: number,
  ) {
    this.workers = new Array<WorkerLike | undefined>(hire ? Math.max(1, size) : 1).fill(undefined);
    this.free = [...this.workers.keys()];
  }

  /**
   * Works tasks through; the answers do not depend on how many workers there are, nor on how many of them die.
   * @param found told of the best so far of every task that has found something
   * @param rank of several searches at once, that of the lowest comes first, and the others' tasks take the seats it leaves
   * @returns the answers in the order of the tasks; undefined where the token stopped the work
   */
  async perform(
    tasks: readonly T[],
    token: Token,
    found: (answers: readonly (A | undefined)[]) => void = () => {},
    rank = 0,
  ): Promise<readonly A[] | undefined> {
    const best: (A | undefined)[] = tasks.map(() => undefined);
    const stop = new Stop();
    const watch = this.hire && setInterval(() => token.stopped && stop.abort(), LOOK_EVERY);
    const answered = tasks.map(
      (task, at) =>
        new Promise<A | undefined>((done, failed) => {
          const tell = (answer: A) => {
            best[at] = answer;
            found(best);
          };
          this.waiting.push({ task, rank, token, stop, found: tell, done, failed });
          stop.onabort(() => done(undefined));
        }),
    );
    this.waiting.sort((a, b) => a.rank - b.rank);
    for (const seat of this.free.splice(0)) this.sit(seat);
    try {
      const answers = await Promise.all(answered);
      return token.stopped || stop.aborted ? undefined : (answers as readonly A[]);
    } finally {
      if (watch) clearInterval(watch);
      // Where one has failed the others are not waited for.
      stop.abort();
    }
  }

  /** Sends all workers home. */
  end(): void {
    for (const worker of this.workers) worker?.terminate();
    this.workers.fill(undefined);
  }

  /** Has a seat work for as long as there are tasks. */
  private sit(seat: number): void {
    let order = this.waiting.shift();
    while (order?.stop.aborted) order = this.waiting.shift();
    if (!order) {
      this.free.push(seat);
      return;
    }
    const { done, failed } = order;
    this.handOver(seat, order)
      .then(done, failed)
      .finally(() => this.sit(seat))
      .catch(failed);
  }

  private async handOver(seat: number, { task, token, stop, found }: Order<T, A>): Promise<A | undefined> {
    if (!this.hire) await breath();
    if (token.stopped || stop.aborted) return undefined;
    for (let deaths = 0; deaths <= MOST_DEATHS && !stop.aborted; deaths++) {
      const worker = this.at(seat);
      if (!worker) break;
      const answer = await new Promise<A | 'died' | undefined>((resolve) => {
        stop.onabort(() => resolve(undefined));
        worker.onmessage = ({ data }) => {
          const { answer: best, ended } = data as Message<A>;
          if (ended) resolve(best);
          else found(best);
        };
        worker.onerror = () => resolve('died');
        worker.postMessage(task);
      });
      if (answer !== 'died' && answer !== undefined) return answer;
      worker.terminate();
      this.workers[seat] = undefined;
    }
    return stop.aborted ? undefined : this.work(task, token, found);
  }

  private at(seat: number): WorkerLike | undefined {
    try {
      return (this.workers[seat] ??= this.hire?.());
    } catch {
      return undefined;
    }
  }
}

/** Tells all who wait that the work is stopped; plain, because not every engine has the page's own. */
class Stop {
  aborted = false;
  private readonly listeners: (() => void)[] = [];

  onabort(listener: () => void): void {
    if (this.aborted) listener();
    else this.listeners.push(listener);
  }

  abort(): void {
    this.aborted = true;
    for (const listener of this.listeners.splice(0)) listener();
  }
}

/** Lets other work go first, where the engine has timers at all. */
function breath(): Promise<void> {
  return new Promise((resolve) => (typeof setTimeout === 'undefined' ? resolve() : setTimeout(resolve, 0)));
}
