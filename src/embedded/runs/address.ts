/** Names the run in the page's address. */
const PARAMETER = 'run';

/** The run that the page's address names. */
export function runInAddress(): string | undefined {
  return new URLSearchParams(location.search).get(PARAMETER) ?? undefined;
}

/** The page's address with a run in it; undefined for that of the last visit. */
export function addressOf(run: string | undefined): string {
  const address = new URL(location.href);
  address.hash = '';
  if (run === undefined) address.searchParams.delete(PARAMETER);
  else address.searchParams.set(PARAMETER, run);
  return address.href;
}

/** Names the run that the page shows, without a step for the browser's back. */
export function nameInAddress(run: string): void {
  if (runInAddress() !== run) history.replaceState(null, '', addressOf(run));
}
