import type { IWorkbookData } from '@univerjs/core';
import { asEntered } from '../host/grid/as-entered';

/** So many workbooks that others took the place of are kept; the oldest go first. */
const MOST = 5;

/** Workbooks that others took the place of with one more, the latest first; of those with the same content the latest. */
export function withReplaced(kept: readonly IWorkbookData[], latest: IWorkbookData): readonly IWorkbookData[] {
  const own = asEntered(latest);
  return [latest, ...kept.filter((one) => asEntered(one) !== own)].slice(0, MOST);
}

/**
 * Which one to bring back: the latest whose content is not what stands there now. It stays the last of all, so that
 * one after the other comes up when it is asked again, and none is lost.
 * @param own whether what stands there now is the maker's own and to be kept
 */
export function broughtBack(
  kept: readonly IWorkbookData[],
  now: IWorkbookData,
  own: boolean,
): { readonly back: IWorkbookData; readonly kept: readonly IWorkbookData[] } | undefined {
  const current = asEntered(now);
  const others = kept.filter((one) => asEntered(one) !== current);
  const [back, ...rest] = others;
  if (!back) return undefined;
  const last = own ? [now, back] : [back];
  return { back, kept: [...rest.slice(0, MOST - last.length), ...last] };
}
