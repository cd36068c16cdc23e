import type { Cell } from '../tables/cell';
import type { WorkingOf } from './arguments';
import { bench } from './bench';
import { bends } from './bends';
import { heights } from './heights';
import { lasts } from './lasts';
import { outlines } from './outlines';
import { plan } from './plan';
import { sheets } from './sheets';
import { sizes } from './sizes';
import { skives } from './skives';
import type { At, Working } from './working';

const all: Readonly<Record<string, WorkingOf>> = {
  ...bench,
  ...bends,
  ...heights,
  ...lasts,
  ...outlines,
  ...plan,
  ...sheets,
  ...sizes,
  ...skives,
};

/** The functions whose workings are known, by name. */
export const worked: readonly string[] = Object.keys(all);

/**
 * How a function's answer was worked out.
 * @param name without its namespace
 * @param args as a host hands them over; what is left out is null
 * @param at which cell of a table that answers
 * @returns undefined for an unknown function, and for headings and labels of a table
 * @throws Problem as the function does
 */
export function working(name: string, args: readonly Cell[], at: At = { row: 0, column: 0 }): Working | undefined {
  return all[name]?.(args, at);
}
