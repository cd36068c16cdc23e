import { greatestOf, leastOf } from '../../numerics/extremes';
import type { Piece } from '../sheet/piece';
import { roomOn } from '../sheet/sheet';
import { weighings } from '../sheet/weighings';
import { cheapestCover, type Pattern } from './cover';
import type { Ground } from './ground';
import { type Choice, knapsackAtMost } from './knapsack';
import type { Solver } from './programme';

/** What each kind is worth, and the most that pieces on one sheet of each ground are worth together. */
export interface Worth {
  readonly kinds: readonly number[];
  readonly holds: readonly number[];
}

/** Prices that are found for pieces, before it is enough. */
const ROUNDS = 40;

/** Where more than this lie on a sheet, of more kinds than this, their areas tell as much. */
const MOST_ON_SHEET = 12;
const FEW_KINDS = 3;

/** Areas are sound to this share: the tolerance all round a piece is less. */
const SLACK = 1e-4;

/**
 * Worths of the pieces by which they need the most sheets, were every choice of them a layout that does not take more than the
 * area of a sheet, nor more of a kind than lie on it alone: prices of the linear programme over such choices (Gilmore and Gomory
 * 1961), for each ground by itself, and for all at their prices. Proven whatever the worths, since no choice is worth more than a
 * sheet holds (Farley, "A note on bounding a class of linear programming problems", Oper. Res. 38, 1990).
 */
export function worthsOnSheets(kinds: readonly Piece[], grounds: readonly Ground[], solver: Solver): readonly Worth[] {
  const choices = grounds.map((ground) => choicesOn(ground, kinds));
  const whole = grounds.flatMap(({ offcut }, i) => (offcut === undefined ? [i] : []));
  const costs = [
    ...whole.map((one) => grounds.map((_, i) => (i === one ? 1 : undefined))),
    ...(whole.length > 1
      ? [grounds.map(({ offcut, terms }) => (offcut === undefined ? lowest(terms) : undefined))]
      : []),
  ];
  return costs.flatMap((cost) => {
    if (kinds.length > FEW_KINDS && onSheet(kinds, grounds, cost) > MOST_ON_SHEET) return [];
    const worths = pricesFor(kinds, choices, cost, solver);
    if (!worths) return [];
    return [{ kinds: worths, holds: choices.map((list) => held(list, worths).worth * (1 + 1e-9)) }];
  });
}

/** How many pieces the largest of some sheets has room for, by their areas. */
function onSheet(kinds: readonly Piece[], grounds: readonly Ground[], costs: readonly (number | undefined)[]): number {
  const total = kinds.reduce((sum, { count }) => sum + count, 0);
  const numbers = grounds.flatMap(({ shares }, i) =>
    costs[i] === undefined ? [] : [total / kinds.reduce((sum, { count }, kind) => sum + count * shares[kind]!, 0)],
  );
  return greatestOf(numbers);
}

/** The lowest price of a sheet; undefined where none has one. */
function lowest(terms: Ground['terms']): number | undefined {
  const prices = terms.flatMap(({ price }) => (price === undefined || price <= 0 ? [] : [price]));
  return prices.length > 0 ? leastOf(prices) : undefined;
}

/** What each kind takes of a ground, and how many of it lie there at most, alone. */
function choicesOn(ground: Ground, kinds: readonly Piece[]): readonly Choice[] {
  const { format, shares, fits, inRows } = ground;
  return kinds.map((kind, i): Choice => {
    const most = inRows ? (fits[i] ? mostAlone(kind, format) : 0) : Infinity;
    return { size: shares[i]! * (1 - SLACK), value: 0, most: Math.min(kind.count, most) };
  });
}

/** No more of one piece lie on a sheet by itself, by any weighing. */
function mostAlone(piece: Piece, format: Ground['format']): number {
  const { length, width } = roomOn(format);
  const room = { length: Math.max(0, length), width: Math.max(0, width) };
  let most = Infinity;
  for (const { weight, hold } of weighings([{ ...piece, count: 1 }], room, format))
    if (weight > 0) most = Math.min(most, Math.floor(hold(room) / weight + 1e-9));
  return most;
}

function held(choices: readonly Choice[], worths: readonly number[]) {
  return knapsackAtMost(
    choices.map((one, i) => ({ ...one, value: worths[i]! })),
    1,
  );
}

/** @param costs of a sheet of each ground; none where it is not to be bought */
function pricesFor(
  kinds: readonly Piece[],
  choices: readonly (readonly Choice[])[],
  costs: readonly (number | undefined)[],
  solver: Solver,
): readonly number[] | undefined {
  const bought = costs.flatMap((cost, ground) => (cost === undefined ? [] : [{ cost, ground }]));
  const fits = kinds.map((_, kind) => bought.some(({ ground }) => choices[ground]![kind]!.most > 0));
  const wanted = kinds.map(({ count }, kind) => (fits[kind] ? count : 0));
  if (wanted.every((count) => count === 0)) return undefined;
  const patterns: Pattern[] = wanted.flatMap((count, kind) =>
    bought
      .filter(({ ground }) => count > 0 && choices[ground]![kind]!.most > 0)
      .map(({ cost }) => ({ cost, counts: kinds.map((_, i) => (i === kind ? 1 : 0)) })),
  );
  let worths: readonly number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    const cover = cheapestCover(patterns, wanted, solver);
    if (!cover) return undefined;
    worths = cover.prices;
    const better = bought.flatMap(({ cost, ground }) => {
      const { counts, worth } = held(choices[ground]!, worths);
      return worth > cost * (1 + 1e-7) ? [{ cost, counts }] : [];
    });
    if (better.length === 0) break;
    patterns.push(...better);
  }
  return worths;
}
