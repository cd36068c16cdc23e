import { describe, expect, it } from 'vitest';
import { circle, group, LETTER_SIZES, line, PENS, rectangle, singly, text } from '../../src/drawing/mark';
import { svgOf } from '../../src/drawing/svg';
import { css } from './demo-plan';

/** What drawing.css says of a class, of all rules that name it. */
function ruleOf(name: string): string {
  return [...css.matchAll(/([^{}]+)\{([^{}]*)\}/g)]
    .filter(([, selectors = '']) => selectors.split(',').some((one) => one.trim() === `.draw .${name}`))
    .map(([, , block]) => block)
    .join('');
}

describe('marks', () => {
  it('have in files the widths and dashes that they have on the screen', () => {
    const classes = { wide: 'w', narrow: 'n', dashed: 'hd', chain: 'ch', phantom: 'ph', face: 'fl', cell: 'cell' };
    for (const [pen, { width, dashes }] of Object.entries(PENS)) {
      const rule = ruleOf(classes[pen as keyof typeof classes]);
      expect(rule, pen).toContain(`stroke-width: ${width};`);
      expect(/stroke-dasharray: ([^;]*);/.exec(rule)?.[1], pen).toBe(dashes?.join(' '));
    }
    expect(ruleOf('t')).toContain(`font-size: ${LETTER_SIZES.plain}px`);
    expect(ruleOf('t.big')).toContain(`font-size: ${LETTER_SIZES.big}px`);
    expect(ruleOf('t.mid')).toContain(`font-size: ${LETTER_SIZES.mid}px`);
  });

  it('keep names harmless in SVG', () => {
    const svg = svgOf([text(0, 0, '<script>"&'), rectangle(0, 0, 1, 1, { item: '"><script>' })]);
    expect(svg).not.toContain('<script');
  });

  it('of groups stand in their place, one by one', () => {
    const inner = line('narrow', 0, 0, 1, 1);
    const dot = circle(0, 0, 1, { fill: 'ink' });
    expect(singly([group([inner, group([dot])]), inner])).toEqual([inner, dot, inner]);
  });

  it('in another size or turned are drawn to scale, and within a ring alone where they are clipped', () => {
    const svg = svgOf([
      text(5, 6, 'seat', 'plain', 'middle', { size: 7, turn: 90 }),
      group([line('narrow', 0, 0, 9, 9)], {
        clip: [
          [0, 0],
          [4, 0],
          [4, 4],
        ],
      }),
      rectangle(0, 0, 1, 1, { fill: 'paper', pen: 'wide' }),
    ]);
    // Lettering of 3.5 u, twice as large; SVG turns clockwise.
    expect(svg).toContain('transform="translate(5 6) rotate(-90) scale(2)"');
    expect(svg).toMatch(/<clipPath id="(clip-\w+)"><path d="M0 0L4 0L4 4Z"\/><\/clipPath><g clip-path="url\(#\1\)">/);
    expect(svg).toContain('class="w white"');
  });
});
