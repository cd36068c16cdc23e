import type { Cell } from '../tables/cell';
import { INPUT_TABLES } from '../tables/input-tables';

type Implementation = (...args: never[]) => unknown;

/** Set by the build: ids of the functions whose last parameter is the invocation, as their docstrings say. */
declare const SOLEBENCH_INVOKED: readonly string[];

/** Functions that take all input tables one after the other, and then whatever comes, name none of them. */
const TABLES = Object.keys(INPUT_TABLES).length;

/**
 * Gives a function to the host. The build puts this in the place of the host's own `associate`.
 * @param invoked ids of the functions whose last parameter is the invocation
 */
export function associate(id: string, implementation: Implementation, invoked = SOLEBENCH_INVOKED): void {
  // By its name in text, lest the build put this very function there; and the suite's global is no property of the page's.
  const own = Reflect.get(CustomFunctions, 'associate') as typeof associate;
  Reflect.apply(own, CustomFunctions, [id, withoutStrays(implementation, invoked.includes(id))]);
}

/**
 * A function that is not given the invocation for one of its arguments: a host may keep the list of parameters a day longer
 * than the functions (office-js 2777, 4722), and then the invocation, which comes after the arguments that the host knows
 * of, would be taken for the newest. What is left out so is null, and the invocation comes behind all parameters.
 */
function withoutStrays(implementation: Implementation, invoked: boolean): (...given: unknown[]) => unknown {
  const parameters = implementation.length === 0 ? TABLES : implementation.length - Number(invoked);
  const called = (...given: unknown[]) => {
    const { args, invocation } = parted(given);
    const passed = Array.from({ length: parameters }, (_, at) => args[at] ?? null);
    return implementation(...([...passed, invocation ?? {}] as never[]));
  };
  // Hosts may look at how many arguments a function takes.
  Object.defineProperty(called, 'length', { value: parameters + Number(invoked) });
  return called;
}

/** Arguments without what no cell can hold at their end, and the last of that. */
function parted(given: readonly unknown[]): { readonly args: readonly unknown[]; readonly invocation: unknown } {
  const last = given.findLastIndex((one) => !isNoCell(one) && one !== undefined);
  return { args: given.slice(0, last + 1), invocation: given.slice(last + 1).find(isNoCell) };
}

/** Whether a value is an object that stands for no cell and no range. */
function isNoCell(value: Cell): boolean {
  return (
    typeof value === 'object' &&
    value !== null &&
    !Array.isArray(value) &&
    !('type' in value) &&
    !('basicValue' in value)
  );
}
