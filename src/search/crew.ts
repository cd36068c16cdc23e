import { type Emptied, emptySheet, type SheetsTask } from '../core/cutting/search/empty-sheet';
import { packStrip, type Strip, type StripTask } from '../core/cutting/search/pack-strip';
import type { Token } from '../core/cutting/search/effort';

export type Task = SheetsTask | StripTask;
export type Answer<T extends Task> = T extends SheetsTask ? Emptied : Strip;

/** What a search needs of a worker: that of a page, or of another engine in the same clothes. */
export interface WorkerLike {
  postMessage(task: Task): void;
  terminate(): void;
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  onerror: ((event: unknown) => void) | null;
}

/** Works a task through, here and now. */
export function perform<T extends Task>(task: T, token: Token): Answer<T> {
  const answer = task.kind === 'sheets' ? emptySheet(task, token) : packStrip(task, token);
  return answer as Answer<T>;
}

/** How often a task is handed to another worker when one has died over it, before it is worked through here. */
const MOST_DEATHS = 2;

/** How often the token is looked at while workers work, ms. */
const LOOK_EVERY = 50;

/** Workers that work tasks through side by side. Without workers it does so itself, one task after the other. */
export class Crew {
  private readonly workers: (WorkerLike | undefined)[];

  /** @param hire makes a worker; undefined or throwing where there can be none */
  constructor(
    private readonly hire: (() => WorkerLike | undefined) | undefined,
    size: number,
  ) {
    this.workers = new Array<WorkerLike | undefined>(hire ? Math.max(1, size) : 0).fill(undefined);
  }

  /**
   * Works tasks through; the answers do not depend on how many workers there are, nor on how many of them die.
   * @returns the answers in the order of the tasks; undefined where the token stopped the work
   */
  async perform<T extends Task>(tasks: readonly T[], token: Token): Promise<readonly Answer<T>[] | undefined> {
    const answers: Answer<T>[] = [];
    if (this.workers.length === 0) {
      for (const task of tasks) {
        await breath();
        if (token.stopped) return undefined;
        answers.push(perform(task, token));
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
        const answer = await this.handOver(seat, tasks[at], token, stop);
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

  private async handOver<T extends Task>(
    seat: number,
    task: T,
    token: Token,
    stop: Stop,
  ): Promise<Answer<T> | undefined> {
    for (let deaths = 0; deaths <= MOST_DEATHS && !stop.aborted; deaths++) {
      const worker = this.at(seat);
      if (!worker) break;
      const answer = await new Promise<Answer<T> | 'died' | undefined>((resolve) => {
        stop.onabort(() => resolve(undefined));
        worker.onmessage = ({ data }) => resolve(data as Answer<T>);
        worker.onerror = () => resolve('died');
        worker.postMessage(task);
      });
      if (answer !== 'died' && answer !== undefined) return answer;
      worker.terminate();
      this.workers[seat] = undefined;
    }
    return stop.aborted ? undefined : perform(task, token);
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
