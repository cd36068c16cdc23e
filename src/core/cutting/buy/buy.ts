import { greatestOf } from '../../numerics/extremes';
import { type Alike, alike } from '../sheet/alike';
import type { Placements } from '../sheet/layout';
import type { Piece } from '../sheet/piece';
import { mustBeSound, verifyLayout } from '../sheet/verify-layout';
import { type Column, columnsFor } from './columns';
import { denser } from './denser';
import { type Ground, groundsOf } from './ground';
import { type BuyAnswer, type BuyJob, type BuyShare, SAME_MONEY } from './job';
import { leastCost } from './least-cost';
import { costOfShares } from './plain';
import { addPurchases, type Draft } from './purchases';
import type { Solver } from './programme';

/** Why pairs in matching places lie as the plan lays them. */
const MATCHED = 'no cheaper one was looked for, since left and right are to match, which rows do not';

/** Branches of the choice that are looked at, and of that among equal purchases. */
const NODES = { cheapest: 400, fewest: 50 };

/**
 * What to buy of each format, and how the pieces lie on it, at least cost: layouts of single sheets, chosen together by a
 * whole-number programme over sheets, packs and what is on hand. Never dearer than the plain answer; each piece checked.
 */
export function buy(job: BuyJob, solver: Solver): BuyAnswer {
  const matched = job.formats.some(({ format }) => format.pairs !== undefined);
  const all = alike(job.pieces, matched);
  const { kinds } = all;
  const grounds = groundsOf(kinds, job.formats);
  const least = leastCost(kinds, grounds, solver);
  const plain = costOfShares(job.plain, job.formats);
  const before = { shares: job.plain, cost: plain, least: Math.min(least, plain), known: 0 };
  if (plain <= least + SAME_MONEY) return before;
  if (matched) return { ...before, why: MATCHED };
  const wanted = kinds.map(({ count }) => count);
  const generated = grounds.map((ground, i) => columnsFor(ground, i, wanted, solver, job.columns));
  const columns = [...generated.flatMap((one) => one.columns), ...plainColumns(job, kinds, grounds)];
  const known = { ...before, known: columns.length };
  const choices = [choose(columns, grounds, wanted, solver), ...generated.map(({ whole }) => whole)];
  const cheapest = (best: Found, choice: readonly Column[] | undefined): Found => {
    if (!choice || choice.length === 0) return best;
    const shares = sharesOf(choice, grounds, wanted, all);
    const cost = costOfShares(shares, job.formats);
    return cost < best.cost - SAME_MONEY ? { shares, cost } : best;
  };
  const chosen = choices.reduce<Found>(cheapest, before);
  const sought = { kinds, formats: job.formats, grounds, columns, cost: chosen.cost, least };
  const { shares, cost } =
    chosen.cost > least + SAME_MONEY ? cheapest(chosen, denser(sought, solver, job.effort)) : chosen;
  if (shares === before.shares) return known;
  mustBeSound(faultsOf(job, shares));
  return { ...known, shares, cost };
}

type Found = Pick<BuyAnswer, 'shares' | 'cost'>;

/** How often each layout is cut: at least cost, and of equal purchases from the fewest sheets. */
function choose(
  columns: readonly Column[],
  grounds: readonly Ground[],
  wanted: readonly number[],
  solver: Solver,
): readonly Column[] | undefined {
  const pieces = wanted.reduce((sum, count) => sum + count, 0);
  const most = greatestOf(wanted);
  const draft: Draft = { variables: columns.map(() => ({ cost: 0, whole: true, most })), rows: [] };
  const packs = addPurchases(draft, grounds, pieces, true);
  for (const [kind, count] of wanted.entries()) {
    if (count === 0) continue;
    const terms = columns.flatMap(({ counts }, j) => (counts[kind]! > 0 ? [[j, counts[kind]!] as const] : []));
    draft.rows.push({ terms, least: count });
  }
  for (const [i, ground] of grounds.entries()) {
    const own = columns.flatMap((column, j) => (column.ground === i ? [[j, 1] as const] : []));
    const bought = packs[i]!.map(({ variable, sheets }) => [variable, -sheets] as const);
    if (own.length > 0) draft.rows.push({ terms: [...own, ...bought], most: ground.onHand });
  }
  const cheapest = solver(draft, NODES.cheapest);
  if (!cheapest) return undefined;
  // Sheets that are bought one by one cost more the more there are.
  const paid = grounds.every(
    ({ onHand, terms }) => onHand === 0 && terms.every(({ pack, minimum }) => pack === 1 && minimum <= 1),
  );
  const solution = paid
    ? cheapest
    : (solver(fewestSheets(draft, columns.length, cheapest.values), NODES.fewest) ?? cheapest);
  return columns.flatMap((column, j) => new Array<Column>(Math.round(solution.values[j]!)).fill(column));
}

/** The same programme for the fewest sheets of what was bought. */
function fewestSheets({ variables, rows }: Draft, columns: number, values: readonly number[]): Draft {
  const bounded = variables.map((one, i) =>
    i < columns ? { ...one, cost: 1 } : { ...one, cost: 0, most: Math.round(values[i]!) },
  );
  return { variables: bounded, rows };
}

/** The sheets of the plain answer as layouts to choose from. */
function plainColumns(
  { plain, pieces }: BuyJob,
  kinds: readonly Piece[],
  grounds: readonly Ground[],
): readonly Column[] {
  const kindOf = new Map(pieces.map((piece, i) => [i, kindLike(piece, kinds)]));
  const column = (ground: number, sheet: Placements): Column => {
    const placements = sheet.map((one) => ({ ...one, piece: kindOf.get(one.piece)! }));
    const counts = kinds.map(() => 0);
    for (const { piece } of placements) counts[piece]!++;
    return { ground, counts, placements };
  };
  return plain.flatMap(({ format, layout }) => [
    ...layout.sheets.map((sheet) => column(format, sheet)),
    ...layout.offcuts.flatMap(({ code, placements }) => {
      const at = grounds.findIndex((ground) => ground.of === format && ground.offcut === code);
      return at < 0 ? [] : [column(at, placements)];
    }),
  ]);
}

function kindLike(piece: Piece, kinds: readonly Piece[]): number {
  const at = kinds.findIndex(
    (kind) =>
      kind.ring === piece.ring ||
      (kind.ring.length === piece.ring.length &&
        kind.ring.every(([x, y], i) => x === piece.ring[i]![0] && y === piece.ring[i]![1])),
  );
  if (at < 0) throw new Error(`${piece.key} is of no kind.`);
  return at;
}

/** The layouts of each format; what would be cut too often is left out, from the emptiest sheets first. */
function sharesOf(
  chosen: readonly Column[],
  grounds: readonly Ground[],
  wanted: readonly number[],
  { handedOut }: Alike,
): readonly BuyShare[] {
  const over = wanted.map((count, kind) => chosen.reduce((sum, { counts }) => sum + counts[kind]!, -count));
  const size = ({ placements }: Column) => placements.length;
  const laid = [...chosen]
    .sort((a, b) => size(a) - size(b))
    .map(({ ground, placements }) => ({
      ground: grounds[ground]!,
      placements: placements.filter(({ piece }) => !(over[piece]! > 0 && over[piece]!-- > 0)),
    }))
    .filter(({ placements }) => placements.length > 0)
    .reverse();
  // Kinds are handed out to their pieces once over all sheets.
  const { sheets } = handedOut({ offcuts: [], sheets: laid.map(({ placements }) => placements) });
  const pieces = laid.map(({ ground }, i) => ({ ground, placements: sheets[i]! }));
  return [...new Set(laid.map(({ ground }) => ground.of))]
    .sort((a, b) => a - b)
    .map((format): BuyShare => {
      const own = pieces.filter(({ ground }) => ground.of === format);
      const offcuts = own.flatMap(({ ground: { offcut }, placements }) =>
        offcut === undefined ? [] : [{ code: offcut, placements }],
      );
      const whole = own.filter(({ ground }) => ground.offcut === undefined).map(({ placements }) => placements);
      return { format, layout: { offcuts, sheets: whole } };
    });
}

/** What is wrong with the layouts: each of its own pieces, and all of them together of the run's. */
function faultsOf({ pieces, formats }: BuyJob, shares: readonly BuyShare[]) {
  const left = pieces.map(({ count }) => count);
  const faults = shares.flatMap(({ format, layout }) => {
    const counts = pieces.map(() => 0);
    for (const sheet of [...layout.sheets, ...layout.offcuts.map(({ placements }) => placements)])
      for (const { piece } of sheet) counts[piece]!++;
    for (const [i, count] of counts.entries()) left[i]! -= count;
    return verifyLayout(
      pieces.map((piece, i) => ({ ...piece, count: counts[i]! })),
      formats[format]!.format,
      layout,
    );
  });
  const wrong = left.findIndex((count) => count !== 0);
  const lacking =
    wrong < 0
      ? []
      : [
          {
            kind: 'count' as const,
            keys: [pieces[wrong]!.key] as const,
            laid: pieces[wrong]!.count - left[wrong]!,
            wanted: pieces[wrong]!.count,
          },
        ];
  return [...faults, ...lacking];
}
