import type { NoFitRegion } from '../../geometry/no-fit-region';
import { freeFrom } from './free-from';
import type { Hindrance } from './shapes';

/**
 * Numbers kept for a hindrance: the box about it on the sheet as a sweep comes to it (where it begins along the sweep, its
 * foot, where it ends along the sweep, its top), where its origin lies, and its sign.
 */
const NUMBERS = 7;

/** What keeps a piece off the places of a sheet: the sheet itself, then the pieces laid. */
export class Hindrances {
  /** In the order in which they were added. */
  private readonly regions: NoFitRegion[] = [];
  /** Most hindrances lie nowhere near a place: their boxes stand together. */
  private numbers = new Float64Array(NUMBERS * 32);
  /** Places in `numbers` in the order in which the sweep comes to the hindrances. */
  private readonly met: number[] = [];
  private readonly fixed: number;

  /** @param step 1 where places move on to the right, −1 where to the left */
  constructor(
    fixed: readonly NoFitRegion[],
    private readonly step: 1 | -1,
  ) {
    for (const region of fixed) this.add({ region, sign: 1 }, 0, 0);
    this.fixed = fixed.length;
  }

  /** How many pieces laid are among them. */
  get pieces(): number {
    return this.regions.length - this.fixed;
  }

  /** @param x where the piece laid has its origin */
  add({ region, sign }: Hindrance, x: number, y: number): void {
    const { step, met } = this;
    const at = NUMBERS * this.regions.length;
    this.regions.push(region);
    if (at + NUMBERS > this.numbers.length) {
      const larger = new Float64Array(2 * this.numbers.length);
      larger.set(this.numbers);
      this.numbers = larger;
    }
    const { left, bottom, right, top } = region.box;
    const { numbers } = this;
    const [leftEnd, rightEnd] = sign === 1 ? [x + left, x + right] : [x - right, x - left];
    numbers[at] = step === 1 ? leftEnd : -rightEnd;
    numbers[at + 1] = y + (sign === 1 ? bottom : -top);
    numbers[at + 2] = step === 1 ? rightEnd : -leftEnd;
    numbers[at + 3] = y + (sign === 1 ? top : -bottom);
    numbers[at + 4] = x;
    numbers[at + 5] = y;
    numbers[at + 6] = sign;
    let k = met.length;
    for (; k > 0 && numbers[met[k - 1]!]! > numbers[at]!; k--) met[k] = met[k - 1]!;
    met[k] = at;
  }

  /**
   * The first place on a level line, from one on, that none of them hinders; infinite where there is none up to a limit.
   * A place that several keep moving on comes to lie behind the same ones in whatever order they are asked.
   */
  free(x: number, y: number, limit: number): number {
    const { numbers, met, step } = this;
    let next = x;
    // Those from here on have not moved the place since it came to be where it is.
    let end = met.length;
    for (let last = end; last >= 0;) {
      last = -1;
      for (let k = 0; k < end; k++) {
        const at = met[k]!;
        const along = step * next;
        // Nor do those that the sweep comes to later stand in the way.
        if (along <= numbers[at]!) break;
        if (along >= numbers[at + 2]! || y < numbers[at + 1]! || y > numbers[at + 3]!) continue;
        const free = this.past(at, next, y);
        if (free === next) continue;
        if (step * free > limit) return step * Infinity;
        next = free;
        last = k;
        end = met.length;
      }
      end = last;
    }
    return next;
  }

  /** Whether a place is hindered by none of the pieces laid after the first few. */
  keepsClear(x: number, y: number, since: number): boolean {
    const { numbers, regions, step } = this;
    const along = step * x;
    for (let at = NUMBERS * (this.fixed + since), end = NUMBERS * regions.length; at < end; at += NUMBERS) {
      if (along <= numbers[at]! || along >= numbers[at + 2]!) continue;
      if (y < numbers[at + 1]! || y > numbers[at + 3]!) continue;
      if (this.past(at, x, y) !== x) return false;
    }
    return true;
  }

  /** How far one of them moves a place on. @param at where it stands in the numbers */
  private past(at: number, x: number, y: number): number {
    const { numbers, step } = this;
    const laidX = numbers[at + 4]!;
    const sign = numbers[at + 6]!;
    const from = sign * (x - laidX);
    const free = freeFrom(this.regions[at / NUMBERS]!, from, sign * (y - numbers[at + 5]!), sign === step ? 1 : -1);
    return free === from ? x : sign * free + laidX;
  }
}
