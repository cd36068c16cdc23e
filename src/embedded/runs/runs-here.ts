import type { Injector, IWorkbookData } from '@univerjs/core';
import { whatWentWrong } from '../../core/what-went-wrong';
import type { GridHost } from '../../host/grid/grid-host';
import { wholeWorkbook } from '../../host/grid/whole-workbook';
import { withNoneCut } from '../../host/grid/none-cut';
import { runName } from '../../host/grid/as-entered';
import { snapshotOf } from '../../host/grid/snapshot';
import type { WorkbookPlan } from '../../workbook/workbook';
import type { Keeping } from '../keep-run';
import { addressOf } from './address';
import type { Holding } from './holding';
import { named, numbered, tidied } from './names';
import type { OpenRun } from './open-run';
import { unpacked } from './packed';
import { BIN_KEEPS, type EarlierState, type Run } from './run';
import type { RunStore } from './run-store';
import { sayInNext } from './said-before';
import { dayInWords } from './times';
import { workbookIn } from './workbook-in';

/** What the browser keeps, where it keeps anything. */
export interface Kept {
  readonly store: RunStore;
  readonly holding: Holding;
  /** The run at hand, unless another tab has it. */
  readonly open?: OpenRun;
  readonly keeping?: Keeping;
}

/** What dealing with runs needs of the page. */
export interface RunsPage {
  /** Puts a yes-or-no question to the maker. */
  readonly ask: (question: string) => Promise<boolean>;
  readonly say: (sentence: string) => void;
}

/** What may be done with runs in this page. */
export class RunsHere {
  /** Where the browser keeps nothing there is the run at hand alone. */
  kept: Kept | undefined;
  /** The maker leaves knowing that something is not kept. */
  leaving = false;

  constructor(
    readonly host: GridHost,
    private readonly injector: Injector,
    private readonly page: RunsPage,
  ) {}

  /** The run that the page works on, as the list knows it. */
  get openId(): string | undefined {
    return this.kept?.open?.id;
  }

  /** Runs and the bin, once what was changed here is kept. */
  async list(): ReturnType<RunStore['list']> {
    if (!this.kept) return { runs: [], bin: [] };
    // What cannot be kept is told of already; the list is shown all the same.
    await this.kept.keeping?.now().catch(() => undefined);
    return this.kept.store.list();
  }

  /** Begins a run and goes to it. @returns whether it is there: false where the maker would rather not */
  async begin(plan: WorkbookPlan): Promise<boolean> {
    const workbook = snapshotOf(plan, 'workbook');
    return this.add(await this.numbered(workbook));
  }

  /**
   * Keeps a workbook as a run of its own and goes to it. Where the browser has no room for another, it may take the place
   * of the run at hand.
   * @param said what the page says once it is open
   */
  async add(workbook: IWorkbookData, said?: string): Promise<boolean> {
    if (!this.kept) return this.inPlace(workbook, 'This browser keeps no runs.', said);
    let run: Run;
    try {
      run = await this.kept.store.make(workbook);
    } catch (error) {
      return this.inPlace(workbook, `This browser could not keep another run (${whatWentWrong(error)}).`, said);
    }
    return this.goToNew(run, said);
  }

  /** Goes to a run that was just kept. @param said what the page says once it is open */
  goToNew(run: Run, said?: string): Promise<boolean> {
    this.kept?.holding.listChanged();
    if (said !== undefined) sayInNext(run.id, said);
    return this.go(run.id);
  }

  /** Goes to another run, or to that of the last visit. @returns whether the page is being left */
  async go(id: string | undefined): Promise<boolean> {
    try {
      await this.kept?.keeping?.now();
    } catch {
      const own = this.host.workbookName;
      const lost = `“${own}” could not be kept: what you changed in it last is lost when you leave it. Go on?`;
      if (!(await this.page.ask(lost))) return false;
    }
    this.leaving = true;
    location.assign(addressOf(id));
    return true;
  }

  /** Makes the next run of one: the same under a name of its own, of which nothing is cut yet, and goes to it. */
  async copy(id: string): Promise<boolean> {
    const workbook = await this.workbookOf(id);
    const copy = withNoneCut(await this.numbered(workbook));
    const [own, before] = [runName(copy), runName(workbook)];
    const kept = 'with its pairs and days due, none of them cut; sheets on hand and offcuts come along as they stand';
    return this.add(
      copy,
      `“${own}” is a copy of “${before}” ${kept}. Enter what has changed. “${before}” stays as it is.`,
    );
  }

  /** Calls a run otherwise. @throws Error where it is at work in another tab */
  async rename(id: string, wanted: string): Promise<void> {
    const name = tidied(wanted);
    if (name === '') throw new Error('A run needs a name.');
    if (id === this.openId) return this.host.rename(name);
    const { store, holding } = await this.free(id);
    const [run, workbook] = [await store.run(id), await this.workbookOf(id)];
    if (!run) return;
    await store.keep({ id, workbook: named(workbook, name), from: run.version, by: store.visit });
    holding.listChanged();
  }

  /** Puts a run into the bin. From the one at hand the page goes to another. @throws Error where another tab has it */
  async remove(id: string): Promise<void> {
    const { store, holding, keeping } = await this.free(id);
    const here = id === this.openId;
    if (here) await keeping?.handOver();
    await store.remove(id);
    holding.listChanged();
    if (!here) return;
    const next = (await store.latest())?.id;
    const until = dayInWords(Date.now() + BIN_KEEPS);
    if (next !== undefined) sayInNext(next, `“${this.host.workbookName}” is in the bin until ${until}, under Runs.`);
    this.leaving = true;
    location.assign(addressOf(next));
  }

  async giveBack(id: string): Promise<void> {
    await this.kept?.store.giveBack(id);
    this.kept?.holding.listChanged();
  }

  /** Does away with what is in the bin, if the maker wants that. */
  async emptyBin(bin: readonly Run[]): Promise<boolean> {
    const names = bin.map(({ name }) => `“${name}”`).join(', ');
    if (!(await this.page.ask(`Empty the bin? ${names} cannot be given back after that.`))) return false;
    await this.kept?.store.emptyBin();
    this.kept?.holding.listChanged();
    return true;
  }

  /** Changes of the run at hand, the latest first. */
  async states(): Promise<readonly EarlierState[]> {
    const { store, open } = this.kept ?? {};
    return store && open ? store.states(open.id) : [];
  }

  /** Puts what the run held before a change into it, in one step for undo. */
  async goBack({ key }: EarlierState): Promise<void> {
    const bytes = await this.kept?.store.past(key);
    const workbook = bytes && workbookIn(await unpacked(bytes));
    if (!workbook) throw new Error('What the run held then is no longer there.');
    this.host.replaceBy(workbook);
  }

  /** What is kept of a run, for a file. */
  async content(id: string): Promise<unknown> {
    return this.kept?.store.content(id);
  }

  private async workbookOf(id: string): Promise<IWorkbookData> {
    if (id === this.openId) return wholeWorkbook(this.injector);
    const workbook = workbookIn(await this.content(id));
    if (!workbook) throw new Error('What is kept of the run cannot be opened.');
    return workbook;
  }

  /** A workbook under a name that no run has. */
  private async numbered(workbook: IWorkbookData): Promise<IWorkbookData> {
    const taken = (await this.list()).runs.map(({ name }) => name);
    const name = runName(workbook);
    const free = numbered(name, taken);
    return free === name ? workbook : named(workbook, free);
  }

  private async free(id: string): Promise<Kept> {
    const { kept } = this;
    if (!kept) throw new Error('This browser keeps no runs.');
    if (!(await kept.holding.isFree(id))) throw new Error('It is open in another tab; close it there first.');
    return kept;
  }

  /**
   * Puts a workbook in the place of the one at hand, if the maker wants that.
   * @param why it cannot be a run of its own
   */
  async inPlace(workbook: IWorkbookData, why: string, said = ''): Promise<boolean> {
    // What stands here is another tab's.
    if (this.kept && !this.kept.open) throw new Error(why);
    const [own, next] = [this.host.workbookName, runName(workbook)];
    const question = `${why} “${next}” can take the place of “${own}”; undo brings that back until the page is closed. Go on?`;
    if (!(await this.page.ask(question))) return false;
    this.host.replaceBy(workbook);
    if (said !== '') this.page.say(said);
    return true;
  }
}
