import { describe, expect, it } from 'vitest';
import { type FillAnswer, fillIn, type FillTask } from '../../../../src/core/cutting/search/fill-in';
import { turnsFor } from '../../../../src/core/cutting/search/sheets';
import { complaints } from '../oracle';
import { rectangle } from '../outlines';

const FORMAT = { length: 100, width: 100, knifeRoom: 0, edgeTrim: 0 };
const never = { stopped: false };

function square(side: number) {
  return { key: `square ${side}`, ring: rectangle(side, side), count: 1, way: { kind: 'oneWay' } as const };
}

/** Squares on a sheet at places, and more squares to lay in. */
function taskOf(laid: readonly { side: number; x: number; y: number }[], more: readonly number[]): FillTask {
  const pieces = [...laid.map(({ side }) => square(side)), ...more.map(square)];
  const placements = laid.map(({ x, y }, piece) => ({ piece, x, y, turn: 0 }));
  return {
    kind: 'fill',
    pieces,
    turns: turnsFor(pieces, { offcuts: [], sheets: [placements] }),
    sheets: [{ format: FORMAT, placements }],
    more: more.map((_, i) => laid.length + i),
    evaluations: 2e5,
    seed: 1,
  };
}

function check(task: FillTask, { sheets, left }: FillAnswer) {
  const pieces = task.pieces.map((piece, kind) => ({ ...piece, count: left.includes(kind) ? 0 : 1 }));
  expect(complaints(pieces, FORMAT, sheets)).toEqual([]);
}

describe('fillIn', () => {
  it('moves what lies in the way so that all find room', () => {
    // Derived: 48 mm squares fit two by two into 100 mm, though three lie so that the fourth finds no hole.
    const task = taskOf(
      [26, 50, 50].map((x, i) => ({ side: 48, x: i ? (i - 1) * 50 : x, y: i ? 0 : 50 })),
      [48],
    );
    const filled = fillIn(task, never);
    expect(filled.left).toEqual([]);
    check(task, filled);
  });

  it('leaves out the least area where not all can lie', () => {
    // Derived: squares of 60 and 90 mm do not both fit into 100 mm.
    const task = taskOf([{ side: 60, x: 20, y: 20 }], [90]);
    const filled = fillIn(task, never);
    expect(filled.left.map((kind) => task.pieces[kind]!.key)).toEqual(['square 60']);
    check(task, filled);
  });

  it('leaves the sheet as it is where nothing can be gained, and tells how far it has come', () => {
    const task = { ...taskOf([{ side: 90, x: 5, y: 5 }], [60]), evaluations: 2e6 };
    const spent: number[] = [];
    const filled = fillIn(task, never, (some) => spent.push(some.spent));
    expect(filled.left).toEqual(task.more);
    expect(filled.steps).toBe(0);
    expect(spent.length).toBeGreaterThan(1);
    check(task, filled);
  });

  it('gives the same for the same seed, and ends when it is told to', () => {
    const task = taskOf([{ side: 60, x: 20, y: 20 }], [38, 38, 38, 38]);
    expect(fillIn(task, never)).toEqual(fillIn(task, never));
    expect(fillIn({ ...task, evaluations: 1e9 }, { stopped: true }).spent).toBeLessThan(1e4);
  });
});
