import { describe, expect, it } from 'vitest';
import { stepsBySize } from '../../../src/drawing/paper/steps-by-size';
import { decimals } from '../../../src/tables/figures';
import { stepInWords } from '../../../src/tables/step-in-words';
import { demoPlan } from '../demo-plan';

const { plan } = demoPlan();

describe('the steps of all sizes of a style', () => {
  it.each(plan.runs.styles.map(({ style }) => style.code))('say of every size what its own ticket says: %s', (code) => {
    const lines = plan.ticket(code);
    const groups = stepsBySize(lines);
    const sizes = groups.flatMap((group) => group.sizes);
    expect(new Set(sizes)).toEqual(new Set(lines.map(({ sizeRun }) => sizeRun)));
    expect(sizes).toHaveLength(new Set(sizes).size);
    for (const group of groups) {
      group.sizes.forEach((size, at) => {
        const own = lines.filter(({ sizeRun }) => sizeRun === size);
        expect(own).toHaveLength(group.steps.length);
        group.steps.forEach(({ words, figures }, step) => {
          const filled = figures.reduce((said, { what, values }) => said.replace(what, values[at] ?? ''), words);
          expect(filled).toBe(stepInWords(own[step]!));
          const back = figures.find(({ what }) => what === 'at back')?.values[at];
          const height = own[step]!.step.height?.back;
          expect(back).toBe(height === undefined ? undefined : decimals(height, 1));
        });
      });
    }
  });

  it('have a letter for what differs and none for what does not', () => {
    const [group] = stepsBySize(plan.ticket('Betony'));
    for (const { figures } of group!.steps) {
      for (const { what, values } of figures) if (what.startsWith('[')) expect(new Set(values).size).toBeGreaterThan(1);
    }
    expect(group!.sizes.length).toBeGreaterThan(1);
  });
});
