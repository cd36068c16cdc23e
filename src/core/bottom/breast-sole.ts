import { box } from '../geometry/box';
import { cut } from '../geometry/cut';
import type { Point, Ring } from '../geometry/ring';
import type { Flap } from './layer';

/** An outline from the breast forward: an outsole that leaves the heel free. */
export function fromBreast(ring: Ring, breast: number): Ring {
  return cut(ring, ({ 0: x }) => x - breast);
}

/** What a sole has behind the breast besides the breast's height, mm. */
export interface FlapRule {
  /** Flat length that the bend takes: about π t / 4 for a sole t thick (derived). */
  readonly allowance: number;
  /** The tab that is turned on to the heel's ground face. */
  readonly tabWidth: number;
  readonly tabLength: number;
}

/**
 * A sole that goes down the breast of a heel: its outline from the breast forward; behind it a flap as wide as the breast
 * and as long as that is high with what the bend takes; at its end, in the middle, the tab (derived).
 */
export function downBreast(
  ring: Ring,
  breast: number,
  height: number,
  { allowance, tabWidth, tabLength }: FlapRule,
): { readonly ring: Ring; readonly flap?: Flap } {
  const forward = fromBreast(ring, breast);
  if (height <= 0) return { ring: forward };
  const ys = forward.filter(([x]) => Math.abs(x - breast) < 1e-6).map(([, y]) => y);
  const { bottom, top } = ys.length > 1 ? { bottom: Math.min(...ys), top: Math.max(...ys) } : box(forward);
  const length = height + allowance;
  const flap: Flap = { width: top - bottom, length, tabWidth: Math.min(tabWidth, top - bottom), tabLength };
  const [end, middle, half] = [breast - length, (top + bottom) / 2, flap.tabWidth / 2];
  const tab: readonly Point[] =
    tabLength > 0 && tabWidth > 0
      ? [
          [end, middle + half],
          [end - tabLength, middle + half],
          [end - tabLength, middle - half],
          [end, middle - half],
        ]
      : [];
  const behind: readonly Point[] = [[end, top], ...tab, [end, bottom]];
  // The cut leaves the breast as one straight edge, from its outside end to its inside end.
  const i = forward.findIndex(([x, y]) => Math.abs(x - breast) < 1e-6 && y === top);
  return { ring: i < 0 ? forward : [...forward.slice(0, i + 1), ...behind, ...forward.slice(i + 1)], flap };
}
