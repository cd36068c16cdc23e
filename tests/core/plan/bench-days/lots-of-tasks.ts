import type { Lot } from '../../../../src/core/plan/bench-days/lots';
import type { Task } from '../../../../src/core/plan/bench-days/tasks';
import { lastOf } from '../../samples';

/** A task by what it differs in from one that waits for nothing. */
export type Given = Partial<Omit<Task, 'after'>>;

export function tasksOfGiven(given: readonly Given[]): readonly Task[] {
  const before = given.map((one) => one.before ?? []);
  return given.map((one, i) => ({
    number: i + 1,
    kind: 'prepare',
    cuts: false,
    minutes: 0,
    wait: 0,
    waitsFor: 'adhesive',
    pressed: 0,
    onLast: false,
    pulls: false,
    sitting: [],
    ...one,
    before: before[i]!,
    after: before.flatMap((list, later) => (list.includes(i) ? [later] : [])),
  }));
}

export interface GivenLot {
  readonly tasks: readonly Given[];
  readonly due?: number;
  readonly pairs?: number;
  readonly onHand?: number;
  readonly last?: string;
  readonly daysOnLast?: number;
}

/** Lots as they stand in the list; of their runs a schedule asks nothing. */
export function lotsOfGiven(all: readonly GivenLot[]): readonly Lot[] {
  return all.map(({ tasks, due, pairs = 1, onHand = 100, last = 'Round', daysOnLast = 0 }, i) => ({
    row: { row: i + 1, style: 'Betony', due, pairs: new Map() },
    run: undefined as never,
    sizeRun: undefined as never,
    last: { ...lastOf({ Last: last }), daysOnLast },
    size: 38,
    onHand,
    batch: 1,
    pairs,
    tasks: tasksOfGiven(tasks),
  }));
}
