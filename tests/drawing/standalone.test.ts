import { describe, expect, it } from 'vitest';
import { hatch } from '../../src/drawing/hatching';
import { line, rectangle, text } from '../../src/drawing/mark';
import { standalone } from '../../src/drawing/standalone';
import type { Picture } from '../../src/drawing/svg';
import { css } from './demo-plan';

const picture: Picture = {
  width: 20,
  height: 10,
  label: 'A line & a face',
  facts: [],
  marks: [
    line('dashed', 0, 0, 9, 9, { item: '1' }),
    rectangle(0, 0, 9, 1, { pen: 'face', fill: hatch('cork') }),
    text(1, 2, 7, 'bold'),
  ],
};

describe('a picture that leaves the page', () => {
  const svg = standalone(picture, 'Test', css);

  it('is true to size and carries its sentence', () => {
    expect(svg).toContain('width="28mm" height="18mm" viewBox="-4 -4 28 18"');
    expect(svg).toContain('<desc>A line &amp; a face</desc>');
  });

  it('needs no style sheet: line kinds, lettering and colours stand in it', () => {
    expect(svg).not.toMatch(/class=|var\(|data-item/);
    // Dashes of 3 and 0.75, a narrow line of 0.25: the look's line kinds.
    expect(svg).toContain(
      '<path d="M0 0L9 9" fill="none" stroke="#14191b" stroke-width="0.25" stroke-dasharray="3 0.75"/>',
    );
    expect(svg).toMatch(
      /<text x="1" y="2" text-anchor="middle" font-size="3.5px" fill="#14191b"[^>]*font-weight="600">7/,
    );
  });

  it('brings the hatchings that it uses and no others', () => {
    expect(svg.match(/<pattern/g)).toHaveLength(1);
    expect(svg).toContain('<pattern id="hatch-cork"');
    expect(svg).toContain('fill="url(#hatch-cork)"');
  });
});
