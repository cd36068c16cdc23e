import type { Batch } from '../batches';
import type { LateWithHelp } from '../bench-days/late-orders';
import type { PairageRow } from '../inputs';
import type { Check } from './check';

/** What batches lack, and what is late: a line an order. @param hours that the bench works in a day */
export function batchChecks(
  batches: readonly Batch[],
  late: readonly LateWithHelp[],
  hours: number | undefined,
): readonly Check[] {
  return [...lastChecks(batches), ...lateChecks(batches, late, hours)];
}

function lastChecks(batches: readonly Batch[]): readonly Check[] {
  const told = new Set<string>();
  const once = (key: string, check: Check): readonly Check[] => {
    if (told.has(key)) return [];
    told.add(key);
    return [check];
  };
  return batches.flatMap(({ last, size, onHand }): readonly Check[] => {
    if (onHand === undefined) return once(last, { kind: 'lastsUnknown', subject: last, verdict: 'lookAt' });
    if (onHand > 0) return [];
    return once(`${last} ${size}`, { kind: 'lasts', subject: last, verdict: 'putRight', found: 0, wanted: 1, size });
  });
}

function lateChecks(batches: readonly Batch[], late: readonly LateWithHelp[], hours: number | undefined): Check[] {
  const orders = new Map<PairageRow, Batch[]>();
  for (const batch of batches) {
    const { order, due, done } = batch;
    if (due === undefined || done === undefined || done <= due) continue;
    orders.set(order, [...(orders.get(order) ?? []), batch]);
  }
  return [...orders].map(([order, own]): Check => {
    return {
      kind: 'late',
      subject: own[0]?.style ?? order.style,
      verdict: 'putRight',
      found: Math.max(...own.map(({ done = 0 }) => done)),
      wanted: order.due ?? 0,
      row: order.row,
      customer: order.customer,
      sizes: own.map(({ size }) => size).sort((a, b) => a - b),
      helps: late.find(({ late: { row } }) => row === order)?.helps,
      hours,
      again: own.some(({ to = 1 }) => to > 1),
    };
  });
}
