import { describe, expect, it } from 'vitest';
import type { Named } from '../samples';
import { built, stepsFor } from './samples';

const HEEL: Named = {
  Raise: 'heel',
  Lifts: 'Cork 6, Cork 4',
  Laying: 'block',
  Sole: 'Bend 4',
  'Top piece': 'Rubber 6',
  'Heel taper': 5,
  'Heel core': 'wood',
  Cover: 'Calf 1',
};
const actsOf = (named: Named) => stepsFor(built({ ...HEEL, ...named })).flatMap(({ acts }) => acts);

describe('covering a heel', () => {
  it('closes the seam in the breast where the sole goes to the back (maker’s page, 2013)', () => {
    const acts = actsOf({});
    expect(acts).toContain('close seam');
    expect(acts).not.toContain('turn in');
  });

  it('turns the ends in on to the breast where a flap of the sole hides them, and has no seam', () => {
    const acts = actsOf({ 'Sole ends': 'down the breast' });
    expect(acts).toContain('turn in');
    expect(acts).not.toContain('close seam');
  });
});
