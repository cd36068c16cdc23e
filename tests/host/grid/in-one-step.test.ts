import { describe, expect, it } from 'vitest';
import { inOneStep } from '../../../src/host/grid/in-one-step';

type Pushed = Parameters<Parameters<typeof inOneStep>[0]['pushUndoRedo']>[0];

const item = (unitID: string, name: string): Pushed => ({
  unitID,
  undoMutations: [
    { id: `un${name} 1`, params: {} },
    { id: `un${name} 2`, params: {} },
  ],
  redoMutations: [
    { id: `${name} 1`, params: {} },
    { id: `${name} 2`, params: {} },
  ],
});

function service() {
  const pushed: Pushed[] = [];
  return { pushed, pushUndoRedo: (one: Pushed) => void pushed.push(one) };
}

const ids = (mutations: readonly { readonly id: string }[] = []) => mutations.map(({ id }) => id);

describe('what is done in one step', () => {
  it('is taken back the last first, each part in its own order, and done again as it was', async () => {
    const { pushed, ...undo } = service();
    await inOneStep(undo, 'book', async () => {
      undo.pushUndoRedo(item('book', 'do'));
      await Promise.resolve();
      undo.pushUndoRedo(item('editor', 'type'));
      undo.pushUndoRedo(item('book', 'write'));
    });
    // What another document does meanwhile is a step of its own.
    expect(pushed.map(({ unitID }) => unitID)).toEqual(['editor', 'book']);
    expect(ids(pushed[1]?.undoMutations)).toEqual(['unwrite 1', 'unwrite 2', 'undo 1', 'undo 2']);
    expect(ids(pushed[1]?.redoMutations)).toEqual(['do 1', 'do 2', 'write 1', 'write 2']);
    undo.pushUndoRedo(item('book', 'later'));
    expect(pushed).toHaveLength(3);
  });

  it('can be taken back as far as it went where it fails, and is no step where nothing was done', async () => {
    const { pushed, ...undo } = service();
    const failing = inOneStep(undo, 'book', async () => {
      undo.pushUndoRedo(item('book', 'do'));
      throw new Error('no room');
    });
    await expect(failing).rejects.toThrow('no room');
    expect(pushed).toHaveLength(1);
    await inOneStep(undo, 'book', async () => undefined);
    expect(pushed).toHaveLength(1);
  });

  it('is joined also behind a stand-in that keeps the methods once asked for, as the grid’s injector hands out', async () => {
    const { pushed, ...own } = service();
    const kept: Record<PropertyKey, unknown> = Object.create(null);
    const undo = new Proxy(kept, {
      get: (target, key) => (key in target ? target[key] : (target[key] = own[key as keyof typeof own])),
      set: (_, key, value) => Reflect.set(own, key, value),
    }) as typeof own;
    undo.pushUndoRedo(item('book', 'before'));
    await inOneStep(undo, 'book', async () => {
      undo.pushUndoRedo(item('book', 'do'));
      undo.pushUndoRedo(item('book', 'write'));
    });
    undo.pushUndoRedo(item('book', 'after'));
    expect(pushed.map(({ redoMutations }) => redoMutations.length)).toEqual([2, 4, 2]);
  });
});
