import { describe, expect, it } from 'vitest';
import { fewestSheets } from '../../../../src/core/cutting/search/fewest-sheets';
import { shortenRoll } from '../../../../src/core/cutting/search/shorten-roll';
import { perform } from '../../../../src/core/cutting/search/perform';
import { complaints } from '../oracle';
import { rectangle } from '../outlines';

const FORMAT = { length: 1000, width: 100, knifeRoom: 0, edgeTrim: 0 };
const PIECES = [{ key: 'square', ring: rectangle(40, 40), count: 6, way: { kind: 'oneWay' } as const }];
const SPREAD = Array.from({ length: 6 }, (_, i) => ({ piece: 0, x: 150 * i, y: 30, turn: 0 }));
const reach = (placements: readonly { readonly x: number }[]) => Math.max(...placements.map(({ x }) => x + 40));

describe('shortenRoll', () => {
  it('draws pieces together: six squares of 40 mm on a roll of 100 mm take three times 40 mm', () => {
    const task = { kind: 'roll', pieces: PIECES, turns: [[0]], format: FORMAT, placements: SPREAD } as const;
    const reaches: number[] = [];
    const { placements } = shortenRoll({ ...task, evaluations: 3e5, seed: 1 }, { stopped: false }, (shorter) =>
      reaches.push(reach(shorter.placements)),
    );
    // Derived; corners are not cut off a square, so nothing but the search's last step is lost.
    expect(reach(placements)).toBeGreaterThanOrEqual(120 - 1e-3);
    expect(reach(placements)).toBeLessThan(122);
    expect(complaints(PIECES, FORMAT, [placements])).toEqual([]);
    expect(reaches).toEqual([...reaches].sort((a, b) => b - a));
  });

  it('is what a search on a roll does', () => {
    const start = { offcuts: [], sheets: [SPREAD] };
    const steps = fewestSheets({ pieces: PIECES, format: FORMAT, effort: 0.3, seed: 1, start });
    let step = steps.next();
    while (!step.done) step = steps.next(step.value.tasks.map((task) => perform(task, { stopped: false })));
    expect(reach(step.value.layout.sheets[0]!)).toBeLessThan(122);
    expect(complaints(PIECES, FORMAT, step.value.layout.sheets)).toEqual([]);
  });
});
