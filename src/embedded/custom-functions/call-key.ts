import { Fingerprint } from '../../core/fingerprint';

/** What stands for ranges: many functions are handed the same rows, which nobody changes. */
const known = new WeakMap<readonly unknown[], string>();

/**
 * Tells calls apart: the function and all that it is called with. Few letters, however large the tables are, since calls
 * are remembered with their results.
 * @param addresses where the arguments stand, for a function whose answer depends on it
 */
export function callKey(
  id: string,
  args: readonly unknown[],
  addresses: readonly (string | undefined)[] | undefined,
): string {
  return `${id}(${args.map(contentOf).join()})${addresses ? JSON.stringify(addresses) : ''}`;
}

function contentOf(argument: unknown): string {
  if (!Array.isArray(argument)) return JSON.stringify(argument);
  const rows: readonly unknown[] = argument;
  let content = known.get(rows);
  if (content === undefined) known.set(rows, (content = new Fingerprint().text(JSON.stringify(rows)).toString()));
  return content;
}
