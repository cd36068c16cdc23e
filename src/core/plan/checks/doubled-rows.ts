import { fold } from '../codes';
import type { PairageRow } from '../inputs';
import type { Check } from './check';

/** Rows of Pairage that say what a row above says already, to the last pair: as where a line was put in twice. */
export function doubledRows(pairage: readonly PairageRow[]): readonly Check[] {
  const first = new Map<string, number>();
  return pairage.flatMap((row): Check[] => {
    if (row.pairs.size === 0) return [];
    const pairs = [...row.pairs].sort(([one], [other]) => one - other);
    const key = JSON.stringify([fold(row.style), fold(row.customer ?? ''), row.due, row.system, row.cut, pairs]);
    const above = first.get(key);
    if (above === undefined) first.set(key, row.row);
    return above === undefined
      ? []
      : [{ kind: 'doubledRow', subject: row.style, verdict: 'lookAt', row: row.row, above }];
  });
}
