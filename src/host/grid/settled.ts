import type { ICommandInfo, ICommandService } from '@univerjs/core';
import {
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { hasEnded } from './content-at-rest';

/** Knows whether everything in a grid has been worked out, answers that take their time included. */
export class Settled {
  /** Whether a calculation has been asked for and not begun, and whether one is at work. */
  private asked = false;
  private atWork = false;
  private readonly waiting: (() => void)[] = [];

  /** @param running how many functions have not answered yet */
  constructor(
    commands: ICommandService,
    private readonly running: () => number,
  ) {
    commands.onCommandExecuted(({ id, params }: Readonly<ICommandInfo>) => {
      if (id === SetTriggerFormulaCalculationStartMutation.id) this.asked = true;
      else if (id === SetFormulaCalculationStartMutation.id) [this.asked, this.atWork] = [false, true];
      else if (id === SetFormulaCalculationNotificationMutation.id && hasEnded(params)) {
        this.atWork = false;
        // What it has worked out is put into the cells before the next task.
        setTimeout(() => this.tell());
      }
    });
  }

  /** Resolves once nothing is left to be worked out. */
  wait(): Promise<void> {
    return new Promise((resolve) => {
      this.waiting.push(resolve);
      setTimeout(() => this.tell());
    });
  }

  private tell(): void {
    if (!this.asked && !this.atWork && this.running() === 0) this.waiting.splice(0).forEach((resolve) => resolve());
  }
}
