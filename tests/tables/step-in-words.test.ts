import { describe, expect, it } from 'vitest';
import { Plan } from '../../src/core/plan/plan';
import { stepInWords } from '../../src/tables/step-in-words';
import { inputOf, type Named, USUAL_TABLES } from '../core/samples';

const said = (named: Named) =>
  new Plan(
    inputOf({
      styles: [{ ...USUAL_TABLES.styles[0], ...named }],
      rates: [{ Item: 'Press', Value: 2, Unit: 'minutes pressed' }],
    }),
  )
    .ticket('Sorrel', 38)
    .map((step) => `${step.layer.part}: ${stepInWords(step)}`);
const of = (list: readonly string[], part: string) => list.filter((one) => one.startsWith(part));

describe('what to do with a piece', () => {
  it('says of a flat lift to skive its upper face, of a bent one its lower, of a block to saw and rasp it', () => {
    expect(of(said({}), 'lift').every((one) => one.includes('skive the front of the upper face'))).toBe(true);
    const bent = of(said({ Laying: 'bent', 'Most rasping': 3 }), 'lift');
    expect(
      bent.every((one) => one.includes('taper the front of the lower face') && one.includes('bend it to the last')),
    ).toBe(true);
    const block = of(said({ Laying: 'block' }), 'lift');
    expect(block.filter((one) => one.includes('saw and rasp'))).toHaveLength(1);
    expect(block.some((one) => one.includes('skive the front'))).toBe(false);
  });

  it('says which faces to make ready and how, by the material', () => {
    const list = said({ Sole: 'Bend 4' });
    expect(of(list, 'platform')[0]).toContain('both faces: roughen, prime, coat');
    expect(of(list, 'sole')[0]).toContain('both faces: roughen the grain; thin first coat, then a second');
    expect(of(list, 'lift')[0]).toContain('both faces: dust off');
  });

  it('sews a welt, tacks an insole, and checks the heel height at the ground', () => {
    const list = said({ Insole: 'Board 2', Welt: 'Bend 4' });
    expect(of(list, 'welt')[0]).toContain('sew round the lasted edge');
    expect(of(list, 'insole')[0]).toContain('tack to the last');
    expect(of(list, 'outsole')[0]).toContain('check heel height, wobble and pair');
    expect(of(list, 'platform')[0]).toContain('press');
  });
});
