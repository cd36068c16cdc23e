import { type Context, createContext, runInContext } from 'node:vm';
import { beforeEach, describe, expect, it } from 'vitest';
import { planCells, STOCKS } from '../core/samples';
import { type Bundle, CellError, loadBundle, loadInto } from '../bundle';

const args = (tables: Parameters<typeof planCells>[0] = {}) => {
  const { pairage, styles, lasts, stock, rates } = planCells(tables);
  return [pairage, styles, lasts, stock, rates, null, null, null];
};
const FUNCTIONS = ['SUMMARY', 'PIECES', 'CUTTING', 'ORDER', 'COST', 'CHECKS', 'BATCHES'];

/** A host with tasks that are done one by one, and a clock that goes on by so many ms whenever it is looked at. */
class Host {
  readonly tasks: (() => void)[] = [];
  readonly context: Context;
  readonly bundle: Bundle;
  private clock = 0;

  constructor(tick: number) {
    const now = () => (this.clock += tick);
    this.context = createContext({ setTimeout: (work: () => void) => this.tasks.push(work), now });
    runInContext('Date.now = now', this.context);
    this.bundle = loadInto(this.context);
  }

  call(name: string, given: readonly unknown[], invocation: { onCanceled?: () => void } = {}): unknown {
    return this.bundle.associated.get(name)!(...given, invocation);
  }

  /** Does what waits, and what comes of it. @returns how many tasks that were */
  work(most = Infinity): number {
    let count = 0;
    for (; this.tasks.length > 0 && count < most; count++) this.tasks.shift()!();
    return count;
  }

  /** Results that plans have made so far. */
  get made(): number {
    const place = Object.getOwnPropertySymbols(this.context).find((one) => String(one).includes('solebench keeps'));
    const kept = place && (this.context as unknown as Record<symbol, Map<string, { made: number }>>)[place];
    return kept?.get('plan memory')?.made ?? 0;
  }
}

const plain = (answer: unknown) => JSON.parse(JSON.stringify(answer)) as unknown;

describe('functions that plan, in a host with tasks', () => {
  const atOnce = loadBundle();
  let host: Host;
  beforeEach(() => {
    // A step takes 25 ms: two fill a slice.
    host = new Host(25);
  });

  it.each(FUNCTIONS)('%s promises, works task by task, and answers as it does at once', async (name) => {
    const promised = host.call(name, args());
    expect(typeof (promised as Promise<unknown>).then).toBe('function');
    expect(host.work()).toBeGreaterThan(['PIECES', 'BATCHES'].includes(name) ? 0 : 3);
    expect(plain(await promised)).toEqual(atOnce.call(name, ...args()));
  });

  it('share the work on one plan, and answer at once when it is there', async () => {
    const promised = FUNCTIONS.map((name) => host.call(name, args()));
    host.work();
    const answers = (await Promise.all(promised)).map(plain);
    expect(answers).toEqual(FUNCTIONS.map((name) => atOnce.call(name, ...args())));
    const alone = new Host(0);
    alone.call('CHECKS', args());
    expect(host.made).toBe(alone.made);
    const patient = new Host(0);
    expect(patient.call('ORDER', args())).toEqual(expect.any(Object));
    expect(plain(patient.call('ORDER', args()))).toEqual(atOnce.call('ORDER', ...args()));
  });

  it('give up what is no longer wanted, and go on with the others', async () => {
    const invocation: { onCanceled?: () => void } = {};
    const dropped = host.call('CHECKS', args(), invocation);
    let settled = false;
    (dropped as Promise<unknown>).finally(() => (settled = true)).catch(() => undefined);
    host.work(2);
    const before = host.made;
    invocation.onCanceled!();
    host.work();
    expect([host.made, settled]).toEqual([before, false]);
    const stock = STOCKS.map((one) => ({ ...one, Price: 12 }));
    const other = host.call('ORDER', args({ stock }));
    host.work();
    expect(plain(await other)).toEqual(atOnce.call('ORDER', ...args({ stock })));
  });

  it('say late what they would say at once', async () => {
    const stock = STOCKS.map((one) => ({ ...one, Width: 60 }));
    const promised = host.call('CUTTING', args({ stock })) as Promise<unknown>;
    host.work();
    await expect(promised).rejects.toThrow(CellError);
    await expect(promised).rejects.toThrow(/Stock: Cork 6, Betony/);
    // Slips are told at once: nothing is planned.
    expect(() => host.call('PIECES', args({ stock: [] }))).toThrow(/Bottom stock/);
  });

  it('are answered at once by a host that would rather wait', () => {
    const waiting = new Host(15);
    Object.assign(waiting.context['CustomFunctions'] as object, { patience: 60_000 });
    expect(plain(waiting.call('COST', args()))).toEqual(atOnce.call('COST', ...args()));
    expect(waiting.tasks).toEqual([]);
  });
});
