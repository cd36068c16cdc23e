import type { Variation } from './fill-rows';
import { mixed } from './supply';

/** How often a sheet's rows go on to its end; else they end after a few, and the rest is filled either way. */
const TO_THE_END = 0.6;
const MOST_ROWS = 4;

/** Variations by chance, the same every time. */
export class Chance {
  private drawn = 0;

  /** 0 ≤ share < 1, every share alike. */
  share(): number {
    return (mixed(++this.drawn) >>> 0) / 2 ** 32;
  }

  /** Rows of a sheet that begin now and then with a lower piece than they could, on some sheets more often than on others. */
  rows(): Variation {
    const often = this.share();
    const rows = this.share() < TO_THE_END ? Infinity : 1 + Math.floor(MOST_ROWS * this.share());
    return { rows, later: () => (this.share() < often ? this.share() ** 1.5 : 0) };
  }
}
