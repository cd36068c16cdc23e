import { type BindAnswer, bind, type BindTask } from './bind';
import type { Token } from './effort';
import { type FillAnswer, fillIn, type FillTask } from './fill-in';
import { type RollAnswer, shortenRoll, type RollTask } from './shorten-roll';

/** A part of a search that does not depend on others, and what comes of it. */
export type Task = BindTask | FillTask | RollTask;
export type Answer = BindAnswer | FillAnswer | RollAnswer;

/**
 * Works a task through, here and now.
 * @param found told of the best so far
 */
export function perform(task: Task, token: Token, found: (answer: Answer) => void = () => {}): Answer {
  if (task.kind === 'bind') return bind(task);
  return task.kind === 'fill' ? fillIn(task, token, found) : shortenRoll(task, token, found);
}
