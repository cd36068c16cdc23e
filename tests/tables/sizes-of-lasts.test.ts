import { describe, expect, it } from 'vitest';
import type { Cell, Cells } from '../../src/tables/cell';
import { sizeColumns, sizesOfLasts } from '../../src/tables/sizes-of-lasts';

const EU = [36, 37, 38, 39, 40, 41, 42];

/** Tables of a run whose styles stand on lasts of some systems, with sizes in Pairage and what stands under them. */
function tablesOf(
  lasts: readonly (readonly [code: string, system: string, base: number])[],
  sizes: readonly number[],
  ...pairs: readonly (readonly Cell[])[]
): ReadonlyMap<string, Cells> {
  const [named] = lasts[0] ?? [];
  return new Map<string, Cells>([
    ['Pairage', [['Style', 'Customer', ...sizes, 'Pairs'], ...pairs, ['All', '', ...sizes.map(() => 3)]]],
    [
      'Styles',
      [
        ['Style', 'Last'],
        ['Rigg', named],
      ],
    ],
    ['Lasts', [['Last', 'System', 'Base size'], ...lasts]],
  ]);
}

describe('sizes of a run', () => {
  it('are those of the same feet in the system of its lasts', () => {
    // EU 36 and 42 are UK 3.77 and 8.49 (convertSize, checked against published tables): outwards to halves.
    expect(sizesOfLasts(tablesOf([['Fell', 'UK', 5]], EU, ['Rigg']))).toMatchObject({
      system: 'UK',
      from: 3.5,
      to: 8.5,
    });
    expect(sizesOfLasts(tablesOf([['Fell', 'UK', 10]], EU, ['Rigg']))).toMatchObject({ from: 3.5, to: 10 });
    // No system has all of these.
    expect(sizesOfLasts(tablesOf([['Fell', 'UK', 5]], [36, 900], ['Rigg']))).toMatchObject({ from: 5, to: 5 });
  });

  it('stay those that are there where the lasts have them', () => {
    const found = sizesOfLasts(tablesOf([['Fell', 'EU', 38]], EU, ['Rigg', '', 1]));
    expect(found).toEqual({ system: 'EU', from: 36, to: 42, idle: [] });
  });

  it('go by the lasts that the styles of the run name, else by all of them', () => {
    const both = [
      ['Fell', 'UK', 5],
      ['Tarn', 'EU', 38],
    ] as const;
    expect(sizesOfLasts(tablesOf(both, EU, ['Rigg']))?.system).toBe('UK');
    expect(sizesOfLasts(tablesOf(both, EU, ['Example']))).toBeUndefined();
    expect(sizesOfLasts(tablesOf([['Fell', 'MONDO', 240]], EU, ['Rigg']))).toBeUndefined();
  });

  it('are idle where no last has them and no pairs stand under them, but in an example or in sums', () => {
    const uk = [['Fell', 'UK', 5]] as const;
    const sizes = [3, 4, 36, 37, 38];
    const tables = tablesOf(uk, sizes, ['Rigg', '', 1, 1, '', 2], ['Example', '', '', '', 4]);
    const idle = (isExample?: (line: readonly Cell[]) => boolean) =>
      sizesOfLasts(tables, isExample)?.idle.map(({ size }) => size);
    expect(idle()).toEqual([38]);
    expect(idle(([code]) => code === 'Example')).toEqual([36, 38]);
    expect(sizesOfLasts(tables)).toMatchObject({ from: 3, to: 4 });
  });
});

describe('columns of a run', () => {
  const headings = ['Style', 'Customer', 36, 37, 38, 'Pairs'];
  const idle = [36, 37, 38].map((size, i) => ({ size, at: 2 + i }));

  it('are headed anew where all are idle, and the others come behind them', () => {
    expect(sizeColumns(headings, 3, 5, 0.5, idle)).toEqual({
      headed: [
        { column: 2, was: 36, heading: 3 },
        { column: 3, was: 37, heading: 3.5 },
        { column: 4, was: 38, heading: 4 },
      ],
      added: [
        { before: 5, heading: 4.5 },
        { before: 5, heading: 5 },
      ],
    });
    expect(sizeColumns(headings, 3, 4, 1, idle)).toMatchObject({ headed: [{ heading: 3 }, { heading: 4 }], added: [] });
  });

  it('stay and have others put between them where one of them is in use', () => {
    const [first, ...others] = idle;
    expect(first?.size).toBe(36);
    expect(sizeColumns(headings, 36, 37, 0.5, others)).toEqual({ headed: [], added: [{ before: 3, heading: 36.5 }] });
  });
});
