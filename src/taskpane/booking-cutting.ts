import { type Booking, booking } from '../core/plan/booking';
import type { Plan } from '../core/plan/plan';
import { whatWentWrong } from '../core/what-went-wrong';
import type { Host } from '../host/host';
import { bookedCells, type NamedOffcut, namedOffcuts } from '../tables/booked-cells';
import type { Cells } from '../tables/cell';
import { sameInputs } from '../tables/plan-cells';

/** So many offcuts of a stock are ticked at first, the largest: each more makes the next plan slower, and the rack fuller. */
const KEPT_AT_FIRST = 12;

/** Where the booking of a plan's cutting stands. */
export type BookState =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'shown';
      readonly plan: Plan;
      readonly tables: ReadonlyMap<string, Cells>;
      readonly booking: Booking;
    }
  | { readonly kind: 'failed'; readonly plan: Plan; readonly why: string };

/** Books a plan's cutting: first it is shown, then written in one step. */
export class BookingCutting {
  state: BookState = { kind: 'none' };
  /** Where offcuts are put. */
  place = '';
  /** Whether it is being written now. */
  private writing = false;
  private readonly notKept = new Set<Booking['left'][number]>();

  constructor(private readonly changed: () => void) {}

  /** Shows what would be booked. @param tables that the plan was read from */
  show(plan: Plan, tables: ReadonlyMap<string, Cells>): void {
    this.notKept.clear();
    try {
      const booked = booking(plan);
      const counts = new Map<string, number>();
      for (const one of booked.left) {
        const { code } = one.cutting.stock;
        const before = counts.get(code) ?? 0;
        counts.set(code, before + 1);
        if (before >= KEPT_AT_FIRST) this.notKept.add(one);
      }
      this.become({ kind: 'shown', plan, tables, booking: booked });
    } catch (error) {
      this.become({ kind: 'failed', plan, why: whatWentWrong(error) });
    }
  }

  leave(): void {
    this.become({ kind: 'none' });
  }

  keeps(one: Booking['left'][number]): boolean {
    return !this.notKept.has(one);
  }

  keep(one: Booking['left'][number], kept: boolean): void {
    if (kept) this.notKept.delete(one);
    else this.notKept.add(one);
    this.changed();
  }

  /** What goes to the offcuts, under names of its own. */
  get kept(): readonly NamedOffcut[] {
    if (this.state.kind !== 'shown') return [];
    const { booking: booked, plan } = this.state;
    return namedOffcuts(
      booked.left.filter((one) => this.keeps(one)),
      plan.input.offcuts,
    );
  }

  /**
   * Writes what is shown, once.
   * @returns whether it was written
   * @throws Error where the tables are others than those it was shown for
   */
  async write(host: Pick<Host, 'tables' | 'writeTableCells'>): Promise<boolean> {
    const { state } = this;
    if (state.kind !== 'shown' || this.writing) return false;
    this.writing = true;
    try {
      const tables = await host.tables();
      if (!sameInputs(tables, state.tables)) {
        throw new Error('The tables have changed since; look at what would be booked anew. Nothing has been changed.');
      }
      await host.writeTableCells(bookedCells(tables, state.booking, this.kept, this.place.trim()));
    } finally {
      this.writing = false;
      this.leave();
    }
    return true;
  }

  private become(state: BookState): void {
    this.state = state;
    this.changed();
  }
}
