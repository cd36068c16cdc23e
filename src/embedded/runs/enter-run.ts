import type { IWorkbookData } from '@univerjs/core';
import { snapshotOf } from '../../host/grid/snapshot';
import { blank } from '../../workbook/blank';
import { demo } from '../../workbook/demo';
import type { WorkbookPlan } from '../../workbook/workbook';
import { saveAsFile } from '../save-as-file';
import { runInAddress } from './address';
import { alone } from './alone';
import type { Doorway } from './doorway';
import type { Holding } from './holding';
import { takeInLeft } from './leaving';
import { named, numbered } from './names';
import { newRun, OpenRun } from './open-run';
import { markOpened, markOpening, openingFailed } from './opening-mark';
import { BIN_KEEPS, type Run } from './run';
import type { RunStore } from './run-store';
import { dayInWords } from './times';
import { workbookIn } from './workbook-in';

/** A run that this tab has or looks at, and the workbook in it. */
export interface Entered {
  readonly run: OpenRun;
  readonly workbook: IWorkbookData;
  /** Whether its values are to be worked out before it is shown. */
  readonly fresh: boolean;
  /** Where another tab has it: what is shown of it meanwhile. */
  readonly elsewhere?: Elsewhere & { readonly shown: IWorkbookData };
}

/** A run that is at work in another tab. */
export interface Elsewhere {
  /** Asks that tab to hand it over. */
  readonly take: () => void;
  /** Resolves once this tab has it. */
  readonly held: Promise<void>;
}

/** What entering a run needs. */
export interface Entrance {
  readonly store: RunStore;
  readonly holding: Holding;
  readonly doorway: Doorway;
  /** What a first visit opens. */
  readonly plan: WorkbookPlan;
  /** Is told where the run could only be kept as one of its own. */
  readonly moved: (to: Run) => void;
  /** Is told where another tab took the run. */
  readonly lost: () => void;
}

/** Enters the run that the page's address names, else that of the last visit, else a first one. */
export async function enterRun(entrance: Entrance): Promise<Entered> {
  const { store } = entrance;
  const asked = runInAddress();
  for (;;) {
    const run = asked === undefined ? await store.latest() : await store.run(asked);
    if (!run && asked === undefined) return begin(entrance, entrance.plan);
    if (!run) return begin(entrance, await planFor(entrance, 'This browser has no run at this address.'));
    if (run.removed !== undefined) await askBack(entrance, run, run.removed);
    else {
      const entered = await openKept(entrance, run);
      if (entered) return entered;
    }
  }
}

async function begin({ store, holding, moved, lost }: Entrance, plan: WorkbookPlan): Promise<Entered> {
  const run = newRun(store, moved);
  const taken = (await store.list()).runs.map(({ name }) => name);
  const workbook = snapshotOf(plan, 'workbook');
  await holding.hold(run.id, () => undefined, lost);
  const name = numbered(plan.name, taken);
  return { run, workbook: name === plan.name ? workbook : named(workbook, name), fresh: true };
}

/** Asks what to begin with. */
async function planFor({ store, doorway }: Entrance, sentence: string): Promise<WorkbookPlan> {
  const { runs } = await store.list();
  const choices = [
    { name: 'Begin with the demo', means: demo },
    { name: 'Begin with blank tables', means: blank },
  ];
  return doorway.ask(sentence, choices, runs);
}

async function askBack({ store, doorway }: Entrance, { id, name }: Run, removed: number): Promise<void> {
  const { runs } = await store.list();
  const until = dayInWords(removed + BIN_KEEPS);
  await doorway.ask(`“${name}” is in the bin until ${until}.`, [{ name: 'Give it back', means: true }], runs);
  await store.giveBack(id);
}

/** Opens a run that is kept, to look at where another tab has it. @returns undefined where it is to be looked for again */
async function openKept(entrance: Entrance, { id, name, damaged }: Run): Promise<Entered | undefined> {
  const { store, holding, doorway, moved, lost } = entrance;
  const others = (await store.list()).runs.filter((one) => one.id !== id);
  const elsewhere = await heldOrElsewhere(holding, id, lost);
  if (elsewhere) {
    const run = await store.run(id);
    const workbook = run && !damaged && run.removed === undefined ? workbookIn(await store.content(id)) : undefined;
    if (run && workbook) {
      // The grid works on the very workbook that it is given.
      const shown = structuredClone(workbook);
      const looked = new OpenRun(store, id, run.version, moved);
      return { run: looked, workbook, fresh: false, elsewhere: { ...elsewhere, shown } };
    }
    const here = { name: 'Work here', run: elsewhere.take };
    doorway.show(`“${name}” is open in another tab.`, [here], others);
    await elsewhere.held;
  }
  doorway.clear();
  // The tab that had it may have left more on its way out. What cannot be taken in now is so at another visit.
  await alone(() => takeInLeft(store)).catch(() => undefined);
  const run = await store.run(id);
  if (run && run.removed === undefined) {
    const content = await store.content(id);
    const workbook = damaged || openingFailed(id) ? undefined : workbookIn(content);
    if (workbook) {
      markOpening(id);
      return { run: new OpenRun(store, id, run.version, moved), workbook, fresh: false };
    }
    await store.damaged(id, true);
    holding.letGo();
    const plan = await askDamaged(entrance, run, content, others);
    if (plan) return begin(entrance, plan);
    markOpened(id);
    await store.damaged(id, false);
  }
  holding.letGo();
  return undefined;
}

/** @returns what to begin with instead; undefined where it is to be tried again */
function askDamaged(
  { doorway }: Entrance,
  { name }: Run,
  content: unknown,
  others: readonly Run[],
): Promise<WorkbookPlan | undefined> {
  return new Promise((resolve) => {
    const answer = (plan: WorkbookPlan | undefined) => {
      doorway.clear();
      resolve(plan);
    };
    const save = () => saveAsFile('damaged-workbook.json', JSON.stringify(content), 'application/json');
    doorway.show(
      `“${name}” could not be opened. It is kept as it is.`,
      [
        { name: 'Try again', run: () => answer(undefined) },
        { name: 'Save it as a file', run: save },
        { name: 'Begin with the demo', run: () => answer(demo) },
        { name: 'Begin with blank tables', run: () => answer(blank) },
      ],
      others,
    );
  });
}

/** Resolves once this tab has a run, or another turns out to have it. */
export function heldOrElsewhere(holding: Holding, id: string, lost: () => void): Promise<Elsewhere | undefined> {
  return new Promise((resolve, reject) => {
    const held: Promise<void> = holding.hold(id, (take) => resolve({ take, held }), lost);
    held.then(() => resolve(undefined), reject);
  });
}
