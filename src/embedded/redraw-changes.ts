import type { ICommandInfo } from '@univerjs/core';
import {
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from '@univerjs/engine-formula';
import { SheetRenderController } from '@univerjs/sheets-ui';

/** What the grid keeps to itself of drawing a sheet anew. */
interface Renderer {
  _markUnitDirty(command: Readonly<ICommandInfo>, ...options: unknown[]): void;
}

/** Tells that formulas are to be worked out, or no longer; what is shown is as it was. */
const NOTHING_SHOWN: ReadonlySet<string> = new Set([
  SetTriggerFormulaCalculationStartMutation.id,
  SetFormulaCalculationStartMutation.id,
  SetFormulaCalculationStopMutation.id,
]);

/**
 * Lets a calculation begin without the whole sheet being drawn anew before it: what is typed has been drawn by then, and what
 * is worked out will be.
 * @throws Error where the grid draws otherwise than the version that this was written for
 */
export function redrawWhatChanges(): void {
  const renderer = SheetRenderController.prototype as unknown as Renderer;
  const mark = renderer._markUnitDirty;
  if (typeof mark !== 'function') throw new Error('The grid draws otherwise than it did.');
  renderer._markUnitDirty = function (command, ...options) {
    if (!NOTHING_SHOWN.has(command.id)) mark.call(this, command, ...options);
  };
}
