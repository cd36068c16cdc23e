import { adhesive } from './adhesive';
import { fold } from '../codes';
import type { PlanInput } from '../inputs';
import type { OrderLine } from '../order';
import type { PieceLine } from '../pieces';
import { Rates } from './rates';
import type { Runs, StyleRun } from '../runs';
import { weight } from '../../stock/weight';
import { volume } from './volume';
import { work } from './work';

/** What a style costs. Figures are for one pair, on the average of the run's sizes; money in the sheet's own. */
export interface CostLine {
  readonly run: StyleRun;
  /** Its share, by net area, of all sheets needed; sheets without a price count nothing. */
  readonly stock: number;
  /** ml; undefined where no coverage is given. */
  readonly adhesive: number | undefined;
  readonly adhesiveCost: number;
  readonly sundries: number;
  /** See work. */
  readonly minutes: number;
  readonly work: number;
  /** On stock and adhesive. */
  readonly spoilage: number;
  readonly pair: number;
  /** All pairs of the run. */
  readonly whole: number;
  /** g; undefined where a density is missing. */
  readonly weight: number | undefined;
}

/** Fifth stage: cost, time, adhesive and weight by style. */
export function cost(
  { styles }: Runs,
  lines: readonly PieceLine[],
  orders: readonly OrderLine[],
  input: Pick<PlanInput, 'rates' | 'stock'>,
): readonly CostLine[] {
  const rates = new Rates(input.rates);
  const density = new Map(input.stock.map((stock) => [fold(stock.code), stock.density]));
  return styles.map((run): CostLine => {
    const { code } = run.style;
    const stock = stockShare(run, lines, orders) / run.pairs;
    const ml = average(run, ({ bottom }) => adhesive(bottom, code, rates));
    const adhesiveCost = ((ml ?? 0) / 1000) * (rates.one('money a litre', [code]) ?? 0);
    const sundries = rates.sum('money a pair', [code]);
    const minutes = average(run, ({ bottom }) => work(bottom, code, rates)) ?? 0;
    const labour = (minutes / 60) * (rates.one('money an hour', [code]) ?? 0);
    const spoilage = (stock + adhesiveCost) * (rates.one('share spoiled', [code]) ?? 0);
    const pair = stock + adhesiveCost + sundries + labour + spoilage;
    return {
      run,
      stock,
      adhesive: ml,
      adhesiveCost,
      sundries,
      minutes,
      work: labour,
      spoilage,
      pair,
      whole: pair * run.pairs,
      weight: average(run, ({ bottom }) => weightOfPair(bottom.layers, density)),
    };
  });
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

function stockShare(run: StyleRun, lines: readonly PieceLine[], orders: readonly OrderLine[]): number {
  let money = 0;
  for (const { cutting, sheetPrice, need } of orders) {
    if (sheetPrice === undefined) continue;
    const own = lines
      .filter((line) => line.run === run && fold(line.layer.stock) === fold(cutting.stock.code))
      .reduce((sum, line) => sum + line.area * line.count, 0);
    money += (sheetPrice * need * own) / cutting.net;
  }
  return money;
}

/** Weight of a pair's bottoms, g. */
function weightOfPair(
  layers: StyleRun['sizes'][number]['bottom']['layers'],
  density: ReadonlyMap<string, number | undefined>,
): number | undefined {
  let grams = 0;
  for (const layer of layers) {
    const perVolume = density.get(fold(layer.stock));
    if (perVolume === undefined) return undefined;
    grams += weight(2 * volume(layer), perVolume);
  }
  return grams;
}
