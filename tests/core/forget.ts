import { planMemory } from '../../src/core/plan/plan-memory';
import { shared } from '../../src/core/shared';

/** Forgets all that was kept of plans, so that what is read next is read, and planned, as if for the first time. */
export function forgetPlans(): void {
  planMemory.forget();
  shared('tables read last', () => new Map()).clear();
}
