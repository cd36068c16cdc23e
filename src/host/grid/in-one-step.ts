import type { IUndoRedoItem, IUndoRedoService } from '@univerjs/core';

/**
 * Does work of many commands as one step for undo, which takes them back the last first: the grid's own joining takes the
 * first back first, and columns would be removed where others stand by then.
 */
export async function inOneStep(
  service: Pick<IUndoRedoService, 'pushUndoRedo'>,
  unitID: string,
  work: () => Promise<void>,
): Promise<void> {
  const items: IUndoRedoItem[] = [];
  const push = service.pushUndoRedo;
  // The grid hands its service out behind a stand-in that keeps the methods once asked for: to set one would not reach it.
  const put = (value: typeof push) =>
    Object.defineProperty(service, 'pushUndoRedo', { value, configurable: true, writable: true });
  put((item) => {
    if (item.unitID === unitID) items.push(item);
    else push.call(service, item);
  });
  try {
    await work();
  } finally {
    put(push);
    const redoMutations = items.flatMap((item) => item.redoMutations);
    const undoMutations = items.reverse().flatMap((item) => item.undoMutations);
    // What was done before something went wrong can be undone as well.
    if (undoMutations.length > 0) push.call(service, { unitID, undoMutations, redoMutations });
  }
}
