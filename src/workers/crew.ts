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

/** Workers that work tasks through side by side. Without workers it does so itself, one task after the other. */
export class Crew<T, A> {
  private readonly workers: (WorkerLike | undefined)[];

  /**
   * @param work what its workers do, for where there are none
   * @param hire makes a worker; undefined or throwing where there can be none
   */
  constructor(
    private readonly work: Work<T, A | Promise<A>>,
    private readonly hire: (() => WorkerLike | undefined) | undefined,
    size: number,
  ) {
    this.workers = new Array<WorkerLike | undefined>(hire ? Math.max(1, size) : 0).fill(undefined);
  }

  /**
   * Works tasks through; the answers do not depend on how many workers there are, nor on how many of them die.
   * @param found told of the best so far of every task that has found something
   * @returns the answers in the order of the tasks; undefined where the token stopped the work
   */
  async perform(
    tasks: readonly T[],
    token: Token,
    found: (answers: readonly (A | undefined)[]) => void = () => {},
  ): Promise<readonly A[] | undefined> {
    const answers: A[] = [];
    const best: (A | undefined)[] = tasks.map(() => undefined);
    const tell = (at: number) => (answer: A) => {
      best[at] = answer;
      found(best);
    };
    if (this.workers.length === 0) {
      for (const [at, task] of tasks.entries()) {
        await breath();
        if (token.stopped) return undefined;
        answers.push(await this.work(task, token, tell(at)));
      }
      return token.stopped ? undefined : answers;
    }
    let next = 0;
    const stop = new Stop();
    const watch = setInterval(() => {
      if (token.stopped) stop.abort();
    }, LOOK_EVERY);
    const line = async (seat: number): Promise<void> => {
      while (next < tasks.length && !stop.aborted) {
        const at = next++;
        const answer = await this.handOver(seat, tasks[at] as T, token, stop, tell(at));
        if (answer) answers[at] = answer;
      }
    };
    try {
      await Promise.all(this.workers.map((_, seat) => line(seat)));
    } finally {
      clearInterval(watch);
    }
    return stop.aborted ? undefined : answers;
  }

  /** Sends all workers home. */
  end(): void {
    for (const worker of this.workers) worker?.terminate();
    this.workers.fill(undefined);
  }

  private async handOver(
    seat: number,
    task: T,
    token: Token,
    stop: Stop,
    found: (answer: A) => void,
  ): Promise<A | undefined> {
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
