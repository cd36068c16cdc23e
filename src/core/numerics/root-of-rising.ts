/**
 * The root of a rising function between two bounds: by the false position that halves the value at an end which stays
 * (Dowell and Jarratt 1971), and by halving wherever that closes in more slowly.
 * @param halvings how often the span is halved at least, in effect
 * @returns undefined where the function has one sign over the whole span.
 */
export function rootOfRising(f: (t: number) => number, low: number, high: number, halvings = 60): number | undefined {
  let a = low;
  let b = high;
  let atA = f(low);
  if (atA > 0) return undefined;
  let atB = f(high);
  if (atB < 0) return undefined;
  if (atA === 0) return low;
  const enough = (high - low) / 2 ** halvings;
  let slow = 0;
  /** The end that stayed in the step before. */
  let stayed: 'low' | 'high' | undefined;
  while (b - a > enough) {
    const middle = (a + b) / 2;
    if (middle <= a || middle >= b) break;
    const width = b - a;
    const guess = slow < PATIENCE ? a - (atA * width) / (atB - atA) : middle;
    const t = guess > a && guess < b ? guess : middle;
    const at = f(t);
    if (at === 0) return t;
    if (at < 0) {
      a = t;
      atA = at;
      if (stayed === 'high') atB /= 2;
      stayed = 'high';
    } else {
      b = t;
      atB = at;
      if (stayed === 'low') atA /= 2;
      stayed = 'low';
    }
    slow = b - a > width / 2 ? slow + 1 : 0;
  }
  return (a + b) / 2;
}

/** Steps in a row that may halve the span by less than a halving. */
const PATIENCE = 3;
