import { derived } from '../../derived';
import { itemAt } from '../../item-at';
import { fold } from '../codes';
import type { Rate, RateUnit } from '../inputs';

/** Rows that count the same, in their order: those that hold for anything, and those for one scope, by its folded words. */
interface OfUnit {
  readonly forAll: Rate[];
  readonly byScope: Map<string, Rate[]>;
}

const NONE: readonly Rate[] = [];

/** Costs and times, looked up by what they count and what they hold for. */
export class Rates {
  private readonly units = new Map<RateUnit, OfUnit>();

  constructor(rates: readonly Rate[]) {
    for (const rate of rates) {
      let of = this.units.get(rate.unit);
      if (!of) this.units.set(rate.unit, (of = { forAll: [], byScope: new Map() }));
      if (rate.scope === undefined) {
        of.forAll.push(rate);
        continue;
      }
      const scope = fold(rate.scope);
      const own = of.byScope.get(scope);
      if (own) own.push(rate);
      else of.byScope.set(scope, [rate]);
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
    if (!of) return undefined;
    for (const scope of scopes) {
      const found = rowsFor(of, scope)[0];
      if (found) return found;
    }
    return of.forAll[0];
  }

  /** The value of a rate for just this scope: what holds for all does not stand in. */
  own(unit: RateUnit, scope: string): number | undefined {
    const of = this.units.get(unit);
    return of && rowsFor(of, scope)[0]?.value;
  }

  /** The sum of all rates that count the same way; of each item and kind of step the row for the most particular scope. */
  sum(unit: RateUnit, scopes: readonly string[]): number {
    return this.items(unit, scopes).reduce((sum, { value }) => sum + value, 0);
  }

  /** The rows that sum adds up. */
  items(unit: RateUnit, scopes: readonly string[]): readonly Rate[] {
    const of = this.units.get(unit);
    if (!of) return NONE;
    const chosen: Rate[] = [];
    for (const rate of of.forAll) putIn(chosen, rate, of.forAll);
    for (let i = scopes.length - 1; i >= 0; i--) {
      const own = rowsFor(of, itemAt(scopes, i));
      for (const rate of own) putIn(chosen, rate, own);
    }
    return chosen;
  }
}

/** Of those that hold for a scope. Of most of what is counted no row names any. */
function rowsFor({ byScope }: OfUnit, scope: string): readonly Rate[] {
  return byScope.size === 0 ? NONE : (byScope.get(fold(scope)) ?? NONE);
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
