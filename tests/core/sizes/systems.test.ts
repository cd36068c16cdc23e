import { describe, expect, it } from 'vitest';
import { SIZE_SYSTEMS, SYSTEM_RULES } from '../../../src/core/sizes/systems';

describe('the size systems', () => {
  it('each have a rule', () => {
    expect(Object.keys(SYSTEM_RULES).sort()).toEqual([...SIZE_SYSTEMS].sort());
  });

  it('step by two thirds of a centimetre on the continent and a third of an inch in English and US sizes (Wikipedia, "Shoe size")', () => {
    expect(SYSTEM_RULES.EU.step).toBeCloseTo(20 / 3, 12);
    for (const system of ['UK', 'UKCHILD', 'USMEN', 'USWOMEN', 'USWOMENDEVICE', 'USCHILD'] as const) {
      expect(SYSTEM_RULES[system].step).toBeCloseTo(25.4 / 3, 12);
    }
  });

  it('give a foot of ten inches its size (Wikipedia, "Shoe size": UK 3 × 10 − 23, child − 10, US men − 22, women − 20.5 and − 21 by the device, child − 9 2/3)', () => {
    const sizes = (['UK', 'UKCHILD', 'USMEN', 'USWOMEN', 'USWOMENDEVICE', 'USCHILD'] as const).map((system) => {
      const { step, zero } = SYSTEM_RULES[system];
      return 254 / step + zero;
    });
    [7, 20, 8, 9.5, 9, 61 / 3].forEach((wanted, i) => expect(sizes[i]).toBeCloseTo(wanted, 9));
  });

  it('imply a last 13.33 mm longer than the foot on the continent, 16.93 mm in English sizes (derived from both formulas)', () => {
    expect(SYSTEM_RULES.EU.toeAllowance).toBeCloseTo(13.33, 2);
    expect(SYSTEM_RULES.UK.toeAllowance).toBeCloseTo(16.93, 2);
  });

  it('mark the foot itself in Mondopoint, Japan, China and Korea (ISO 9407:2019; JIS S 5037; common practice)', () => {
    expect(SYSTEM_RULES.MONDO).toMatchObject({ step: 1, zero: 0, marked: 5 });
    expect(SYSTEM_RULES.JP).toMatchObject({ step: 10, zero: 0, marked: 0.5 });
    expect(SYSTEM_RULES.CN).toEqual(SYSTEM_RULES.KR);
  });
});
