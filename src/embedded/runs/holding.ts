/** How long a tab that is just being closed may take to let go of a run, ms. */
const HANDOVER = 1500;
/** How long a tab that is asked for a run may take to keep and hand it over, ms; then it is taken. */
const PATIENCE = 5000;

const CHANNEL = 'solebench runs';

/** What tabs tell each other. */
type Message =
  /** Whether a tab has the run; it answers that it does. */
  | { readonly kind: 'asks'; readonly run: string }
  | { readonly kind: 'has'; readonly run: string }
  /** Whoever has the run is to hand it over. */
  | { readonly kind: 'give'; readonly run: string }
  /** A run's latest change is kept. */
  | { readonly kind: 'kept'; readonly run: string }
  /** The list of runs has changed. */
  | { readonly kind: 'list' };

/** A run is at work in one tab at a time: holds it, hands it over, and hears of the others. */
export class Holding {
  private readonly channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel(CHANNEL) : undefined;
  private readonly listeners = new Set<(message: Message) => void>();
  private held: { readonly run: string; readonly letGo: () => void } | undefined;

  constructor() {
    this.channel?.addEventListener('message', ({ data }: MessageEvent<Message>) => {
      this.listeners.forEach((listener) => listener(data));
    });
    this.listeners.add((message) => {
      if (message.kind === 'asks' && message.run === this.held?.run) this.tell({ kind: 'has', run: message.run });
    });
  }

  /**
   * Resolves once this tab has the run.
   * @param elsewhere is told once another tab turns out to have it; what it gives asks that tab to hand it over
   * @param lost is told where another tab took it without waiting
   */
  async hold(run: string, elsewhere: (take: () => void) => void, lost: () => void): Promise<void> {
    // Without locks the store still refuses what another visit has overtaken.
    if (!('locks' in navigator)) return;
    const name = `solebench run ${run}`;
    await new Promise<void>((resolve, reject) => {
      const stop = new AbortController();
      const tell = () => {
        quiet();
        elsewhere(() => {
          this.tell({ kind: 'give', run });
          steal = setTimeout(() => {
            stop.abort();
            request({ steal: true });
          }, PATIENCE);
        });
      };
      const hears = (message: Message) => {
        if (message.kind === 'has' && message.run === run) tell();
      };
      const patience = setTimeout(tell, HANDOVER);
      let steal: ReturnType<typeof setTimeout> | undefined;
      const quiet = () => {
        clearTimeout(patience);
        this.listeners.delete(hears);
      };
      const has = () => {
        quiet();
        clearTimeout(steal);
        resolve();
        return new Promise<void>((letGo) => {
          this.held = { run, letGo };
        });
      };
      const request = (options: LockOptions) => {
        navigator.locks.request(name, options, has).catch((error: unknown) => {
          if (options.signal?.aborted) return;
          if (this.held?.run !== run) return reject(error);
          this.held = undefined;
          lost();
        });
      };
      this.listeners.add(hears);
      request({ signal: stop.signal });
      this.tell({ kind: 'asks', run });
    });
  }

  /** Lets go of the run that this tab has. */
  letGo(): void {
    this.held?.letGo();
    this.held = undefined;
  }

  /** Whether a run is at work in no other tab, and so may be changed here. */
  async isFree(run: string): Promise<boolean> {
    if (this.held?.run === run || !('locks' in navigator)) return true;
    return navigator.locks.request(`solebench run ${run}`, { ifAvailable: true }, (lock) => lock !== null);
  }

  /** Calls when another tab asks for the run that this one has. */
  onAsked(listener: () => void): void {
    this.listeners.add((message) => {
      if (message.kind === 'give' && message.run === this.held?.run) listener();
    });
  }

  /** Calls when another tab has kept a change of a run. */
  onKept(run: string, listener: () => void): () => void {
    const hears = (message: Message) => message.kind === 'kept' && message.run === run && listener();
    this.listeners.add(hears);
    return () => this.listeners.delete(hears);
  }

  /** Tells other tabs that a change of a run is kept. */
  kept(run: string): void {
    this.tell({ kind: 'kept', run });
  }

  /** Calls when another tab has changed the list of runs. */
  onList(listener: () => void): () => void {
    const hears = ({ kind }: Message) => kind === 'list' && listener();
    this.listeners.add(hears);
    return () => this.listeners.delete(hears);
  }

  /** Tells other tabs that the list of runs has changed. */
  listChanged(): void {
    this.tell({ kind: 'list' });
  }

  private tell(message: Message): void {
    this.channel?.postMessage(message);
  }
}
