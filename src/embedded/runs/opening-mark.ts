/** Stands while a run is being opened, before the run's id. If it still does at the next visit, opening it ended the page. */
const PREFIX = 'solebench opening ';

export function markOpening(run: string): void {
  quietly(() => localStorage.setItem(PREFIX + run, ''));
}

/** The run opened well; to leave the page before that is no failure of it either. */
export function markOpened(run: string): void {
  quietly(() => localStorage.removeItem(PREFIX + run));
}

/** Whether opening the run ended the page before. */
export function openingFailed(run: string): boolean {
  return quietly(() => localStorage.getItem(PREFIX + run) !== null) ?? false;
}

/** A browser without this storage goes without the mark. */
function quietly<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
