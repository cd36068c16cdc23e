import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { workerThread } from '../../src/cli/worker-threads';
import { perform } from '../../src/core/cutting/search/perform';
import { reading } from '../../src/functions/plan-arguments';
import { Crew, type WorkerLike } from '../../src/workers/crew';
import { searchStock } from '../../src/workers/search-stock';
import { layoutsTable } from '../../src/tables/layouts';
import { headingOf } from '../../src/tables/result';
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

describe('LAYOUTSEARCH as it ships', { timeout: 120_000 }, () => {
  it('searches in the workers that its host starts, and finds what a search in place finds', async () => {
    const files: string[] = [];
    const hire = (file: string): WorkerLike => {
      files.push(file);
      return workerThread(readFileSync(`dist/${file}`, 'utf8'));
    };
    const columns = Object.entries(layoutsTable.columns);
    const wanted: unknown[][] = [columns.map(([, column]) => headingOf(column))];
    const { plan } = reading([few, styles, lasts, stock, rates, outlines] as never);
    for (const cutting of plan.cutting.stocks) {
      const crew = new Crew(perform, undefined, 0);
      const { layouts } = await searchStock(cutting, EFFORT, 1, () => undefined, { stopped: false }, crew);
      wanted.push(...layouts.map((row) => columns.map(([name]) => (row as never)[name] ?? '')));
    }
    expect(JSON.parse(JSON.stringify(await searched({ hire })))).toEqual(JSON.parse(JSON.stringify(wanted)));
    expect(wanted.length).toBeGreaterThan(1);
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
