import type { Raster } from './read-pdf';

/** Where a rendered page has ink, asked in mm from its upper left corner. */
export class Ink {
  constructor(private readonly raster: Raster) {}

  private dark(column: number, row: number): boolean {
    const { width, height, data } = this.raster;
    if (column < 0 || row < 0 || column >= width || row >= height) return false;
    return (data[4 * (row * width + column)] as number) < 128;
  }

  /** Whether there is ink within `off` of a place. */
  near(x: number, y: number, off: number): boolean {
    const { perMm } = this.raster;
    const [column, row, reach] = [x * perMm, y * perMm, off * perMm];
    for (let k = Math.floor(row - reach); k <= row + reach; k++) {
      for (let i = Math.floor(column - reach); i <= column + reach; i++) {
        if (Math.hypot(i + 0.5 - column, k + 0.5 - row) <= reach && this.dark(i, k)) return true;
      }
    }
    return false;
  }

  /** The middle of the first line met from a place on the way (dx, dy), in mm along that way. */
  firstLine(x: number, y: number, dx: number, dy: number): number {
    const { perMm, width, height } = this.raster;
    const at = (i: number) => this.dark(Math.floor(x * perMm + i * dx), Math.floor(y * perMm + i * dy));
    const most = Math.max(width, height);
    let from = 0;
    while (from < most && !at(from)) from++;
    let to = from;
    while (to < most && at(to)) to++;
    if (from >= most) throw new Error('No line is met.');
    return (from + to) / 2 / perMm;
  }

  /** How long the ink goes on without a gap from the first met from a place on the way (dx, dy), mm. */
  run(x: number, y: number, dx: number, dy: number): number {
    const { perMm, width, height } = this.raster;
    const at = (i: number) => this.dark(Math.floor(x * perMm + i * dx), Math.floor(y * perMm + i * dy));
    let from = 0;
    while (from < Math.max(width, height) && !at(from)) from++;
    let to = from;
    while (at(to)) to++;
    return (to - from) / perMm;
  }

  /** The box about all ink that hangs together with the first met from a place toward the right, mm. */
  connected(x: number, y: number): { left: number; right: number; top: number; bottom: number } {
    const { perMm, width } = this.raster;
    let column = Math.floor(x * perMm);
    const row = Math.floor(y * perMm);
    while (column < width && !this.dark(column, row)) column++;
    const open: [number, number][] = [[column, row]];
    const seen = new Set([row * width + column]);
    const found = { left: column, right: column, top: row, bottom: row };
    for (let next = open.pop(); next; next = open.pop()) {
      const [i, k] = next;
      found.left = Math.min(found.left, i);
      found.right = Math.max(found.right, i);
      found.top = Math.min(found.top, k);
      found.bottom = Math.max(found.bottom, k);
      for (const [a, b] of [
        [i - 1, k],
        [i + 1, k],
        [i, k - 1],
        [i, k + 1],
      ] as const) {
        const key = b * width + a;
        if (!seen.has(key) && this.dark(a, b)) {
          seen.add(key);
          open.push([a, b]);
        }
      }
    }
    const { left, right, top, bottom } = found;
    return { left: left / perMm, right: (right + 1) / perMm, top: top / perMm, bottom: (bottom + 1) / perMm };
  }

  /** Middle of a cross near a place: where rows and columns have most ink within `reach` mm. */
  cross(x: number, y: number, reach: number): readonly [number, number] {
    const { perMm } = this.raster;
    const [c, r, n] = [Math.round(x * perMm), Math.round(y * perMm), Math.round(reach * perMm)];
    const peak = (count: (off: number) => number) => {
      const sums = Array.from({ length: 2 * n + 1 }, (_, i) => count(i - n));
      const most = Math.max(...sums);
      const high = sums.flatMap((sum, i) => (sum > 0.9 * most ? [i - n] : []));
      return high.reduce((sum, off) => sum + off, 0) / high.length;
    };
    const span = Array.from({ length: 2 * n + 1 }, (_, i) => i - n);
    const column = peak((off) => span.filter((k) => this.dark(c + off, r + k)).length);
    const row = peak((off) => span.filter((i) => this.dark(c + i, r + off)).length);
    return [(c + column + 0.5) / perMm, (r + row + 0.5) / perMm];
  }
}
