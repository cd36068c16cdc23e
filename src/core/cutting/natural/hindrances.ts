import type { NoFitRegion } from '../../geometry/no-fit-region';
import { freeFrom } from './free-from';
import type { Hindrance } from './shapes';

/** Numbers kept for a hindrance: the box about it on the sheet, where its origin lies, and its sign. */
const NUMBERS = 7;

/** What keeps a piece off the places of a sheet: the sheet itself, then the pieces laid, in their order. */
export class Hindrances {
  private readonly regions: NoFitRegion[] = [];
  /** Most hindrances lie nowhere near a place: their boxes stand together. */
  private numbers = new Float64Array(NUMBERS * 32);
  private readonly fixed: number;

  constructor(fixed: readonly NoFitRegion[]) {
    for (const region of fixed) this.add({ region, sign: 1 }, 0, 0);
    this.fixed = fixed.length;
  }

  /** How many pieces laid are among them. */
  get pieces(): number {
    return this.regions.length - this.fixed;
  }

  /** @param x where the piece laid has its origin */
  add({ region, sign }: Hindrance, x: number, y: number): void {
    const at = NUMBERS * this.regions.length;
    this.regions.push(region);
    if (at + NUMBERS > this.numbers.length) {
      const larger = new Float64Array(2 * this.numbers.length);
      larger.set(this.numbers);
      this.numbers = larger;
    }
    const { left, bottom, right, top } = region.box;
    const { numbers } = this;
    numbers[at] = x + (sign === 1 ? left : -right);
    numbers[at + 1] = y + (sign === 1 ? bottom : -top);
    numbers[at + 2] = x + (sign === 1 ? right : -left);
    numbers[at + 3] = y + (sign === 1 ? top : -bottom);
    numbers[at + 4] = x;
    numbers[at + 5] = y;
    numbers[at + 6] = sign;
  }

  /**
   * How far each of them in turn moves a place on along its level line.
   * @param step 1 to go right, −1 to go left
   * @param since pieces laid that are left out, with the sheet itself: none of it where it is left out
   */
  past(x: number, y: number, step: 1 | -1, since = -this.fixed): number {
    const { regions, numbers } = this;
    let next = x;
    for (let k = this.fixed + since, at = NUMBERS * k; k < regions.length; k++, at += NUMBERS) {
      if (y < numbers[at + 1]! || y > numbers[at + 3]! || next <= numbers[at]! || next >= numbers[at + 2]!) continue;
      const laidX = numbers[at + 4]!;
      const laidY = numbers[at + 5]!;
      const sign = numbers[at + 6]!;
      const from = sign * (next - laidX);
      const free = freeFrom(regions[k]!, from, sign * (y - laidY), sign === step ? 1 : -1);
      if (free !== from) next = sign * free + laidX;
    }
    return next;
  }
}
