import type { LeftOut } from '../core/plan/left-out';
import type { PlaceWords } from '../core/problem';

/**
 * Stands beside the name of what is left out, and names the column that says why: the last, where no neighbour cuts the
 * sentence off.
 */
export function leftOutBeside(column: string): () => string {
  return () => `left out, see ${column}`;
}

/** Why something is left out, and where. */
export function whyInWords({ why }: LeftOut, where: PlaceWords): string {
  return why.inWords(where);
}

export function nameInWords({ name, at }: LeftOut, where: PlaceWords): string {
  return at ? where(at) : name;
}

/** Heads a sum; one that is not whole says so. */
export function allInWords(_lines: readonly unknown[], whole: boolean): string {
  return whole ? 'All' : 'All, not whole';
}
