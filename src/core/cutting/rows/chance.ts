import type { Later } from './fill-rows';
import { mixed } from './supply';

/** Shares drawn by chance, 0 ≤ share < 1, every share alike, the same ones every time. */
export function chance(): () => number {
  let drawn = 0;
  return () => (mixed(++drawn) >>> 0) / 2 ** 32;
}

/** Rows of a sheet begin now and then with a lower piece than they could, on some sheets more often than on others. */
export function laterBy(share: () => number): Later {
  const often = share();
  return () => {
    if (share() >= often) return 0;
    const drawn = share();
    // By the root, which is rounded alike everywhere, as powers are not.
    return drawn * Math.sqrt(drawn);
  };
}
