import { expect, it } from 'vitest';
import { footOutline } from '../../../src/core/last/foot-outline';
import { area } from '../../../src/core/geometry/area';
import { mirror } from '../../../src/core/geometry/mirror';
import { RAMP_LENGTH, rampOutline } from '../ramp';

// Derived: each side of a rectangle comes 2 mm further out, and its corners stay square.
it('the outline of a foot is let out all round, and the right foot’s is the left foot’s mirror image', () => {
  const left = footOutline(rampOutline, 'left', 2);
  expect(area(left)).toBeCloseTo((RAMP_LENGTH + 4) * 64, 6);
  expect(footOutline(rampOutline, 'right', 2)).toEqual(mirror(left));
});
