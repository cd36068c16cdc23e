import type { Stop } from '../host';

/** So long at most the cells wait for what is done ahead of them, ms. */
export const LONGEST = 400;

/** What is done with what has just been entered before the grid works its cells out. */
export class WorkAhead {
  private readonly works = new Set<() => Promise<void>>();

  add(work: () => Promise<void>): Stop {
    this.works.add(work);
    return () => void this.works.delete(work);
  }

  /** Has all of it done; waits for it no longer than the cells may. undefined where there is nothing to do. */
  done(): Promise<void> | undefined {
    if (this.works.size === 0) return undefined;
    return new Promise((resolve, reject) => {
      const clock = setTimeout(resolve, LONGEST);
      Promise.all([...this.works].map((work) => work()))
        .finally(() => clearTimeout(clock))
        .then(() => resolve(), reject);
    });
  }
}
