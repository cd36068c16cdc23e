import { describe, expect, it } from 'vitest';
import { piecesInWords, stepInWords } from '../../src/tables/step-in-words';
import { built, demoPlan } from '../drawing/demo-plan';

const { plan } = demoPlan();
const said = (style: string, size: number) => plan.ticket(style, size).map(stepInWords);

describe('what to do in a step', () => {
  it('names pieces by part and number, neighbours together', () => {
    const { layers } = built(plan, 'Betony', 38).sizeRun.bottom;
    expect(piecesInWords(layers)).toBe('Lifts 8 to 1, Platform 9, Outsole 10');
    expect(piecesInWords([])).toBe('');
  });

  it('says what is rasped on the piece that it comes off', () => {
    expect(said('Betony', 38)).toContain('rasp lift 1 to 5.6 mm, the ground face flat');
    expect(said('Fennel', 38)).toContain('rasp platform 12 to 9.0 mm, the ground face flat');
  });

  it('levels what is round at the toe by then up to the tread alone', () => {
    // A platform of more than 20 mm is ground to the toe; what it is glued to is levelled before.
    const fennel = said('Fennel', 38);
    const toe = fennel.findIndex((one) => one.startsWith('too stout to bend'));
    const levels = fennel.flatMap((one, i) => (one.startsWith('level the ground face') ? [[i > toe, one]] : []));
    expect(toe).toBeGreaterThan(0);
    for (const [after, one] of levels) expect(one).toBe(`level the ground face${after ? ' up to the tread' : ''}`);
    const [own] = plan
      .ticket('Fennel', 38)
      .filter(({ step }) => step.acts.includes('level') && step.left === undefined);
    expect(stepInWords({ ...own!, step: { ...own!.step, apart: false } })).toBe(
      'level the ground face up to the tread',
    );
    const round = { ...built(plan, 'Fennel', 38).sizeRun.bottom, through: 12 };
    expect(stepInWords({ ...own!, sizeRun: { ...own!.sizeRun, bottom: round } })).toBe(
      'level the ground face up to the tread',
    );
  });

  it('says of a block how high it is sawn, and rasps nothing of that again', () => {
    const fennel = said('Fennel', 38);
    expect(
      fennel.filter((one) => /^saw the profile by its template, 45\.0 mm at the back, the ground face flat$/.test(one)),
    ).toHaveLength(1);
    expect(fennel.filter((one) => /rasp lift/.test(one))).toEqual([]);
  });

  it('says what is rasped off an edge, a side, and how wide it comes out: 2.0 mm off both sides of Betony’s platform (derived)', () => {
    const { layers } = built(plan, 'Betony', 38).sizeRun.bottom;
    const widest = Math.max(...layers.filter(({ part }) => part === 'platform').map(({ width }) => width));
    expect(said('Betony', 38)).toContain(
      `rasp the edge of all as one: 2.0 mm a side, to ${(widest - 4).toFixed(1)} mm at the widest`,
    );
    // A block is left what its saw needs: 3.0.
    expect(said('Fennel', 38).some((one) => one.startsWith('rasp the edge of all as one: 3.0 mm a side'))).toBe(true);
  });

  it('speaks of the seat where a welt ends there: sewn from side to side, trimmed, packed level with the welt', () => {
    const yarrow = said('Yarrow', 41);
    expect(yarrow).toContain('sew the welt on round the lasted edge, from one side of the seat to the other');
    expect(yarrow).toContain('pack the seat 3.0 mm high, level with the welt');
    expect(yarrow.some((one) => one.startsWith('trim the lasted margin level at the seat'))).toBe(true);
  });

  it('has a sole mellow and dry in steps of their own, and a moulded face pressed on a soft pad', () => {
    expect(said('Yarrow', 41)).toEqual(
      expect.arrayContaining(['soak; wrap, let mellow', 'beat it firm', 'bend to the last; let dry']),
    );
    expect(said('Clover', 38)).toContain('lay the moulded face on a soft pad; press');
  });

  it('starts a cover with the end that its seam at the back has, else with its middle (maker’s page, 2013, for heels)', () => {
    const laid = (style: string) => said(style, 38).find((one) => one.includes('lay the '));
    expect(laid('Fennel')).toMatch(
      /one end on the middle of the back.*cut once through both ends, which go 5.0 mm past it, and close the seam at the back$/,
    );
    expect(said('Fennel', 38)).toContain('skive the margins that are turned');
    expect(said('Bracken', 38)).toContain('skive the margins that are turned, and the ends');
    expect(laid('Comfrey')).toMatch(/middle of the cover on the middle of the back.*ends at the breast$/);
  });

  it('roughens the flesh of a sole, which lies grain out, and its grain under the heel alone', () => {
    const comfrey = said('Comfrey', 38);
    expect(comfrey).toContain('roughen the flesh of sole 18; dust off');
    expect(comfrey.filter((one) => /roughen.*grain under the heel of sole 18/.test(one))).toHaveLength(1);
  });

  it('coats the flesh of a cover all over, and roughens the grain of its turned margin alone', () => {
    const bracken = said('Bracken', 38);
    expect(bracken.some((one) => /coat .*flesh side all over of cover 6/.test(one))).toBe(true);
    expect(bracken).toContain('roughen the grain of the turned-under margin alone of cover 6; dust off');
  });

  it('speaks of the grain of a turned margin at covers alone, never at what they are turned over', () => {
    const margins = plan.runs.styles
      .flatMap(({ style }) => plan.ticket(style.code).map(stepInWords))
      .flatMap((one) => [...one.matchAll(/margin alone of (\w+)/g)].map(([, piece]) => piece));
    expect(margins.length).toBeGreaterThan(2);
    expect(new Set(margins)).toEqual(new Set(['cover']));
  });

  it('gives a skive by the thickness that its piece then has', () => {
    expect(said('Betony', 38).find((one) => one.startsWith('skive') && one.includes('from 5.9 to 0.9'))).toBeDefined();
  });

  it('tells heights, nails and screws with their numbers', () => {
    expect(said('Yarrow', 41).some((one) => one.includes('nail with 3 in a triangle'))).toBe(true);
    expect(said('Comfrey', 38).some((one) => one.includes('5 nails from inside through the insole; one screw'))).toBe(
      true,
    );
    expect(said('Betony', 38).some((one) => one.includes('59.1 mm at the back and 14.1 mm under the tread'))).toBe(
      true,
    );
  });

  it('leaves no step of any style without words', () => {
    for (const { style } of plan.runs.styles) {
      for (const words of plan.ticket(style.code).map(stepInWords)) expect(words).not.toMatch(/^$|undefined|NaN/);
    }
  });
});
