import { derived } from '../../derived';
import { fold } from '../codes';
import type { Rate, RateUnit } from '../inputs';

/** Costs and times, looked up by what they count and what they hold for. */
export class Rates {
  /** Rows by what they count and hold for, in their order. */
  private readonly rows = new Map<string, Rate[]>();

  constructor(rates: readonly Rate[]) {
    for (const rate of rates) {
      const key = keyOf(rate.unit, rate.scope);
      const own = this.rows.get(key);
      if (own) own.push(rate);
      else this.rows.set(key, [rate]);
    }
  }

  /**
   * The value of a rate of which one holds at a time: the one for the most particular of the scopes.
   * @param scopes codes and words that a row may hold for, the most particular first
   */
  one(unit: RateUnit, scopes: readonly string[]): number | undefined {
    return this.row(unit, scopes)?.value;
  }

  /** The row that `one` takes its value from. */
  row(unit: RateUnit, scopes: readonly string[]): Rate | undefined {
    for (const scope of [...scopes, undefined]) {
      const [found] = this.rows.get(keyOf(unit, scope)) ?? [];
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
      for (const rate of this.rows.get(keyOf(unit, scope)) ?? []) chosen.set(fold(rate.item), rate);
    }
    return [...chosen.values()];
  }
}

function keyOf(unit: RateUnit, scope: string | undefined): string {
  return scope === undefined ? unit : `${unit}\n${fold(scope)}`;
}

const read = derived<readonly Rate[], Rates>('rates');

/** The rates of a table, looked through once for it. */
export function ratesOf(rates: readonly Rate[]): Rates {
  return read(rates, [], () => new Rates(rates));
}
