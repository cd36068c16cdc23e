import { CommandType, ICommandService, type Injector } from '@univerjs/core';
import type { GridHost } from '../host/grid/grid-host';
import { wholeWorkbook } from '../host/grid/whole-workbook';
import { Keeper, type KeeperListener } from './keeper';
import type { OpenRun } from './runs/open-run';

/** How long content that is worked out must rest before it is kept, ms: the pane is drawn first. */
const rest = 300;

/** A run that is kept as it changes. */
export interface Keeping {
  /** Keeps the run though nothing in it has changed: nothing of it is kept yet. */
  change(): void;
  /** Keeps what has changed. Rejects where that cannot be kept. */
  now(): Promise<void>;
  /** Whether there is something that is not known to be kept. */
  readonly due: boolean;
  /** Keeps what has changed, wherever that can be, and nothing after it: the run goes to another tab. */
  handOver(): Promise<void>;
}

/** Keeps the run after each change, so that it is there when the page is loaded again. */
export function keepRun(injector: Injector, host: GridHost, run: OpenRun, listener: KeeperListener): Keeping {
  const keeper = new Keeper(async () => run.keep(wholeWorkbook(injector)), listener);
  const save = () => {
    // The listener is told of what fails.
    keeper.now().catch(() => undefined);
  };
  injector.get(ICommandService).onCommandExecuted(({ type }) => {
    if (type === CommandType.MUTATION) keeper.change();
  });
  let soon: ReturnType<typeof setTimeout> | undefined;
  host.onContent(() => {
    clearTimeout(soon);
    soon = setTimeout(save, rest);
  });
  let stopped = false;
  addEventListener('pagehide', () => {
    // A page that is left at once has not waited for its content to rest, nor for the database.
    if (keeper.due && !stopped) run.leave(wholeWorkbook(injector));
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') save();
  });
  return {
    change: () => {
      keeper.change();
      save();
    },
    now: () => keeper.now(),
    get due() {
      return keeper.due;
    },
    handOver: async () => {
      const work = keeper.now();
      stopped = true;
      keeper.stop();
      await work.catch(() => run.leave(wholeWorkbook(injector)));
    },
  };
}
