import { leastSheets } from '../cutting/sheet/least-sheets';
import { Problem } from '../problem';
import type { Stepwise } from '../stepwise';
import { purchase } from '../stock/purchase';
import type { Stock } from '../stock/stock';
import { fold } from './codes';
import { type BeyondStock, beyondStock } from './cost/beyond-stock';
import { cutStock, type StockCutting } from './cutting';
import { laidPieces, piecesFrom } from './pieces';
import type { Plan } from './plan';
import type { SizeRun, StyleRun } from './runs';

/** A pair that comes out of the sheets of the run as it is. */
export interface FurtherPair {
  readonly run: StyleRun;
  readonly sizeRun: SizeRun;
  /** What it costs beyond the stock. */
  readonly cost: BeyondStock;
}

/** What comes out of the sheets that a run takes anyway. */
export interface FillUp {
  /** Each by itself; those of sizes with most pairs in the run first. */
  readonly pairs: readonly FurtherPair[];
  readonly tried: number;
  /** Styles and sizes that were not tried: laying them all would take too long. */
  readonly notTried: number;
}

/** The most pieces that are laid for one answer: about half a minute on two cores of a usual machine. */
const MOST_LAID = 60_000;
/** A piece within a sheet's own outline, or matched with its other foot, takes as long as so many in rows. */
const NATURAL = 10;

/**
 * Which further pair of each style and size of the run comes out of the sheets that are taken anyway: of every offer
 * as many are bought as before, and no more come off the shelf. A pair is named only where the plan with it, laid anew by
 * the quick rows, takes no more (derived).
 * @param tell how many of how many have been tried, and what was found so far
 * @throws Problem where a part of the run cannot be cut
 */
export function* fillUp(plan: Plan, tell: (soFar: FillUp) => void = () => undefined): Stepwise<FillUp> {
  yield* plan.upTo('cutting');
  const trial = new Trial(plan);
  const all = candidates(plan);
  const pairs: FurtherPair[] = [];
  for (const [tried, { run, sizeRun }] of all.entries()) {
    const soFar = { pairs, tried, notTried: all.length - tried };
    if (trial.laid > MOST_LAID) return soFar;
    tell({ ...soFar, pairs: [...pairs] });
    if (yield* trial.holds(run, sizeRun)) pairs.push({ run, sizeRun, cost: beyondStock(run, sizeRun, plan.input) });
    yield;
  }
  return { pairs, tried: all.length, notTried: 0 };
}

/** All sizes of the run, those with most pairs in it first; none where no sheet is taken. */
function candidates({ runs, cutting }: Plan): readonly { readonly run: StyleRun; readonly sizeRun: SizeRun }[] {
  if (cutting.stocks.length === 0) return [];
  return runs.styles
    .flatMap((run) => run.sizes.map((sizeRun) => ({ run, sizeRun })))
    .sort((a, b) => b.sizeRun.pairs - a.sizeRun.pairs);
}

/** Lays a run with one pair more. */
class Trial {
  /** Pieces laid so far. */
  laid = 0;
  private readonly now = new Map<string, readonly StockCutting[]>();

  constructor(private readonly plan: Plan) {
    for (const one of plan.cutting.stocks) {
      const code = fold(one.stock.code);
      this.now.set(code, [...(this.now.get(code) ?? []), one]);
    }
  }

  /** Whether all pieces of the pair come out of what is taken now. */
  *holds(run: StyleRun, sizeRun: SizeRun): Stepwise<boolean> {
    const codes = new Set(sizeRun.bottom.layers.map(({ stock }) => fold(stock)));
    const own = this.plan.input.stock.filter(({ code }) => codes.has(fold(code)));
    const more = withPair(run, sizeRun);
    // What is plainly full, or quickly laid, tells before what takes long.
    if (own.some((stock) => this.isFull(stock, more))) return false;
    for (const stock of own.sort((a, b) => this.pieces(a) - this.pieces(b))) {
      this.laid += this.pieces(stock);
      if (!(yield* this.holdsOn(stock, run, more))) return false;
    }
    return true;
  }

  private *holdsOn(stock: Stock, run: StyleRun, more: StyleRun): Stepwise<boolean> {
    const styles = this.plan.runs.styles.map((one) => (one === run ? more : one));
    // A layout that a search wrote down fits its own pieces alone: with the pair, the plan lays quick rows.
    const then = yield* cutStock(stock, { styles }, { ...this.plan.input, layouts: [] });
    return !(then instanceof Problem) && takesNoMore(this.cuttings(stock), then);
  }

  /** Whether no layout at all could hold the pair, of sheets of one format in rows. */
  private isFull(stock: Stock, more: StyleRun): boolean {
    const [only, ...others] = this.cuttings(stock);
    if (!only || others.length > 0 || only.format.natural || only.otherFormat !== undefined) return false;
    const own = piecesFrom(more, stock.code);
    const added = own ? laidPieces(own, stock.direction) : [];
    const keys = new Set(added.map(({ key }) => key));
    const pieces = [...only.pieces.filter(({ key }) => !keys.has(key)), ...added];
    const taken = [...takenOf([only]).values()].reduce((sum, { buy, shelf }) => sum + buy + shelf, 0);
    return leastSheets(pieces, only.format) > taken;
  }

  private pieces(stock: Stock): number {
    const slow = stock.natural !== undefined || stock.pairs !== 'anywhere' ? NATURAL : 1;
    return this.cuttings(stock).reduce((sum, { count }) => sum + slow * count, 0);
  }

  private cuttings({ code }: Stock): readonly StockCutting[] {
    return this.now.get(fold(code)) ?? [];
  }
}

function withPair(run: StyleRun, sizeRun: SizeRun): StyleRun {
  const one = <T extends { readonly pairs: number; readonly toCut: number }>(of: T): T => {
    return { ...of, pairs: of.pairs + 1, toCut: of.toCut + 1 };
  };
  return { ...one(run), sizes: run.sizes.map((size) => (size === sizeRun ? one(size) : size)) };
}

/** Whether of every offer as many sheets are bought as before, and no more come off the shelf. */
function takesNoMore(now: readonly StockCutting[], then: readonly StockCutting[]): boolean {
  const before = takenOf(now);
  const after = takenOf(then);
  return [...new Set([...before.keys(), ...after.keys()])].every((offer) => {
    const [a, b] = [before, after].map((all) => all.get(offer) ?? { buy: 0, shelf: 0 }) as [TakenOf, TakenOf];
    return b.buy === a.buy && b.shelf <= a.shelf;
  });
}

interface TakenOf {
  readonly buy: number;
  readonly shelf: number;
}

/** Sheets bought, and taken off the shelf, by the row of the offer; 0 is the stock's own. */
function takenOf(cuttings: readonly StockCutting[]): ReadonlyMap<number, TakenOf> {
  return new Map(
    cuttings
      .flatMap(({ offers, sheets }) => purchase(offers, sheets))
      .map(({ offer, need, buy }) => [offer.offer ?? 0, { buy, shelf: Math.min(need, offer.onHand) }]),
  );
}
