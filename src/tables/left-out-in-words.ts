import type { LeftOut } from '../core/plan/left-out';
import type { PlaceWords } from '../core/problem';

/**
 * Stands beside the name of what is left out, where it is read at once: blank neighbours give it room. The last column
 * has the reason too, for where a neighbour cuts it off.
 */
export function whyInWords({ why }: LeftOut, where: PlaceWords): string {
  return `left out: ${why.inWords(where)}`;
}

export function nameInWords({ name, at }: LeftOut, where: PlaceWords): string {
  return at ? where(at) : name;
}

/** Heads a sum; one that is not whole says so. */
export function allInWords(_lines: readonly unknown[], whole: boolean): string {
  return whole ? 'All' : 'All, not whole';
}
