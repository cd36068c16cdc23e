import type { Batch } from '../batches';
import type { Check } from './check';

export function batchChecks(batches: readonly Batch[]): readonly Check[] {
  const told = new Set<string>();
  const once = (key: string, check: Check): readonly Check[] => {
    if (told.has(key)) return [];
    told.add(key);
    return [check];
  };
  return batches.flatMap(({ last, size, onHand, due, done, style, customer }): readonly Check[] => {
    if (onHand === undefined) return once(last, { kind: 'lastsUnknown', subject: last, verdict: 'lookAt' });
    if (onHand === 0) {
      return once(`${last} ${size}`, { kind: 'lasts', subject: last, verdict: 'putRight', found: 0, wanted: 1, size });
    }
    if (due === undefined || done === undefined || done <= due) return [];
    return [{ kind: 'late', subject: style, verdict: 'putRight', found: done, wanted: due, customer, size }];
  });
}
