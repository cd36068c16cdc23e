import { describe, expect, it } from 'vitest';
import { Plan } from '../../src/core/plan/plan';
import { buildSection } from '../../src/taskpane/build-section';
import type { PictureFrame } from '../../src/taskpane/picture-frame';
import type { Watched } from '../../src/taskpane/watched';
import { figuresOf } from '../../src/tables/figures';
import { inputOf, type Named, USUAL_TABLES } from '../core/samples';
import { words } from './words-of';

function shown(rates: readonly Named[]): string {
  // Flat on a last with a heel of 45: off by all of it.
  const flat = { ...USUAL_TABLES.styles[0], Raise: 'none', Lifts: '' };
  const plan = new Plan(inputOf({ styles: [flat], rates }));
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
});
