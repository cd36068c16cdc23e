import type { Plan } from './plan';

/** What is to be bought of one stock, all its offers together. */
export interface SheetsBought {
  readonly stock: string;
  readonly buy: number;
}

/** What a plan comes to: sums over the whole run, money in the sheet's own. */
export interface Outcome {
  /** Sheets to buy, and of each stock. */
  readonly sheets: number;
  readonly bought: readonly SheetsBought[];
  readonly toPay: number;
  /** Of all pairs. */
  readonly cost: number;
  /** Bench time, hours. */
  readonly hours: number;
  /** Weight of all bottoms, kg; undefined where a density is missing. */
  readonly weight: number | undefined;
  /** Litres; undefined where no coverage is given. */
  readonly adhesive: number | undefined;
  /** Rows of Checks that are to be put right. */
  readonly putRight: number;
}

/** Sums of what can be bought and made. */
export function outcomeOf(plan: Pick<Plan, 'possible' | 'checks'>): Outcome {
  const { orders, costs } = plan.possible;
  const bought = new Map<string, number>();
  for (const { cutting, buy } of orders) {
    bought.set(cutting.stock.code, (bought.get(cutting.stock.code) ?? 0) + buy);
  }
  const sum = (of: (line: (typeof costs)[number]) => number | undefined) =>
    costs.reduce<number | undefined>((all, line) => {
      const own = of(line);
      return all === undefined || own === undefined ? undefined : all + own * line.run.pairs;
    }, 0);
  const grams = sum(({ weight }) => weight);
  const ml = sum(({ adhesive }) => adhesive);
  return {
    sheets: orders.reduce((all, { buy }) => all + buy, 0),
    bought: [...bought].map(([stock, buy]) => ({ stock, buy })),
    toPay: orders.reduce((all, { toPay }) => all + (toPay ?? 0), 0),
    cost: costs.reduce((all, { whole }) => all + whole, 0),
    hours: costs.reduce((all, { hours }) => all + hours, 0),
    weight: grams === undefined ? undefined : grams / 1000,
    adhesive: ml === undefined ? undefined : ml / 1000,
    putRight: plan.checks.filter(({ verdict }) => verdict === 'putRight').length,
  };
}
