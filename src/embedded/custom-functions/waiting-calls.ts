/** A cell whose formula calls a function. */
export interface CallSite {
  /** Tells cells apart. */
  readonly key: string;
}

/** How a call that takes its time is begun. */
export interface Begun<Result> {
  /** Never rejects: a failure is a result too. */
  readonly result: Promise<Result>;
  /** Tells the function that nobody waits for it any longer. */
  readonly cancel: () => void;
  /** Whether a result may serve later calls with the same arguments, after all that wait for it have had it. */
  readonly lasting: (result: Result) => boolean;
}

interface WaitingCall<Site, Result> {
  readonly sites: Map<string, { readonly site: Site; lastAsked: number }>;
  readonly begun: Begun<Result>;
  settled?: { readonly result: Result };
}

/**
 * The calls whose results are not there yet, by function and arguments. Formulas cannot wait, so a cell asks, shows that
 * data is on the way, and asks again once it is told that the result has come. Cells that ask the same share one call.
 */
export class WaitingCalls<Site extends CallSite, Result> {
  private readonly calls = new Map<string, WaitingCall<Site, Result>>();
  private readonly lasting = new Map<string, Result>();
  /** How many times formulas have been worked out. */
  private calculation = 0;

  /**
   * @param tell is told of the cells that can have their result now
   * @param failed is told where that telling failed
   * @param remembered how many results are kept for later calls with the same arguments
   */
  constructor(
    private readonly tell: (sites: readonly Site[]) => void,
    private readonly failed: (error: unknown) => void,
    private readonly remembered = 50,
  ) {}

  /** How many calls are under way. */
  get running(): number {
    let count = 0;
    for (const call of this.calls.values()) if (!call.settled) count++;
    return count;
  }

  /** Whether a call is under way, or its result is there. */
  knows(call: string): boolean {
    return this.calls.has(call) || this.lasting.has(call);
  }

  /** Formulas are worked out anew: what a cell asked for before it must ask for again to keep it. */
  begin(): void {
    this.calculation++;
  }

  /**
   * A call's result, or undefined while it is under way.
   * @param call tells calls apart: the function and its arguments
   * @param begin begins the call where none is under way
   */
  ask(call: string, site: Site, begin: () => Begun<Result>): { readonly result: Result } | undefined {
    const known = this.lasting.get(call);
    if (known !== undefined) {
      this.remember(call, known);
      return { result: known };
    }
    let found = this.calls.get(call);
    if (!found) {
      const created: WaitingCall<Site, Result> = { sites: new Map(), begun: begin() };
      this.calls.set(call, (found = created));
      created.begun.result.then((result) => this.settle(call, created, result)).catch(this.failed);
    }
    if (!found.settled) {
      found.sites.set(site.key, { site, lastAsked: this.calculation });
      return undefined;
    }
    found.sites.delete(site.key);
    if (found.sites.size === 0) this.calls.delete(call);
    return found.settled;
  }

  /**
   * Formulas are worked out: lets go of what cells no longer wait for, and cancels calls for which none is left.
   * @param calculated whether a cell's formula was among them
   * @param gone whether a cell no longer has the formula with which it asked
   */
  end(calculated: (site: Site) => boolean, gone: (site: Site) => boolean): void {
    for (const [name, call] of this.calls) {
      for (const [key, { site, lastAsked }] of call.sites) {
        if ((lastAsked < this.calculation && calculated(site)) || gone(site)) call.sites.delete(key);
      }
      if (call.sites.size > 0) continue;
      this.calls.delete(name);
      if (!call.settled) call.begun.cancel();
    }
  }

  private settle(name: string, call: WaitingCall<Site, Result>, result: Result): void {
    if (this.calls.get(name) !== call) return;
    call.settled = { result };
    if (call.begun.lasting(result)) {
      this.calls.delete(name);
      this.remember(name, result);
    }
    this.tell([...call.sites.values()].map(({ site }) => site));
  }

  private remember(name: string, result: Result): void {
    this.lasting.delete(name);
    this.lasting.set(name, result);
    for (const oldest of this.lasting.keys()) {
      if (this.lasting.size <= this.remembered) break;
      this.lasting.delete(oldest);
    }
  }
}
