import { itemAt } from '../item-at';
import { bytesOfRecords } from '../bytes';
import { Memo } from '../memo';
import { Memory } from '../memory';
import { shared } from '../shared';
import { comesBefore, ruled } from './rules';
import type { Face, Joint, Operation } from './step';

/** Sizes of a style are put together alike, so that one order serves them all. */
export interface Order {
  /** Operations, by their places in the list that was given, in the order of the bench. */
  readonly places: readonly number[];
  /** For each of them, what a rule bids come before it, by their places in this order. */
  readonly before: readonly Uint16Array[];
}
const orders = new Memo<Order>(
  shared('orders of the bench', () => new Memory(4e6)),
  'order of the bench',
  ({ places, before }) =>
    bytesOfRecords(places.length) + before.reduce((sum, { byteLength }) => sum + byteLength, 8 * places.length),
);

/**
 * Operations in an order that keeps all rules; of those that may come next, the one that stands first in the list.
 * @throws Error where rules contradict one another: a construction that cannot be put together.
 */
export function inOrder(operations: readonly Operation[]): readonly Operation[] {
  return orderOf(operations).places.map((i) => itemAt(operations, i));
}

/** That order by places in the list, with what of it must wait for what. @throws Error as inOrder */
export function orderOf(operations: readonly Operation[]): Order {
  return orders.get(told(operations), () => sorted(operations));
}

function sorted(operations: readonly Operation[]): Order {
  const all = operations.map(ruled);
  const after = all.map((first) => comesBefore(first, all));
  const waits = new Array<number>(all.length).fill(0);
  for (const list of after) for (const i of list) waits[i] = itemAt(waits, i) + 1;
  const places: number[] = [];
  const done = new Set<number>();
  while (places.length < all.length) {
    const next = waits.findIndex((n, i) => n === 0 && !done.has(i));
    if (next < 0) {
      const left = operations.filter((_, i) => !done.has(i)).map(({ acts }) => acts.join(' and '));
      throw new Error(`No order of the bench keeps all rules: ${left.join('; ')}.`);
    }
    done.add(next);
    places.push(next);
    for (const i of itemAt(after, next)) waits[i] = itemAt(waits, i) - 1;
  }
  const before = places.map((): number[] => []);
  const position = new Map(places.map((place, i) => [place, i]));
  places.forEach((place, i) => {
    for (const later of itemAt(after, place)) before[position.get(later) as number]?.push(i);
  });
  return { places, before: before.map((list) => Uint16Array.from(list)) };
}

/** All that the rules look at, in one string. */
function told(operations: readonly Operation[]): string {
  const joints: Joint[] = [];
  let all = '';
  for (const one of operations) {
    all += `${one.kind}|${one.acts.join()}|${piecesTold(one.pieces)}|${facesTold(one.faces)}|`;
    if (one.joint) {
      const known = joints.indexOf(one.joint);
      all += known < 0 ? jointTold(one.joint) : known;
      if (known < 0) joints.push(one.joint);
    }
    all += `|${one.apart}|${one.whole}|${one.coated !== undefined}|`;
    all += one.onHeel ? `${piecesTold(one.onHeel)}\n` : '\n';
  }
  return all;
}

function jointTold({ above, below, adds, brings, apart }: Joint): string {
  return `${facesTold(above)};${facesTold(below)};${piecesTold(adds)};${piecesTold(brings)};${apart}`;
}

function facesTold(faces: readonly Face[]): string {
  let all = '';
  for (const { piece, side, zone = '', within } of faces) {
    all += `${piece ? piece.item : 0}${side}${zone}${within ? '-,' : ','}`;
  }
  return all;
}

function piecesTold(pieces: Operation['pieces']): string {
  let all = '';
  for (const { item, part } of pieces) all += `${part}${item},`;
  return all;
}
