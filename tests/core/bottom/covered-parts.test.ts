import { expect, it } from 'vitest';
import { coveredParts } from '../../../src/core/bottom/covered-parts';
import { type Named, styleOf } from '../samples';

const HEEL: Named = { Raise: 'heel', Lifts: 'Cork 6', Platform: 'Foam 10', Cover: 'Calf 1' };
const partsOf = (named: Named) => coveredParts(styleOf({ ...HEEL, ...named }));

it('are heel and platform where nothing else is said, one of them where it is, and none without a cover', () => {
  expect(partsOf({})).toEqual({ lifts: true, platform: true });
  expect(partsOf({ Covered: 'heel and platform' })).toEqual({ lifts: true, platform: true });
  expect(partsOf({ Covered: 'heel' })).toEqual({ lifts: true, platform: false });
  expect(partsOf({ Covered: 'platform' })).toEqual({ lifts: false, platform: true });
  expect(partsOf({ Cover: '', Covered: 'heel' })).toEqual({ lifts: false, platform: false });
});

it('are none that is not there, or that is covered with another as one', () => {
  expect(() => partsOf({ Platform: '', Covered: 'platform' })).toThrow('there is no platform to cover; leave it blank');
  expect(() => partsOf({ Raise: 'none', Lifts: '', Covered: 'heel' })).toThrow('there is no heel to cover');
  expect(() => partsOf({ Raise: 'wedge', Covered: 'heel' })).toThrow('covered as one; leave it blank');
});
