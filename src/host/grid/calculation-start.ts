import { CommandType, type ICommandInfo, ICommandService, type Injector } from '@univerjs/core';
import {
  IActiveDirtyManagerService,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
} from '@univerjs/engine-formula';
import { TriggerCalculationController } from '@univerjs/sheets-formula';

/** What the grid's own trigger keeps to itself: what has changed, and when it begins to work that out. */
interface Trigger {
  _setTimeoutKey: ReturnType<typeof setTimeout> | number;
  _waitingCommandQueue: readonly unknown[];
  _executingDirtyData: object;
  /** null or undefined while nothing is being worked out. */
  _executionInProgressParams: unknown;
  _restartCalculation: boolean;
  _generateDirty(commands: readonly unknown[]): object;
  _mergeDirty(one: object, other: object): object;
}

/** Least and longest wait, ms: so long that what was typed is painted first, and that a burst of changes is one. */
const WAIT = { least: 20, most: 500 } as const;
/** The wait as a share of how long the last calculation took: large workbooks wait for the typing to rest. */
const SHARE = 0.1;

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

  const begin = () => {
    const changed = trigger._generateDirty(trigger._waitingCommandQueue);
    trigger._executingDirtyData = trigger._mergeDirty(trigger._executingDirtyData, changed);
    trigger._waitingCommandQueue = [];
    if (trigger._executionInProgressParams === null || trigger._executionInProgressParams === undefined) {
      const all = { ...trigger._executingDirtyData };
      commands.executeCommand(SetFormulaCalculationStartMutation.id, all, { onlyLocal: true }).catch(failed);
    } else {
      trigger._restartCalculation = true;
      commands.executeCommand(SetFormulaCalculationStopMutation.id, {}).catch(failed);
    }
  };

  let own = trigger._setTimeoutKey;
  commands.onCommandExecuted(({ id, type, params }: Readonly<ICommandInfo>) => {
    if (id === SetFormulaCalculationStartMutation.id) begun = performance.now();
    if (id === SetFormulaCalculationNotificationMutation.id && isEnd(params)) {
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
