import type { Stepwise } from '../core/stepwise';
import type { PlaceWords } from '../core/problem';
import type { Cells } from '../tables/cell';
import { answer } from './answer';
import { addressesIn, argumentCells } from './argument-cells';
import { inTaskOfItsOwn } from './task';

/** How long a task of the suite's page may be kept from what else waits there, ms. */
const SLICE = 40;

/** What a host may say of itself: for how long it would rather wait than be told that an answer comes later, ms. */
interface Patient {
  readonly patience?: number;
}

/** Work whose answer is waited for: does a step of it and tells whether it has ended. */
type Waiting = () => boolean;

const waiting: Waiting[] = [];
/** When the task began in which functions are called now. */
let begun: number | undefined;

const MORE = Symbol('more to do');

/**
 * Answers as `answer` does, naming the sheets' own cells where the host tells where the tables stand: at once where that is quick, else with a promise, working between whatever else the page has
 * to do. Who waits for the same plan works on the same plan. What is no longer wanted is not worked on.
 * @param tables in the order of INPUT_TABLES, then what the host hands over behind all arguments
 * @param ofTables addresses of the tables, of those of all arguments
 */
export function answerStepwise<T>(
  tables: readonly unknown[],
  work: (where: PlaceWords) => Stepwise<T>,
  ofTables: (addresses: readonly unknown[]) => readonly unknown[] = (all) => all,
): T | Promise<T> {
  const invocation = invocationIn(tables.at(-1));
  const told = addressesIn(tables.at(-1));
  const where = argumentCells(tables as readonly (Cells | null | undefined)[], told && ofTables(told));
  const going = work(where);
  const step = (): T | typeof MORE =>
    answer(() => {
      const { done, value } = going.next();
      return done ? value : MORE;
    }, where);
  for (const end = endOfTask(); Date.now() < end;) {
    const made = step();
    if (made !== MORE) return made;
  }
  return later(step, invocation);
}

/** What a host hands over behind all arguments, if it does. */
function invocationIn(last: unknown): CustomFunctions.CancelableInvocation | undefined {
  const is = typeof last === 'object' && last !== null && !Array.isArray(last);
  return is ? (last as CustomFunctions.CancelableInvocation) : undefined;
}

/** Until when functions may work before they promise to answer later. */
function endOfTask(): number {
  // Without a host nobody is kept from anything.
  if (!inTaskOfItsOwn || typeof CustomFunctions === 'undefined') return Infinity;
  const { patience } = CustomFunctions as Patient;
  if (patience !== undefined) return Date.now() + patience;
  if (begun === undefined) {
    begun = Date.now();
    inTaskOfItsOwn(() => (begun = undefined));
  }
  return waiting.length > 0 ? -Infinity : begun + SLICE;
}

function later<T>(step: () => T | typeof MORE, invocation?: CustomFunctions.CancelableInvocation): Promise<T> {
  let wanted = true;
  if (invocation) invocation.onCanceled = () => (wanted = false);
  return new Promise((resolve, reject) => {
    waiting.push(() => {
      if (!wanted) return true;
      try {
        const made = step();
        if (made === MORE) return false;
        resolve(made as T);
      } catch (error) {
        reject(error as Error);
      }
      return true;
    });
    if (waiting.length === 1) inTaskOfItsOwn?.(workOn);
  });
}

/** Works on what has waited longest. */
function workOn(): void {
  for (const end = Date.now() + SLICE; waiting.length > 0 && Date.now() < end;) {
    if (waiting[0]!()) waiting.shift();
  }
  if (waiting.length > 0) inTaskOfItsOwn?.(workOn);
}
