import type { Injector } from '@univerjs/core';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Entry } from './enter-page';
import { keepRun } from './keep-run';
import { type NoticeAction, showNotice, tellFault } from './notices';
import { nameInAddress } from './runs/address';
import type { Run } from './runs/run';
import { isFull } from './runs/run-store';
import type { RunsHere } from './runs/runs-here';
import { saidBefore } from './runs/said-before';

/** What may become of the run while it is open. */
export interface RunNews {
  /** It was changed elsewhere; what is here is kept as a run of its own. */
  readonly moved: (to: Run) => void;
  /** Another tab took it. */
  readonly lost: () => void;
}

/** Keeps the run of the page as it changes, tells the maker how that goes, and hands it over to another tab that asks. */
export function keepAndTell(entry: Entry, runs: RunsHere, injector: Injector, save: () => void): RunNews {
  const { host } = runs;
  const asFile: NoticeAction = { name: 'Save as file', run: save, stays: true };
  if (!entry.kept) {
    const why = entry.notKept === undefined ? '' : ` (${whatWentWrong(entry.notKept)})`;
    showNotice(`This browser keeps nothing for the page${why}. What you change is lost when the page closes.`, [
      asFile,
    ]);
    return { moved: () => undefined, lost: () => undefined };
  }
  const { store, holding, run } = entry.kept;
  tellOfEntry(entry, run.id);
  let failed: (() => void) | undefined;
  const keeping = keepRun(injector, host, run, {
    kept: () => {
      failed?.();
      failed = undefined;
    },
    failed: (error) => {
      // It tries again and again: the notice stands once.
      failed ??= showNotice(
        `${notKept(error)} It is tried again; until then what you change is lost when the page closes.`,
        [asFile],
      );
    },
  });
  if (entry.fresh) keeping.change();
  runs.kept = { store, holding, open: run, keeping };
  nameInAddress(run.id);
  store.visited(run.id).catch(tellFault);
  store.clearBin().catch(tellFault);
  addEventListener('beforeunload', (event) => {
    if (failed && keeping.due && !runs.leaving) event.preventDefault();
  });
  const gone = () => {
    keeping
      .handOver()
      .then(() => {
        holding.letGo();
        tellOfGone(host.workbookName);
      })
      .catch(tellFault);
  };
  holding.onAsked(gone);
  return {
    moved: (to) => {
      holding.letGo();
      holding.hold(to.id, () => undefined, gone).catch(tellFault);
      nameInAddress(to.id);
      store.visited(to.id).catch(tellFault);
      holding.listChanged();
      showNotice(
        `“${to.name}” was changed in another tab meanwhile. What you have here is kept beside it, under Runs.`,
      );
    },
    lost: gone,
  };
}

/** Why the run could not be kept. */
function notKept(error: unknown): string {
  return isFull(error)
    ? 'This browser has no room to keep the run.'
    : `This browser could not keep the run (${whatWentWrong(error)}).`;
}

function tellOfEntry({ notTaken }: Entry, run: string): void {
  const said = saidBefore(run);
  if (said !== undefined) showNotice(said);
  if (notTaken === undefined) return;
  showNotice(
    `What you changed last in another run could not be kept yet (${whatWentWrong(notTaken)}). It is tried again when the page is loaded.`,
  );
}

/** Shows that the run is at work elsewhere: what would be changed here would be kept nowhere. */
function tellOfGone(name: string): void {
  for (const part of document.querySelectorAll<HTMLElement>('.work, .bar .actions')) part.inert = true;
  showNotice(
    `“${name}” is at work in another tab now. What stands here is from before.`,
    [{ name: 'Work here again', run: () => location.reload() }],
    false,
  );
}
