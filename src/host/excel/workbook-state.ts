/** 1 January 2000 in a workbook that counts its days from 1900. */
const NEW_YEAR_2000 = 36_526;

/** How the workbook is set up, as far as plans depend on it. */
export interface WorkbookState {
  /** Whether Excel works formulas out only when it is asked to. */
  readonly manual: boolean;
  /** Whether day numbers count from 1904. */
  readonly from1904: boolean;
}

/** Asks how the workbook is set up. @returns to be called after the next exchange */
export function askedState({ workbook }: Excel.RequestContext): () => WorkbookState {
  const application = workbook.application.load('calculationMode');
  // There is no property for it; the suite's own function counts as the workbook does.
  const day = workbook.functions.date(2000, 1, 1).load('value');
  return () => ({ manual: application.calculationMode === 'Manual', from1904: day.value !== NEW_YEAR_2000 });
}

/** Reads how the workbook is set up. */
export async function stateOf(context: Excel.RequestContext): Promise<WorkbookState> {
  const state = askedState(context);
  await context.sync();
  return state();
}

/** Why tables with days cannot be loaded into a workbook that counts from 1904. */
export const COUNTS_FROM_1904 =
  'This workbook counts its days from 1904, so days due would stand four years and a day off. Use a new workbook, or untick ' +
  '“Use 1904 date system” under File, Options, Advanced.';

/** What of it keeps plans from being right, and what to do. */
export function cautionsOf({ manual, from1904 }: WorkbookState): readonly string[] {
  return [
    manual
      ? 'Excel works nothing out by itself in this workbook. Press F9 after a change, or choose Formulas, Calculation Options, Automatic.'
      : '',
    from1904 ? COUNTS_FROM_1904 : '',
  ].filter(Boolean);
}
