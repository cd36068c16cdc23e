import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workerThread } from '../../src/cli/worker-threads';
import type { WorkerLike } from '../../src/workers/crew';
import { loadBundle } from '../bundle';
import { planArguments } from '../demo-cells';

const EFFORT = 1;
const [pairage, styles, lasts, stock, rates, outlines] = planArguments() as readonly unknown[][][];
/** Three pairs a size of one style of the demo: 30 soles, which the quick rows lay on two sheets where one is least. */
const few = [
  pairage![0]!,
  pairage!.find(([style]) => style === 'Teasel')!.map((cell, at) => (at > 2 && typeof cell === 'number' ? 3 : cell)),
];
const asked = [few, styles, lasts, stock, outlines, EFFORT, null, null, null];

/** Calls the function as it ships, under a host that has what is given besides. */
const searched = async (host: object = {}) =>
  (await loadBundle({ setInterval, clearInterval }, host).associated.get('LAYOUTSEARCH')!(...asked, {})) as unknown[][];

describe('LAYOUTSEARCH as it ships', { timeout: 300_000 }, () => {
  it('searches in the workers that its host starts, and the plan lays by what they find', async () => {
    const files: string[] = [];
    const hire = (file: string): WorkerLike => {
      files.push(file);
      return workerThread(readFileSync(`dist/${file}`, 'utf8'));
    };
    const [headings, ...rows] = await searched({ hire });
    expect(headings).toEqual(['Stock', 'Sheet', 'Format', 'Offcut', 'Piece', 'x\nmm', 'y\nmm', 'Turn\n°']);
    // The plan lays by them what it is given, so they are sound: it verifies each layout before.
    const cutting = loadBundle().call('CUTTING', few, styles, lasts, stock, rates, outlines, [headings, ...rows]);
    const laid = (cutting as unknown[][]).map((line) => [line[0], line.at(-1)]);
    expect(laid).toContainEqual(['Foam 18', 'search']);
    expect(new Set(files)).toEqual(new Set(['search.js']));
  });

  it('says where it cannot search: where there are no workers and no page', async () => {
    await expect(searched()).rejects.toMatchObject({
      code: '#N/A',
      message:
        'search: this program has no workers to search with. Search in the pane, and put what it finds into Layouts',
    });
  });

  it('tells of slips at once, workers or none', () => {
    const { associated } = loadBundle();
    expect(() => associated.get('LAYOUTSEARCH')!(...(asked as unknown[]).with(5, 'long'), {})).toThrow(/effort/);
  });
});
