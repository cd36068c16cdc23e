import type { IWorkbookData } from '@univerjs/core';
import { changeInWords } from './change-in-words';
import { forget, leave } from './leaving';
import { packed } from './packed';
import { newId, type NewState, Overtaken, type Run } from './run';
import type { RunStore } from './run-store';
import { workbookIn } from './workbook-in';

/** The run that this page works on: keeps its changes one after the other, each with the state before it. */
export class OpenRun {
  /** What is kept of it, as far as this page has asked for it. */
  private before: IWorkbookData | undefined;
  private queue: Promise<unknown> = Promise.resolve();
  private underWay = 0;
  /** How many times it was left since it was kept. */
  private timesLeft = 0;

  /**
   * @param version what is kept; 0 where nothing is yet
   * @param moved is told of the run's new place where another visit has changed or removed it: both are kept then
   */
  constructor(
    private readonly store: RunStore,
    private place: string,
    private version: number,
    private readonly moved: (to: Run) => void,
  ) {}

  get id(): string {
    return this.place;
  }

  /** Keeps a workbook as what the run holds now. @param workbook that nobody changes any more */
  keep(workbook: IWorkbookData): Promise<void> {
    this.underWay++;
    const work = this.queue.then(async () => {
      try {
        await this.keepNext(workbook);
      } finally {
        this.underWay--;
      }
    });
    this.queue = work.catch(() => undefined);
    return work;
  }

  /** Leaves a workbook for the next page, before this returns. */
  leave(workbook: IWorkbookData): void {
    const { store, id, version: from, underWay } = this;
    // A page that came back after it was left may be left again before anything is kept.
    const version = from + underWay + ++this.timesLeft;
    leave(store, { id, from, by: store.visit, version, at: Date.now() }, workbook);
  }

  private async keepNext(workbook: IWorkbookData): Promise<void> {
    const { store, version: from, place: id } = this;
    const state = from === 0 ? undefined : await this.stateBefore(workbook);
    try {
      const { version } = await store.keep({ id, workbook, from, by: store.visit, at: state?.at, state });
      this.version = version;
    } catch (error) {
      if (!(error instanceof Overtaken)) throw error;
      const run = await store.make(workbook);
      [this.place, this.version] = [run.id, run.version];
      this.moved(run);
    }
    this.before = workbook;
    this.timesLeft = 0;
    forget({ id, by: store.visit });
  }

  private async stateBefore(workbook: IWorkbookData): Promise<NewState | undefined> {
    // A page that has kept nothing yet works on what was kept before it.
    const before = this.before ?? workbookIn(await this.store.content(this.place));
    const what = before && changeInWords(before, workbook);
    return before && what !== undefined ? { at: Date.now(), what, packed: await packed(before) } : undefined;
  }
}

/** A run of which nothing is kept yet. */
export function newRun(store: RunStore, moved: (to: Run) => void): OpenRun {
  return new OpenRun(store, newId(), 0, moved);
}
