import { itemAt } from '../item-at';
import { Problem } from '../problem';

/** A thickness on offer. */
export interface Offer {
  /** As measured, mm. */
  readonly thickness: number;
  /** The most layers that there are of it; without it, as many as needed. */
  readonly onHand?: number | undefined;
  /** Cost of a layer, compared when all else is equal. */
  readonly cost?: number | undefined;
}

export interface LayerMix {
  /** Layers of each offer, in the order given. */
  readonly counts: readonly number[];
  /** Sum of all layers, mm. */
  readonly built: number;
  /** What is rasped off to the height, mm. */
  readonly rasped: number;
}

/** The layers of a mix one by one, the stoutest first. @param offers that it was made of, in their order */
export function coursesOfMix<T extends { readonly thickness: number }>(
  { counts }: LayerMix,
  offers: readonly T[],
): T[] {
  return offers
    .flatMap((offer, i) => new Array<T>(itemAt(counts, i)).fill(offer))
    .sort((a, b) => b.thickness - a.thickness);
}

/** Heights are added up in whole hundredths of a millimetre, finer than a sheet can be measured. */
const STEPS_PER_MM = 100;

/** The most that may be rasped off a built height where nothing else is said, mm (common practice). */
export const DEFAULT_RASPING = 1;

/**
 * The mix of thicknesses that reaches a height: among all mixes whose surplus lies within the rasping allowance the one
 * with the fewest layers, then least rasping, then least cost. Exact, by dynamic programming over the heights.
 * @param height mm, above 0
 * @param rasping the most that may be rasped off, mm
 * @param where that is given, as a maker finds it
 * @param beyond what may be said where none does
 * @throws Problem where no mix comes out within the allowance; it names the nearest that does, or by how much they miss.
 */
export function layerMix(
  height: number,
  offers: readonly Offer[],
  rasping = DEFAULT_RASPING,
  where = 'Most rasping',
  beyond: Beyond = {},
): LayerMix {
  const target = Math.ceil(height * STEPS_PER_MM - 1e-6);
  const limit = Math.floor((height + rasping) * STEPS_PER_MM + 1e-6);
  const found = best(target, limit, offers);
  if (found) return found;
  throw noMix(height, offers, rasping, where, beyond);
}

/** What may be said of layers that come out at no height within the allowance. */
export interface Beyond {
  /** Whether a saw takes the surplus off. */
  readonly sawn?: boolean;
  /** What else helps but other thicknesses. @param short mm that the highest mix below wants; undefined without one */
  readonly ways?: (short: number | undefined) => readonly string[];
}

/** A rasp takes off no more than that, mm (common practice). */
export const RASPED = 5;
/** A saw takes off no more than that share of a sheet (common practice). */
const SAWN_SHARE = 1 / 2;

function noMix(height: number, offers: readonly Offer[], rasping: number, where: string, beyond: Beyond): Problem {
  const problem = (reason: string, argument = 'thicknesses') => new Problem('unavailable', { argument }, reason);
  const given = offers.map(({ thickness }) => `${thickness}`).join(', ');
  const target = Math.ceil(height * STEPS_PER_MM - 1e-6);
  const wider = best(target, target + Math.max(...offers.map(stepsOf)), offers, 'least rasping');
  const start = `no layers of ${given} mm reach ${mm(height)} mm with at most ${rasping} mm to rasp`;
  if (!wider) return problem(`${start}; there are not enough on hand`);
  const thinnest = Math.min(...offers.map(({ thickness }) => thickness));
  if (wider.rasped <= Math.max(RASPED, beyond.sawn ? SAWN_SHARE * thinnest : 0) + 1e-9) {
    const allow = (Math.ceil(wider.rasped * 10 - 1e-6) / 10).toFixed(1);
    return problem(`${start}; allow ${allow} mm (${where}) or add a thickness`, 'most_rasping');
  }
  const below = best(0, target, offers, 'highest');
  const short = below && below.built > 0 ? height - below.built : undefined;
  const said = [
    ...(below && short !== undefined ? [`${mm(short)} mm too low with ${mixed(below, offers)}`] : []),
    `${mm(wider.rasped)} mm too high with ${mixed(wider, offers)}`,
  ];
  const add = short === undefined ? 'take a thinner sheet' : 'add a thickness';
  return problem(`${start}: ${said.join(', ')}; ${[add, ...(beyond.ways?.(short) ?? [])].join(', or ')}`);
}

/** "2 of 28" and "1 of 6 and 2 of 4". */
function mixed({ counts }: LayerMix, offers: readonly Offer[]): string {
  return offers.flatMap(({ thickness }, i) => (counts[i] ? [`${counts[i]} of ${thickness}`] : [])).join(' and ');
}

function mm(height: number): number {
  return Number(height.toFixed(2));
}

function stepsOf({ thickness }: Offer): number {
  return Math.round(thickness * STEPS_PER_MM);
}

/** The greatest height of which all thicknesses are multiples, in steps: only its multiples can be built. */
function commonOf(offers: readonly Offer[]): number {
  const greatest = (a: number, b: number): number => (b === 0 ? a : greatest(b, a % b));
  return offers.map(stepsOf).reduce(greatest, 0) || 1;
}

/** Heights in multiples of what all thicknesses have in common. */
interface Table {
  /** Least layers (and their cost) that build a height exactly, after each offer in turn; Infinity where none do. */
  readonly layers: readonly Float64Array[];
  readonly costs: readonly Float64Array[];
  /** How many of the offer that takes. */
  readonly taken: readonly Uint16Array[];
}

function tabulate(limit: number, common: number, offers: readonly Offer[]): Table {
  let layers = new Float64Array(limit + 1).fill(Infinity);
  let costs = new Float64Array(limit + 1);
  layers[0] = 0;
  const all: { layers: Float64Array[]; costs: Float64Array[]; taken: Uint16Array[] } = {
    layers: [],
    costs: [],
    taken: [],
  };
  for (const offer of offers) {
    const { onHand = Infinity, cost = 0 } = offer;
    const step = stepsOf(offer) / common;
    const [nextLayers, nextCosts, taken] = [layers.slice(), costs.slice(), new Uint16Array(limit + 1)];
    for (let h = 0; h <= limit; h++) {
      for (let n = 1; n <= onHand && n * step <= h; n++) {
        const from = h - n * step;
        const count = layers[from]! + n;
        if (count > nextLayers[h]! || count === Infinity) continue;
        const money = costs[from]! + n * cost;
        if (count === nextLayers[h] && money >= nextCosts[h]!) continue;
        nextLayers[h] = count;
        nextCosts[h] = money;
        taken[h] = n;
      }
    }
    [layers, costs] = [nextLayers, nextCosts];
    all.layers.push(layers);
    all.costs.push(costs);
    all.taken.push(taken);
  }
  return all;
}

/** @param target and limit in steps; that of the fewest layers, or the lowest or highest of all where that is asked for */
function best(
  target: number,
  limit: number,
  offers: readonly Offer[],
  asked?: 'least rasping' | 'highest',
): LayerMix | undefined {
  const common = commonOf(offers);
  const most = Math.floor(limit / common);
  const table = tabulate(most, common, offers);
  const layers = table.layers[offers.length - 1];
  if (!layers) return undefined;
  let at = -1;
  for (let h = Math.ceil(target / common); h <= most; h++) {
    if (layers[h] === Infinity) continue;
    if (at < 0 || asked === 'highest' || layers[h]! < layers[at]!) at = h;
    if (asked === 'least rasping') break;
  }
  if (at < 0) return undefined;
  const counts = new Array<number>(offers.length).fill(0);
  let rest = at;
  for (let i = offers.length - 1; i >= 0; i--) {
    const n = (table.taken[i] as Uint16Array)[rest]!;
    counts[i] = n;
    rest -= (n * stepsOf(itemAt(offers, i))) / common;
  }
  const built = at * common;
  return { counts, built: built / STEPS_PER_MM, rasped: (built - target) / STEPS_PER_MM };
}
