/** A size rounded to a step, halves up. */
export function toStep(exact: number, step: number): number {
  // The nudge keeps what is a half in decimals from falling below it in binary.
  return Math.floor(exact / step + 0.5 + 1e-9) * step;
}
