import { CommandType, type ICommandInfo, ICommandService, type Injector } from '@univerjs/core';
import {
  IActiveDirtyManagerService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationResultMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
} from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';

/** What the grid's own trigger keeps to itself: what has changed, and when it begins to work that out. */
interface Trigger {
  _setTimeoutKey: ReturnType<typeof setTimeout> | number;
  _waitingCommandQueue: readonly unknown[];
  _executingDirtyData: object;
  _restartCalculation: boolean;
  _generateDirty(commands: readonly unknown[]): object;
  _mergeDirty(one: object, other: object): object;
}

/** Least and longest wait, ms: so long that what was typed is painted first, and that a burst of changes is one. */
const WAIT = { least: 20, most: 500 } as const;
/** The wait as a share of how long the last calculation took: large workbooks wait for the typing to rest. */
const SHARE = 0.1;

/** Changes by which cells come to stand elsewhere. */
const MOVES_CELLS = /^sheet\.mutation\.(insert-row|insert-col|remove-rows|remove-col|move-)/;

/**
 * Lets the grid work changes out sooner than after the tenth of a second that it always waits.
 * @param failed is told where a calculation could not begin
 * @throws Error where the grid begins calculations otherwise than the version that this was written for
 */
export function beginCalculationsSoon(injector: Injector, failed: (error: unknown) => void): void {
  const commands = injector.get(ICommandService);
  const watched = injector.get(IActiveDirtyManagerService);
  const trigger = injector.get(TriggerCalculationController) as unknown as Trigger;
  const methods = [trigger._generateDirty, trigger._mergeDirty];
  if (methods.some((method) => typeof method !== 'function') || !Array.isArray(trigger._waitingCommandQueue)) {
    throw new Error('The grid begins calculations otherwise than it did.');
  }
  let wait: number = WAIT.least;
  let begun = NaN;
  let running = false;
  let moved = false;
  let stale = false;
  let pending: object | undefined;

  const begin = () => {
    const changed = trigger._generateDirty(trigger._waitingCommandQueue);
    const merged = trigger._mergeDirty(trigger._executingDirtyData, changed);
    // What had changed before cells moved is no longer where it was.
    trigger._executingDirtyData = moved ? { ...merged, forceCalculation: true } : merged;
    moved = false;
    trigger._waitingCommandQueue = [];
    if (!running) {
      start();
    } else {
      // One at a time: two would write over each other's answers.
      pending = trigger._executingDirtyData;
      trigger._restartCalculation = true;
      commands.executeCommand(SetFormulaCalculationStopMutation.id, {}).catch(failed);
    }
  };
  const start = () => {
    const all = { ...trigger._executingDirtyData };
    commands.executeCommand(SetFormulaCalculationStartMutation.id, all, { onlyLocal: true }).catch(failed);
  };
  /** What was to begin again and did not, since there was nothing left to stop. */
  const goOn = () => {
    if (running || !pending) return;
    trigger._restartCalculation = false;
    trigger._executingDirtyData = pending;
    start();
  };

  // A calculation writes its answers where their formulas were when it began: over what the maker has entered, where rows or
  // columns have moved since. So it is stopped before they do, and all is worked out anew.
  commands.beforeCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
    if (stale && id === SetFormulaCalculationResultMutation.id) Object.assign(params as object, { unitData: {} });
    if (!running || !MOVES_CELLS.test(id)) return;
    moved = stale = true;
    commands.syncExecuteCommand(SetFormulaCalculationStopMutation.id, {});
  });

  let own = trigger._setTimeoutKey;
  commands.onCommandExecuted(({ id, type, params }: Readonly<ICommandInfo>) => {
    if (id === SetFormulaCalculationStartMutation.id) {
      begun = performance.now();
      running = true;
      stale = false;
      pending = undefined;
    }
    if (id === SetFormulaCalculationNotificationMutation.id && isEnd(params)) {
      running = false;
      if (pending) setTimeout(goOn);
      wait = Math.min(WAIT.most, Math.max(WAIT.least, SHARE * (performance.now() - begun) || 0));
    }
    // The trigger has heard of the change before, and set its own clock for it.
    if (type !== CommandType.MUTATION || !watched.get(id) || trigger._setTimeoutKey === own) return;
    clearTimeout(trigger._setTimeoutKey);
    trigger._setTimeoutKey = own = setTimeout(begin, wait);
  });
}

function isEnd(params: unknown): boolean {
  return (params as { readonly functionsExecutedState?: unknown } | undefined)?.functionsExecutedState !== undefined;
}
