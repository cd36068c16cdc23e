import type { Injector, IWorkbookData } from '@univerjs/core';
import { whatWentWrong } from '../core/what-went-wrong';
import { asEntered, runName } from '../host/grid/as-entered';
import type { GridHost } from '../host/grid/grid-host';
import { snapshotOf } from '../host/grid/snapshot';
import { wholeWorkbook } from '../host/grid/whole-workbook';
import type { WorkbookPlan } from '../workbook/workbook';
import { broughtBack, withReplaced } from './replaced-workbooks';
import type { SavedWorkbook } from './saved-workbook';

/** What replacing a workbook needs of the page. */
export interface ReplacingPage {
  /** Puts a yes-or-no question to the maker. */
  readonly ask: (question: string) => Promise<boolean>;
  /** Offers to bring a workbook back by its name; undefined takes the offer away. */
  readonly offer: (name: string | undefined) => void;
  readonly say: (sentence: string) => void;
}

/** Sees to it that no run is lost when another workbook takes its place: asks, keeps it, and brings it back. */
export class Replacing {
  /** What a workbook holds that nobody has entered anything into. */
  private readonly untouched: ReadonlySet<string>;

  constructor(
    private readonly injector: Injector,
    private readonly saved: SavedWorkbook,
    plans: readonly WorkbookPlan[],
    private readonly page: ReplacingPage,
  ) {
    this.untouched = new Set(plans.map((plan) => asEntered(snapshotOf(plan, 'workbook'))));
  }

  /** Whether another workbook may take the workbook's place; what the maker has entered is kept before. */
  async may({ name: next }: { readonly name: string }): Promise<boolean> {
    const now = wholeWorkbook(this.injector);
    if (!this.isOwn(now)) return true;
    const own = runName(now);
    const keeps = `“${own}” holds what you have entered. “${next}” takes its place; the page keeps “${own}” and can bring it back. Go on?`;
    if (!(await this.page.ask(keeps))) return false;
    try {
      await this.saved.keepReplaced(withReplaced(await this.saved.replaced(), now));
    } catch (error) {
      const lost = `This browser could not keep “${own}” (${whatWentWrong(error)}). Undo brings it back until the page is closed, and nothing does after that. Go on?`;
      return this.page.ask(lost);
    }
    this.page.offer(own);
    return true;
  }

  /** Offers what can be brought back, if anything can. */
  async offerAgain(): Promise<void> {
    const back = broughtBack(await this.saved.replaced(), wholeWorkbook(this.injector), true)?.back;
    this.page.offer(back && runName(back));
  }

  /** Puts the latest workbook that another took the place of back into it. */
  async bringBack(host: GridHost): Promise<void> {
    const now = wholeWorkbook(this.injector);
    const found = broughtBack(await this.saved.replaced(), now, this.isOwn(now));
    if (!found) return this.offerAgain();
    // First kept, then replaced: a page that ends in between has lost nothing.
    await this.saved.keepReplaced(found.kept);
    host.replaceBy(found.back);
    this.page.say(`“${runName(found.back)}” is back in the workbook. Undo takes it out again.`);
    await this.offerAgain();
  }

  private isOwn(workbook: IWorkbookData): boolean {
    return !this.untouched.has(asEntered(workbook));
  }
}
