import { describe, expect, it } from 'vitest';
import { Plan } from '../../../src/core/plan/plan';
import { PAPERS } from '../../../src/drawing/paper/page';
import { ticketPages } from '../../../src/drawing/paper/ticket-pages';
import { inputOf } from '../../core/samples';
import { whole } from './jobs';

describe('the ticket of a size', () => {
  // A run with half sizes soon has more than a dozen.
  const sizes = Array.from({ length: 15 }, (_, i) => String(35 + i / 2));
  const pairage = [
    { Style: 'Betony', Customer: 'Shop', ...Object.fromEntries(sizes.map((size, i) => [size, 70 + i])) },
  ];
  const pages = whole(
    ticketPages({
      plan: new Plan(inputOf({ pairage })),
      run: 'Many sizes',
      date: '14 Jun 2026',
      paper: PAPERS.A4,
    }),
  );

  it('lists the pairs of every size of the style, its own among them, above the steps', () => {
    const page = pages.find(({ name }) => /^Betony, EU 42(, 1)?$/.test(name));
    const texts = (page?.draw(1, 1) ?? []).flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
    const head = texts.findIndex(({ words }) => words.startsWith('Pairs by size, '));
    expect(texts[head]?.words).toBe(`Pairs by size, ${15 * 70 + 105} in all`);
    const listed = texts.slice(head + 1, head + 31);
    expect(listed.map(({ words }) => words)).toEqual(sizes.flatMap((size, i) => [size, String(70 + i)]));
    expect(listed.filter(({ lettering }) => lettering === 'bold').map(({ words }) => words)).toEqual(['42', '84']);
    const steps = texts.find(({ words }) => words === 'What to do');
    expect(Math.max(...listed.map(({ at }) => at[1]))).toBeLessThan(steps?.at[1] ?? 0);
  });
});
