import type { Token } from '../workers/run';

type State = { readonly kind: 'none' | 'running' | 'failed' } | { readonly kind: 'found'; readonly written: boolean };

/** At most one search at a time; what one that was dropped, or that another has replaced, still says is passed over. */
export class OneSearch<S extends State> {
  private token = { stopped: false };

  state: S;

  /** @param none how it stands before the first */
  constructor(
    private readonly none: S,
    private readonly changed: () => void,
  ) {
    this.state = none;
  }

  /** Ends the search that is running; what it has found until then is its answer. */
  stop(): void {
    this.token.stopped = true;
  }

  /** What was found stands in the table now. */
  wrote(): void {
    if (this.state.kind === 'found') this.become({ ...this.state, written: true });
  }

  /** What was written has been taken out again; it can still be written. */
  takenBack(): void {
    if (this.state.kind === 'found' && this.state.written) this.become({ ...this.state, written: false });
  }

  drop(): void {
    this.replaced();
    this.become(this.none);
  }

  /** Ends what is running, whatever it has found; the token of what begins in its place. */
  protected replaced(): Token {
    this.stop();
    return (this.token = { stopped: false });
  }

  /** @param from the search that says so, where one does */
  protected become(state: S, from: Token = this.token): void {
    if (from !== this.token) return;
    this.state = state;
    this.changed();
  }
}
