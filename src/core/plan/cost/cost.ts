import type { Bottom } from '../../bottom/bottom';
import { derived } from '../../derived';
import { timesOfSteps } from '../../steps/steps';
import type { Stock } from '../../stock/stock';
import { weight } from '../../stock/weight';
import { byCode, fold } from '../codes';
import { stocksOf } from '../finder';
import type { PlanInput } from '../inputs';
import type { OrderLine } from '../order';
import type { Runs, SizeRun, StyleRun } from '../runs';
import { benchOf } from '../bench';
import { type BesideStock, besideStock } from './beside-stock';
import { type Fitting, fittingOf } from './fitting';
import { ratesOf } from './rates';
import { type StockCut, stockCutOf } from './stock-cut';
import { stockShares } from './stock-shares';
import { volume } from './volume';
import { work, type Work } from './work';

/** What a style costs. Figures are for one pair, on the average of the run's sizes; money in the sheet's own. */
export interface CostLine extends BesideStock {
  readonly run: StyleRun;
  /** Its share, by net area, of all sheets needed, and what the stock of pairs cost that are cut; sheets without a price count nothing. */
  readonly stock: number;
  readonly stockCut: StockCut;
  /** On stock and adhesive, and what of it is stock: each sheet by the share that holds for the style, for it or for its material. */
  readonly spoilage: number;
  readonly stockSpoiled: number;
  readonly pair: number;
  /** All pairs of the run. */
  readonly whole: number;
  /** Bench time that its pairs still take, hours: of those that are cut, without cutting them out. */
  readonly hours: number;
  /** g; undefined where a density is missing. */
  readonly weight: number | undefined;
  /** Of a pair of bought units, where their price is given. */
  readonly fitting: Fitting | undefined;
}

/** Fifth stage: cost, time, adhesive and weight by style. */
export function cost(
  { styles }: Runs,
  orders: readonly OrderLine[],
  input: Pick<PlanInput, 'rates' | 'stock' | 'pairage'>,
): readonly CostLine[] {
  const rates = ratesOf(input.rates);
  const bench = benchOf(input);
  const stocks = byCode(input.stock);
  return styles.map((run): CostLine => {
    const { code } = run.style;
    const taken = workOf(run, input, bench);
    const beside = besideStock(rates, code, {
      adhesive: average(run, (size) => taken.get(size)?.adhesive),
      pasted: average(run, (size) => taken.get(size)?.pasted),
      minutes: average(run, (size) => taken.get(size)?.minutes),
    });
    const stockCut = stockCutOf(code, input.pairage);
    const shares = stockShares(run, orders);
    const stock = shares.reduce((sum, { money }) => sum + money, stockCut.money) / run.pairs;
    const spoiled = (...scopes: readonly string[]) => rates.one('share spoiled', [code, ...scopes]) ?? 0;
    const stockSpoiled =
      shares.reduce(
        (sum, { stock: one, money }) => sum + money * spoiled(one.code, one.material),
        stockCut.money * spoiled(),
      ) / run.pairs;
    const spoilage = stockSpoiled + beside.adhesiveCost * spoiled();
    const pair = stock + beside.adhesiveCost + beside.sundries + beside.work + spoilage;
    return {
      ...beside,
      run,
      stock,
      stockCut,
      spoilage,
      stockSpoiled,
      pair,
      whole: pair * run.pairs,
      hours: (beside.minutes * run.pairs - cuttingDone(run, taken)) / 60,
      weight: weightOf(run, stocks),
      fitting: run.style.boughtPrice === undefined ? undefined : fittingOf(run, rates),
    };
  });
}

/** Works out what takes most of the time of one style's cost, which then is there. */
export function readyCost(run: StyleRun, input: Pick<PlanInput, 'rates' | 'stock'>): void {
  workOf(run, input);
  weightOf(run, byCode(input.stock));
}

const workBefore = derived<StyleRun, ReadonlyMap<SizeRun, Work>>('work on the sizes of a run');
const volumesBefore = derived<Bottom, readonly number[]>('volumes of a bottom’s pieces');
const weightBefore = derived<StyleRun, number | undefined>('weight of a run');

/** What a pair of each size of a run takes at the bench. */
export function workOf(
  run: StyleRun,
  input: Pick<PlanInput, 'rates' | 'stock'>,
  bench = benchOf(input),
): ReadonlyMap<SizeRun, Work> {
  const { style, sizes } = run;
  return workBefore(run, [input.rates, ...stocksOf(style).map(bench.mouldedFace)], () => {
    return new Map(sizes.map((size) => [size, work(timesOfSteps(size.bottom, style, bench), style.code, bench.rates)]));
  });
}

/** Minutes of cutting out the pieces of the pairs that are cut. */
export function cuttingDone({ sizes }: StyleRun, taken: ReadonlyMap<SizeRun, Work>): number {
  return sizes.reduce((sum, size) => sum + (size.pairs - size.toCut) * (taken.get(size)?.cutting ?? 0), 0);
}

function weightOf(run: StyleRun, stocks: ReadonlyMap<string, Stock>): number | undefined {
  const density = (code: string) => stocks.get(fold(code))?.density;
  return weightBefore(run, stocksOf(run.style).map(density), () =>
    average(run, ({ bottom }) => weightOfPair(bottom, density)),
  );
}

/** A figure of each size on the average of the run's pairs; undefined where one size has none. */
function average(run: StyleRun, of: (size: StyleRun['sizes'][number]) => number | undefined): number | undefined {
  let sum = 0;
  for (const size of run.sizes) {
    const figure = of(size);
    if (figure === undefined) return undefined;
    sum += size.pairs * figure;
  }
  return sum / run.pairs;
}

/** Weight of a pair's bottoms, g. */
function weightOfPair(bottom: Bottom, density: (stock: string) => number | undefined): number | undefined {
  const volumes = volumesBefore(bottom, [], () => bottom.layers.map(volume));
  let grams = 0;
  for (const [i, { stock }] of bottom.layers.entries()) {
    const perVolume = density(stock);
    if (perVolume === undefined) return undefined;
    grams += weight(2 * volumes[i]!, perVolume);
  }
  return grams;
}
