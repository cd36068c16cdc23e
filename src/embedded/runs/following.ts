import { type Injector, IPermissionService, type IWorkbookData } from '@univerjs/core';
import { WorkbookEditablePermission } from '@univerjs/sheets';
import { bringUp } from '../../host/grid/bring-up';
import type { GridHost } from '../../host/grid/grid-host';
import { wholeWorkbook } from '../../host/grid/whole-workbook';
import type { Holding } from './holding';
import type { RunStore } from './run-store';
import { workbookIn } from './workbook-in';

/** Shows a run that is at work in another tab, as that tab keeps it. Nothing can be entered meanwhile. */
export class Following {
  private readonly unlisten: () => void;
  private queue: Promise<unknown> = Promise.resolve();

  /**
   * @param shown what the grid shows, as it is kept
   * @param failed is told where what is kept could not be shown
   */
  constructor(
    readonly id: string,
    private readonly store: RunStore,
    holding: Holding,
    private readonly injector: Injector,
    private readonly host: GridHost,
    private shown: IWorkbookData,
    failed: (error: unknown) => void,
  ) {
    this.letEnter(false);
    this.unlisten = holding.onKept(id, () => {
      this.bringUp().catch(failed);
    });
  }

  /** Shows what is kept now. @returns whether it can be shown */
  bringUp(): Promise<boolean> {
    const work = this.queue.then(async () => {
      const run = await this.store.run(this.id);
      const now = run && run.removed === undefined ? workbookIn(await this.store.content(this.id)) : undefined;
      if (!now) return false;
      bringUp(this.injector, this.host, this.shown, now);
      this.shown = now;
      return true;
    });
    this.queue = work.catch(() => undefined);
    return work;
  }

  /** The run is at work here from now on. */
  end(): void {
    this.unlisten();
    this.letEnter(true);
  }

  private letEnter(may: boolean): void {
    const { id } = new WorkbookEditablePermission(wholeWorkbook(this.injector).id);
    this.injector.get(IPermissionService).updatePermissionPoint(id, may);
    document.getElementById('pane')?.toggleAttribute('inert', !may);
  }
}
