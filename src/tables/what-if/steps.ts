import type { Outcome } from '../../core/plan/outcome';

/** A value that was tried, and what its plan comes to, or why it comes to nothing whole. */
export interface Tried {
  readonly value: number;
  readonly outcome?: Outcome | undefined;
  /** A sentence. */
  readonly why?: string | undefined;
}

/** Between two values that were tried next to each other another number of sheets of some stocks is to be bought. */
export interface SheetStep {
  readonly from: number;
  readonly to: number;
  readonly changes: readonly { readonly stock: string; readonly from: number; readonly to: number }[];
}

/** Where sheets become more or fewer, along rising values; a value without a plan is passed over. */
export function sheetSteps(tried: readonly Tried[]): readonly SheetStep[] {
  const whole = tried.flatMap(({ value, outcome }) => (outcome ? [{ value, outcome }] : []));
  return whole.flatMap(({ value: to, outcome }, i): SheetStep[] => {
    const before = whole[i - 1];
    if (!before) return [];
    const of = ({ bought }: Outcome) => new Map(bought.map(({ stock, buy }) => [stock, buy]));
    const [was, is] = [of(before.outcome), of(outcome)];
    const changes = [...new Set([...was.keys(), ...is.keys()])].flatMap((stock) => {
      const [first, then] = [was.get(stock) ?? 0, is.get(stock) ?? 0];
      return first === then ? [] : [{ stock, from: first, to: then }];
    });
    return changes.length > 0 ? [{ from: before.value, to, changes }] : [];
  });
}

/** "45 to 46: Cork 6 from 5 to 6 sheets". */
export function stepInWords({ from, to, changes }: SheetStep): string {
  const said = changes.map((one) => `${one.stock} from ${one.from} to ${one.to}`).join(', ');
  return `${figure(from)} to ${figure(to)}: ${said} ${changes.length === 1 && changes[0]?.to === 1 ? 'sheet' : 'sheets'}`;
}

/** A value as it was entered, without noughts at its end. */
export function figure(value: number): string {
  return String(Number(value.toFixed(6)) + 0).replace('-', '−');
}
