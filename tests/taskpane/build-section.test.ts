import { describe, expect, it } from 'vitest';
import { Plan } from '../../src/core/plan/plan';
import { buildSection } from '../../src/taskpane/build-section';
import type { PictureFrame } from '../../src/taskpane/picture-frame';
import type { Watched } from '../../src/taskpane/watched';
import { figuresOf } from '../../src/tables/figures';
import { inputOf, type Named, USUAL_TABLES } from '../core/samples';
import { words } from './words-of';

// Flat on a last with a heel of 45: off by all of it.
const FLAT = { ...USUAL_TABLES.styles[0], Raise: 'none', Lifts: '' };

function shown(rates: readonly Named[], style: Named = FLAT): string {
  const plan = new Plan(inputOf({ styles: [style], rates }));
  const [run] = plan.runs.styles;
  const [sizeRun] = run!.sizes;
  const watched = {
    run,
    sizeRun,
    bottom: sizeRun!.bottom,
    shown: { foot: 'L', item: 1 },
    standing: { kind: 'plan', plan },
    sound: plan,
  } as unknown as Watched;
  const frame = { view: () => '' } as unknown as PictureFrame;
  return words(buildSection(watched, () => undefined, frame, figuresOf('metric'), 400));
}

describe('the build in the pane', () => {
  it('judges the heel by the maker’s own limit, as Checks does', () => {
    expect(shown([])).toContain('put right');
    const wide = shown([{ Item: 'Heel control', Value: 46, Unit: 'limit' }]);
    expect(wide).toContain('holds');
    expect(wide).not.toContain('put right');
  });

  it('shows the packing that stands under the seat for a welt, and that the insole is not counted', () => {
    // Bend of 4 as sole and welt: the welt's 4 count under the tread, its packing's under the seat (derived).
    const welted = { ...FLAT, Platform: '', Sole: 'Bend 4', Insole: 'Board 2', Welt: 'Bend 4' };
    const said = shown([], welted).replace(/\s+/g, ' ');
    expect(said).toContain('Packing of the seat, for the welt');
    expect(said).toContain('Insole from Board 2 , not counted');
    // The widths of columns go by their place in the row: a cell across two would give its own width to the names.
    const rows = said.match(/<tr.*?<\/tr>/g) ?? [];
    expect(rows.length).toBeGreaterThan(3);
    for (const row of rows) expect(row.match(/<td[^>]*>/g)?.join(' ')).toMatch(/^(<td( class="num")?>\s?){5}$/);
    expect(said).toContain('The insole belongs to the lasted bottom');
    expect(shown([], { ...welted, 'Welt ends': 'all round' })).not.toContain('Packing of the seat');
    expect(shown([])).not.toContain('The insole belongs');
  });
});
