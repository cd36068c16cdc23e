import { tellFault } from '../notices';
import type { RunsDialog } from './runs-dialog';
import type { RunsHere } from './runs-here';

/** Shows the list of runs. What that takes loads when it is first asked for. */
export function offerRuns(button: HTMLElement, dialog: HTMLDialogElement, runs: RunsHere, openFile: () => void): void {
  let list: Promise<RunsDialog> | undefined;
  const load = async () => {
    const loaded = await import(/* webpackChunkName: "runs" */ './runs-dialog');
    return new loaded.RunsDialog(dialog, runs, openFile);
  };
  button.addEventListener('click', () => {
    list ??= load();
    list
      .then((shown) => shown.show())
      .catch((error: unknown) => {
        // Tried again when it is asked for again.
        list = undefined;
        tellFault(error);
      });
  });
  dialog.addEventListener('close', () => button.focus());
}
