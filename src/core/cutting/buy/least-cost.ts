import { area } from '../../geometry/area';
import type { Piece } from '../sheet/piece';
import { roomOn } from '../sheet/sheet';
import type { Room, Weighing } from '../sheet/weighing';
import { weighings, weighingsByArea } from '../sheet/weighings';
import type { Ground } from './ground';
import { addPurchases, type Draft } from './purchases';
import type { Solver } from './programme';
import { worthsOnSheets } from './worth-on-sheets';

/** Weighings of each kind of sheet that are held against a purchase. */
const MOST_WEIGHINGS = 12;
const NODES = 5000;

/**
 * The least that any purchase costs whose sheets, with those on hand and the offcuts, could hold the pieces by every weighing
 * tried (derived): proven, whatever layouts there are.
 */
export function leastCost(kinds: readonly Piece[], grounds: readonly Ground[], solver: Solver): number {
  const draft: Draft = { variables: [], rows: [] };
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0);
  const packs = addPurchases(draft, grounds, pieces, false);
  const byRoom = tellingWeighings(kinds, grounds).map(({ weight, hold }) => ({
    weight,
    holds: grounds.map((ground) => hold(roomOf(ground))),
  }));
  const byWorth = worthsOnSheets(kinds, grounds, solver).map((worth) => ({
    weight: kinds.reduce((sum, { count }, i) => sum + count * worth.kinds[i]!, 0),
    holds: worth.holds,
  }));
  for (const { weight, holds } of [...byRoom, ...byWorth]) {
    const onHand = grounds.reduce((sum, ground, i) => sum + (ground.onHand > 0 ? holds[i]! * ground.onHand : 0), 0);
    const lack = weight * (1 - 1e-9) - onHand;
    if (!(lack > 0)) continue;
    draft.rows.push({
      terms: packs.flatMap((list, i) =>
        list.map(({ variable, sheets }) => [variable, (holds[i]! * sheets) / lack] as const),
      ),
      least: 1,
    });
  }
  if (draft.rows.every(({ least }) => least !== 1)) return 0;
  const solution = solver(draft, NODES);
  // Unless it is proven that no cheaper purchase serves, what parts of packs would cost is.
  const proven = solution?.proven
    ? solution
    : solver({ ...draft, variables: draft.variables.map((one) => ({ ...one, whole: false })) }, 0);
  return Math.max(0, (proven?.cost ?? 0) - 1e-6);
}

/** A natural sheet counts as its area. */
function roomOf({ format }: Ground): Room {
  if (format.natural) return { length: area(format.natural.outline), width: 1 };
  const { length, width } = roomOn(format);
  return { length: Math.max(0, length), width: Math.max(0, width) };
}

/** Of each kind of sheet the weighings that ask for the most of it, the plain area among them. */
function tellingWeighings(kinds: readonly Piece[], grounds: readonly Ground[]): readonly Weighing[] {
  const byArea = grounds.some(({ format }) => format.natural);
  return grounds
    .filter(({ offcut }) => offcut === undefined)
    .flatMap((ground) => {
      const room = roomOf(ground);
      const all = byArea
        ? weighingsByArea(
            kinds.map(({ ring, count }) => ({ area: area(ring), count })),
            room.length * room.width,
          )
        : weighings(kinds, room, ground.format);
      const asks = ({ weight, hold }: Weighing) => weight / hold(room);
      const [plain, ...others] = [...all];
      return [plain!, ...others.sort((a, b) => asks(b) - asks(a)).slice(0, MOST_WEIGHINGS)];
    });
}
