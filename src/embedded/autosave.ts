import { CommandType, ICommandService, type Injector } from '@univerjs/core';
import type { GridHost } from '../host/grid/grid-host';
import { wholeWorkbook } from '../host/grid/whole-workbook';
import { Keeper, type KeeperListener } from './keeper';
import type { SavedWorkbook } from './saved-workbook';

/** Tells how keeping the workbook goes. */
export interface AutosaveListener extends KeeperListener {
  /** The workbook is open in another tab, which keeps its own; this one is kept once that tab is closed. */
  readonly waiting: () => void;
  /** This tab keeps its workbook. */
  readonly keeping: () => void;
}

/** How long a tab that is just being closed may take to let go, ms. */
const handover = 1500;

/** How long content that is worked out must rest before it is kept, ms: the pane is drawn first. */
const rest = 300;

/**
 * Keeps the workbook after each change, so that it is there when the page is loaded again. Of several tabs only the
 * first keeps its own: else each would overwrite the others'.
 */
export function autosave(injector: Injector, host: GridHost, saved: SavedWorkbook, listener: AutosaveListener): void {
  const keeper = new Keeper(async () => saved.save(wholeWorkbook(injector)), listener);
  // From the first on: what is changed while another tab still lets go counts as well.
  injector.get(ICommandService).onCommandExecuted(({ type }) => {
    if (type === CommandType.MUTATION) keeper.change();
  });
  const save = () => keeper.now();
  const begin = () => {
    listener.keeping();
    let soon: ReturnType<typeof setTimeout> | undefined;
    host.onContent(() => {
      clearTimeout(soon);
      soon = setTimeout(save, rest);
    });
    addEventListener('pagehide', () => {
      // A page that is left at once has not waited for its content to rest.
      if (keeper.due) saved.saveLeaving(wholeWorkbook(injector));
      save();
    });
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'hidden') save();
    });
  };
  if (!('locks' in navigator)) return begin();
  const patience = setTimeout(listener.waiting, handover);
  const held = () => {
    clearTimeout(patience);
    begin();
    // Held until the tab is closed.
    return new Promise(() => undefined);
  };
  navigator.locks.request('solebench workbook', held).catch((error: unknown) => {
    clearTimeout(patience);
    listener.failed(error);
  });
}
