import { derived } from '../../derived';
import { itemAt } from '../../item-at';
import { fold } from '../codes';
import type { Rate, RateUnit } from '../inputs';

/** Rows that count the same, in their order, by the folded scope that they hold for: without one, for anything. */
type OfUnit = Map<string | undefined, Rate[]>;

/** Costs and times, looked up by what they count and what they hold for. */
export class Rates {
  private readonly units = new Map<RateUnit, OfUnit>();

  constructor(rates: readonly Rate[]) {
    for (const rate of rates) {
      const of: OfUnit = this.units.get(rate.unit) ?? new Map();
      const scope = rate.scope && fold(rate.scope);
      this.units.set(rate.unit, of.set(scope, [...(of.get(scope) ?? []), rate]));
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
    const of = this.units.get(unit);
    // Most is counted in no row.
    if (!of) return undefined;
    for (const scope of [...scopes, undefined]) {
      const own = of.get(scope && fold(scope));
      if (own) return own[0];
    }
    return undefined;
  }

  /** The value of a rate for just this scope: what holds for all does not stand in. */
  own(unit: RateUnit, scope: string): number | undefined {
    return this.units.get(unit)?.get(fold(scope))?.[0]?.value;
  }

  /** The sum of all rates that count the same way; of each item and kind of step the row for the most particular scope. */
  sum(unit: RateUnit, scopes: readonly string[]): number {
    return this.items(unit, scopes).reduce((sum, { value }) => sum + value, 0);
  }

  /** The rows that sum adds up. */
  items(unit: RateUnit, scopes: readonly string[]): readonly Rate[] {
    const chosen: Rate[] = [];
    const of = this.units.get(unit);
    if (!of) return chosen;
    for (const scope of [undefined, ...[...scopes].reverse()]) {
      const own = of.get(scope && fold(scope)) ?? [];
      for (const rate of own) putIn(chosen, rate, own);
    }
    return chosen;
  }
}

/**
 * Puts a row in the place of the first of those that it stands for: of its item, spent on the same kind of step, or
 * whatever that is where one of both names none. Rows of one scope that are spent on different kinds stand beside each other.
 */
function putIn(chosen: Rate[], rate: Rate, own: readonly Rate[]): void {
  const item = fold(rate.item);
  const standsFor = (one: Rate) =>
    fold(one.item) === item &&
    (one.step === rate.step || (!own.includes(one) && (one.step === undefined || rate.step === undefined)));
  const at = chosen.findIndex(standsFor);
  if (at < 0) {
    chosen.push(rate);
    return;
  }
  chosen[at] = rate;
  for (let i = chosen.length - 1; i > at; i--) if (standsFor(itemAt(chosen, i))) chosen.splice(i, 1);
}

const read = derived<readonly Rate[], Rates>('rates');

/** The rates of a table, looked through once for it. */
export function ratesOf(rates: readonly Rate[]): Rates {
  return read(rates, [], () => new Rates(rates));
}
