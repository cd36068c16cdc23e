import { describe, expect, it } from 'vitest';
import { weltChecks } from '../../../../src/core/plan/checks/welt';
import type { Style } from '../../../../src/core/bottom/style';

const welted = (own: Partial<Style>) => {
  const style = { code: 'A', welt: 'Welt 3', weltWidth: 12, lastedSubstance: 4, projection: 0, ...own } as Style;
  return weltChecks({ style }).map(({ verdict, ...check }) => [verdict, 'found' in check && check.found]);
};

// By hand, against the 3 mm that a stitch wants (common practice): what shows is the projection, and never more than the
// strip has beyond the lasted substance.
describe('room for the stitch on a welt', () => {
  it.each<[string, Partial<Style>, number | undefined]>([
    ['flush with the upper: nothing shows', {}, 0],
    ['inside of the upper: nothing shows', { projection: -2 }, 0],
    ['2 mm', { projection: 2 }, 2],
    ['3 mm are enough', { projection: 3 }, undefined],
    ['4 mm, a close waist', { projection: 4, projectionWaist: 0 }, undefined],
    ['4 mm, 1 mm at the toe', { projection: 4, projectionToe: 1 }, 1],
    ['blank, but toe and tread have their own', { projectionToe: 4, projectionTread: 5 }, undefined],
    ['5 mm, but of 6 mm of welt the upper takes 4', { projection: 5, weltWidth: 6 }, 2],
    ['no welt', { welt: undefined }, undefined],
  ])('%s', (_, own, found) => {
    expect(welted(own)).toEqual(found === undefined ? [] : [['lookAt', found]]);
  });
});
