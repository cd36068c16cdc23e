import type { ICommandInfo, ICommandService, IExecutionOptions } from '@univerjs/core';
import {
  FormulaExecutedStateType,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { Observable } from 'rxjs';
import { LONGEST } from './work-ahead';

/** Changes of what stands in cells, lists and names; what the formula engine writes itself is local. */
const changes = /^(sheet|data-validation)\.mutation\.|defined-name/;

/**
 * How long a change waits for a calculation to begin before it is told without one, ms; the longest wait is 500 and what is
 * done ahead.
 */
const withoutCalculation = 600 + LONGEST;

/**
 * Tells of changed content once it has been worked out: at the end of the calculation that follows it, and of changes that
 * no calculation follows, such as looks, after a while.
 */
export function contentAtRest(commands: ICommandService): Observable<void> {
  return new Observable((subscriber) => {
    /** Whether something has changed since the last calculation began. */
    let changed = false;
    let patience: ReturnType<typeof setTimeout> | undefined;
    let ended: ReturnType<typeof setTimeout> | undefined;
    const tell = () => {
      changed = false;
      subscriber.next();
    };
    const watch = commands.onCommandExecuted(({ id, params }: Readonly<ICommandInfo>, options?: IExecutionOptions) => {
      if (id === SetFormulaCalculationStartMutation.id) {
        changed = false;
        clearTimeout(patience);
        clearTimeout(ended);
      } else if (id === SetFormulaCalculationNotificationMutation.id) {
        // What it has worked out is put into the cells before the next task.
        if (hasEnded(params)) ended = setTimeout(() => !changed && tell());
      } else if (id === SetTriggerFormulaCalculationStartMutation.id || (changes.test(id) && !options?.onlyLocal)) {
        changed = true;
        clearTimeout(patience);
        patience = setTimeout(() => changed && tell(), withoutCalculation);
      }
    });
    return () => {
      watch.dispose();
      clearTimeout(patience);
      clearTimeout(ended);
    };
  });
}

/** Whether a notification tells of a calculation's end. One that is stopped begins again. */
export function hasEnded(params: unknown): boolean {
  const { functionsExecutedState: state } = params as ISetFormulaCalculationNotificationMutation;
  return state !== undefined && state !== FormulaExecutedStateType.STOP_EXECUTION;
}
