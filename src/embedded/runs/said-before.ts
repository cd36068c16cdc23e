/** Where a page puts what the next one is to say. */
const KEY = 'solebench said';

/** Has the next page say something, once it shows the run. */
export function sayInNext(run: string, sentence: string): void {
  try {
    sessionStorage.setItem(KEY, JSON.stringify([run, sentence]));
  } catch {
    // A browser that keeps nothing goes without it.
  }
}

/** What the page before had to say of the run that is open now. */
export function saidBefore(run: string): string | undefined {
  try {
    const said: unknown = JSON.parse(sessionStorage.getItem(KEY) ?? 'null');
    sessionStorage.removeItem(KEY);
    return Array.isArray(said) && said[0] === run && typeof said[1] === 'string' ? said[1] : undefined;
  } catch {
    return undefined;
  }
}
