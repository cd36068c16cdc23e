import type { Bottom } from '../bottom/bottom';
import { ringContent } from '../geometry/ring-content';
import type { Offer } from '../stock/offer';
import type { Stock } from '../stock/stock';
import { fold } from './codes';
import type { OffcutRow } from './inputs';

/**
 * What the parts of a plan's work take, ms on two cores of a usual machine, measured by the benchmark "plan": a bottom, with
 * its minutes and weight; an outline, readied and weighed against others in rows; a piece of it laid and checked.
 */
const BOTTOM = 1.2;
const ROWS = { outline: 0.45, piece: 0.016 } as const;
/** Within a sheet's own outline, and where left and right are to match, every outline is held against every other. */
const NATURAL = { twoOutlines: 6, piece: 1.5 } as const;

/** The most work that one plan may take, ms: who enters a number should not wait much longer for the answer. */
export const MOST_WORK = 10_000;

/** What is to be laid on one stock, and how. */
interface Laying {
  readonly stock: string;
  readonly natural: boolean;
  /** How often all of it is laid, to choose: with and without offcuts, on sheets of every offer. */
  readonly times: number;
  readonly outlines: Set<string>;
  pieces: number;
}

/** Estimates how long a plan takes, style by style, before anything is laid: it only grows. */
export class PlanWork {
  private readonly bottoms = new Set<Bottom>();
  private readonly layings = new Map<string, Laying>();

  constructor(stocks: readonly Stock[], offcuts: readonly OffcutRow[], offers: readonly Offer[] = []) {
    for (const { code, natural, pairs } of stocks) {
      const [own, others] = [offcuts, offers].map(
        (list) => list.filter(({ stock }) => fold(stock) === fold(code)).length,
      ) as [number, number];
      const laying = {
        stock: code,
        natural: natural !== undefined || pairs !== 'anywhere',
        outlines: new Set<string>(),
      };
      this.layings.set(fold(code), { ...laying, times: (own > 0 ? 2 + own : 1) * (1 + 2 * others), pieces: 0 });
    }
  }

  /** Takes in what a style wants in its sizes. Bottoms and outlines that are the same as before are no more work. */
  add(sizes: readonly { readonly bottom: Bottom; readonly toCut: number }[]): void {
    for (const { bottom, toCut } of sizes) {
      this.bottoms.add(bottom);
      for (const { stock, ring } of bottom.layers) {
        const laying = this.layings.get(fold(stock));
        if (!laying) continue;
        laying.outlines.add(ringContent(ring));
        laying.pieces += 2 * toCut;
      }
    }
  }

  /** All of it, ms. */
  get total(): number {
    return [...this.layings.values()].reduce((sum, laying) => sum + layingWork(laying), BOTTOM * this.bottoms.size);
  }

  /** The stock with an outline of its own, or with matching pairs, whose laying is more than half of the work, if one is. */
  get mostlyOn(): string | undefined {
    const half = this.total / 2;
    return [...this.layings.values()].find((laying) => laying.natural && layingWork(laying) > half)?.stock;
  }
}

function layingWork({ natural, times, outlines: { size }, pieces: count }: Laying): number {
  return (
    times *
    (natural ? NATURAL.twoOutlines * size ** 2 + NATURAL.piece * count : ROWS.outline * size + ROWS.piece * count)
  );
}
