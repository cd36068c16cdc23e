import { fold } from '../codes';
import type { Rate, RateUnit } from '../inputs';

/** Costs and times, looked up by what they count and what they hold for. */
export class Rates {
  constructor(private readonly rates: readonly Rate[]) {}

  /**
   * The value of a rate of which one holds at a time: the one for the most particular of the scopes.
   * @param scopes codes and words that a row may hold for, the most particular first
   */
  one(unit: RateUnit, scopes: readonly string[]): number | undefined {
    return this.row(unit, scopes)?.value;
  }

  /** The row that `one` takes its value from. */
  row(unit: RateUnit, scopes: readonly string[]): Rate | undefined {
    const rows = this.rates.filter((rate) => rate.unit === unit);
    for (const scope of [...scopes, undefined]) {
      const found = rows.find((rate) => sameScope(rate.scope, scope));
      if (found) return found;
    }
    return undefined;
  }

  /** The sum of all rates that count the same way; of each item the row for the most particular scope. */
  sum(unit: RateUnit, scopes: readonly string[]): number {
    return this.items(unit, scopes).reduce((sum, { value }) => sum + value, 0);
  }

  /** The rows that sum adds up. */
  items(unit: RateUnit, scopes: readonly string[]): readonly Rate[] {
    const chosen = new Map<string, Rate>();
    for (const scope of [undefined, ...[...scopes].reverse()]) {
      for (const rate of this.rates) {
        if (rate.unit === unit && sameScope(rate.scope, scope)) chosen.set(fold(rate.item), rate);
      }
    }
    return [...chosen.values()];
  }
}

function sameScope(given: string | undefined, wanted: string | undefined): boolean {
  return given === undefined || wanted === undefined ? given === wanted : fold(given) === fold(wanted);
}
