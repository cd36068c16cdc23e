/** A piece's place: its shape (kind and turn) and where the middle of its box lies. */
export interface Place {
  readonly shape: number;
  readonly x: number;
  readonly y: number;
}

/** How many places are sampled about where a piece lies and anywhere. */
export interface Samples {
  readonly near: number;
  readonly anywhere: number;
}
