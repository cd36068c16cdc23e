import type { Injector, IWorkbookData } from '@univerjs/core';
import { whatWentWrong } from '../core/what-went-wrong';
import { wholeWorkbook } from '../host/grid/whole-workbook';
import type { Entry, KeptEntry } from './enter-page';
import { type Keeping, keepRun } from './keep-run';
import { type NoticeAction, showNotice, tellFault } from './notices';
import { nameInAddress } from './runs/address';
import { alone } from './runs/alone';
import { type Elsewhere, heldOrElsewhere } from './runs/enter-run';
import { Following } from './runs/following';
import { takeInLeft } from './runs/leaving';
import { OpenRun } from './runs/open-run';
import type { Run } from './runs/run';
import { isFull } from './runs/run-store';
import type { RunsHere } from './runs/runs-here';
import { saidBefore } from './runs/said-before';

/** What may become of the run while it is open. */
export interface RunNews {
  /** It was changed elsewhere; what is here is kept as a run of its own. */
  readonly moved: (to: Run) => void;
  /** Another tab took it. */
  readonly lost: () => void;
}

/**
 * Keeps the run of the page as it changes, tells the maker how that goes, and hands it over to another tab that asks; while
 * another tab has it, shows what is kept there.
 */
export function keepAndTell(entry: Entry, runs: RunsHere, injector: Injector, save: () => void): RunNews {
  if (!entry.kept) {
    const why = entry.notKept === undefined ? '' : ` (${whatWentWrong(entry.notKept)})`;
    showNotice(`This browser keeps nothing for the page${why}. What you change is lost when the page closes.`, [
      asFile(save),
    ]);
    return { moved: () => undefined, lost: () => undefined };
  }
  const { store, run, elsewhere } = entry.kept;
  tellOfEntry(entry, run.id);
  const atHand = new RunAtHand(entry.kept, runs, injector, save);
  if (elsewhere) atHand.lookAt(run.id, elsewhere);
  else atHand.work(run, entry.fresh);
  store.clearBin().catch(tellFault);
  return atHand;
}

/** The run of the page: at work here, or followed while another tab has it. */
class RunAtHand implements RunNews {
  private keeping: Keeping | undefined;
  private failed: (() => void) | undefined;

  constructor(
    private readonly kept: KeptEntry,
    private readonly runs: RunsHere,
    private readonly injector: Injector,
    private readonly save: () => void,
  ) {
    addEventListener('beforeunload', (event) => {
      if (this.failed && this.keeping?.due && !runs.leaving) event.preventDefault();
    });
    kept.holding.onAsked(() => this.lost());
  }

  /** @param fresh nothing of it is kept yet */
  work(run: OpenRun, fresh: boolean): void {
    const { store, holding } = this.kept;
    const keeping = keepRun(this.injector, this.runs.host, run, {
      kept: () => {
        this.failed?.();
        this.failed = undefined;
        holding.kept(run.id);
      },
      failed: (error) => {
        // It tries again and again: the notice stands once.
        this.failed ??= showNotice(
          `${notKept(error)} It is tried again; until then what you change is lost when the page closes.`,
          [asFile(this.save)],
        );
      },
    });
    if (fresh) keeping.change();
    this.keeping = keeping;
    this.runs.kept = { store, holding, open: run, keeping };
    this.visited(run.id);
  }

  /** Follows a run that another tab had when this one came. */
  lookAt(id: string, elsewhere: Elsewhere & { readonly shown: IWorkbookData }): void {
    const following = this.following(id, elsewhere.shown);
    this.follow(following, elsewhere);
    // While the page was loading, more may have been kept.
    following.bringUp().catch(tellFault);
  }

  /** Nothing can be entered from now on, and what another tab keeps of the run shows. */
  private following(id: string, shown: IWorkbookData): Following {
    const { store, holding } = this.kept;
    this.runs.kept = { store, holding };
    this.visited(id);
    return new Following(id, store, holding, this.injector, this.runs.host, shown, tellFault);
  }

  /** Says so, until this tab has the run. */
  private follow(following: Following, { take, held }: Elsewhere): void {
    const name = this.runs.host.workbookName;
    const work = () => {
      away = showNotice(`Waiting for the other tab to keep “${name}”.`, [], false);
      take();
    };
    let away = showNotice(
      `“${name}” is at work in another tab. What is kept there shows here, and nothing can be entered.`,
      [{ name: 'Work here', run: work }],
      false,
    );
    held.then(() => this.takeUp(following, () => away())).catch(tellFault);
  }

  /** This tab has the run now. */
  private async takeUp(following: Following, away: () => void): Promise<void> {
    const { store } = this.kept;
    // The tab that had it may have left more on its way out. What cannot be taken in now is so at another visit.
    await alone(() => takeInLeft(store)).catch(() => undefined);
    const known = await store.run(following.id);
    if (!known || !(await following.bringUp())) return location.reload();
    following.end();
    away();
    this.work(new OpenRun(store, known.id, known.version, (to) => this.moved(to)), false);
  }

  moved(to: Run): void {
    const { holding } = this.kept;
    holding.letGo();
    holding
      .hold(
        to.id,
        () => undefined,
        () => this.lost(),
      )
      .catch(tellFault);
    this.visited(to.id);
    holding.listChanged();
    showNotice(`“${to.name}” was changed in another tab meanwhile. What you have here is kept beside it, under Runs.`);
  }

  lost(): void {
    const { holding } = this.kept;
    const { keeping } = this;
    const id = this.runs.openId;
    if (!keeping || id === undefined) return;
    this.keeping = undefined;
    const following = this.following(id, wholeWorkbook(this.injector));
    const handOver = async () => {
      await keeping.handOver();
      holding.letGo();
      const elsewhere = await heldOrElsewhere(holding, id, () => this.lost());
      if (elsewhere) this.follow(following, elsewhere);
      else await this.takeUp(following, () => undefined);
    };
    handOver().catch(tellFault);
  }

  private visited(id: string): void {
    nameInAddress(id);
    this.kept.store.visited(id).catch(tellFault);
  }
}

const asFile = (save: () => void): NoticeAction => ({ name: 'Save as file', run: save, stays: true });

/** Why the run could not be kept. */
function notKept(error: unknown): string {
  return isFull(error)
    ? 'This browser has no room to keep the run.'
    : `This browser could not keep the run (${whatWentWrong(error)}).`;
}

function tellOfEntry({ notTaken }: Entry, run: string): void {
  const said = saidBefore(run);
  if (said !== undefined) showNotice(said);
  if (notTaken === undefined) return;
  showNotice(
    `What you changed last in another run could not be kept yet (${whatWentWrong(notTaken)}). It is tried again when the page is loaded.`,
  );
}
