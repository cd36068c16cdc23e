/** Work that is done step by step, for whoever may not block; the last step gives what it comes to. */
export type Stepwise<T> = Generator<void, T, void>;

/** All of it at once. */
export function finished<T>(work: Stepwise<T>): T {
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}
