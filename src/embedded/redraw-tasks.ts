import { Layer } from '@univerjs/engine-render';

/**
 * Has the grid draw its layers anew in tasks that leave nothing behind. By itself it opens a channel for messages each time
 * that something on a layer changes, were it the cursor that blinks, and the browser keeps every one until the page closes.
 * @throws Error where the grid draws otherwise than the version that this was written for
 */
export function redrawInTasks(layers: Pick<Layer, 'makeDirty' | 'makeDirtyWithDebounce'> = Layer.prototype): void {
  if (typeof layers.makeDirtyWithDebounce !== 'function') throw new Error('The grid draws otherwise than it did.');
  const changed = new Map<Pick<Layer, 'makeDirty'>, boolean>();
  const { port1, port2 } = new MessageChannel();
  port1.onmessage = () => {
    const all = [...changed];
    changed.clear();
    for (const [layer, state] of all) layer.makeDirty(state);
  };
  layers.makeDirtyWithDebounce = function (state = true) {
    if (changed.size === 0) port2.postMessage(undefined);
    changed.set(this, state);
  };
}
