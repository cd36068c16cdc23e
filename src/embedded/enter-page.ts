import type { IWorkbookData } from '@univerjs/core';
import { snapshotOf } from '../host/grid/snapshot';
import type { WorkbookPlan } from '../workbook/workbook';
import { alone } from './runs/alone';
import type { Doorway } from './runs/doorway';
import { type Entered, enterRun } from './runs/enter-run';
import { takeOverFormer } from './runs/former-store';
import { Holding } from './runs/holding';
import { takeInLeft } from './runs/leaving';
import type { OpenRun } from './runs/open-run';
import type { Run } from './runs/run';
import { RunStore } from './runs/run-store';

/** What the page opens, and what keeps it. */
export interface Entry {
  readonly workbook: IWorkbookData;
  /** Whether its values are to be worked out before it is shown. */
  readonly fresh: boolean;
  /** undefined where the browser keeps nothing, as in some private windows; then there is a reason. */
  readonly kept: KeptEntry | undefined;
  readonly notKept: unknown;
  /** What of an earlier visit could not be taken in; it stays where it is for the next one. */
  readonly notTaken: unknown;
}

/** The run that the page opens, and what keeps it. */
export interface KeptEntry {
  readonly store: RunStore;
  readonly holding: Holding;
  readonly run: OpenRun;
  /** Where another tab has the run, which can be looked at meanwhile. */
  readonly elsewhere: Entered['elsewhere'];
}

/** Finds what the page is to open: the run in its address, that of the last visit, or a first one. */
export async function enterPage(
  plan: WorkbookPlan,
  doorway: Doorway,
  heard: { readonly moved: (to: Run) => void; readonly lost: () => void },
): Promise<Entry> {
  const holding = new Holding();
  try {
    const store = await RunStore.open();
    const notTaken = await alone(() => takeIn(store)).catch((error: unknown) => error);
    const { run, workbook, fresh, elsewhere } = await enterRun({ store, holding, doorway, plan, ...heard });
    return { workbook, fresh, kept: { store, holding, run, elsewhere }, notKept: undefined, notTaken };
  } catch (notKept) {
    holding.letGo();
    return { workbook: snapshotOf(plan, 'workbook'), fresh: true, kept: undefined, notKept, notTaken: undefined };
  }
}

async function takeIn(store: RunStore): Promise<void> {
  await takeOverFormer(store);
  await takeInLeft(store);
}
