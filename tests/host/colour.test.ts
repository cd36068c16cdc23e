import { describe, expect, it } from 'vitest';
import { readColour, writeColour } from '../../src/host/colour';

// Notations of CSS Color Module Level 4.
describe('colours', () => {
  it.each([
    ['#0af', { red: 0, green: 170, blue: 255, cover: 1 }],
    ['#00596B', { red: 0, green: 89, blue: 107, cover: 1 }],
    ['#00596b80', { red: 0, green: 89, blue: 107, cover: 128 / 255 }],
    ['rgb(0,89,107)', { red: 0, green: 89, blue: 107, cover: 1 }],
    ['rgba(0, 89, 107, 0.07)', { red: 0, green: 89, blue: 107, cover: 0.07 }],
    ['rgb(0 89 107 / 50%)', { red: 0, green: 89, blue: 107, cover: 0.5 }],
  ])('are read from %s', (text, colour) => {
    expect(readColour(text)).toEqual(colour);
  });

  it.each(['primary.600', 'CanvasText', '#12345', 'rgb(1,2)', 'rgb(a,b,c)', ''])('are not read from "%s"', (text) => {
    expect(readColour(text)).toBeUndefined();
  });

  it('are written as a canvas takes them', () => {
    expect(writeColour({ red: 1, green: 2, blue: 3, cover: 1 })).toBe('rgb(1, 2, 3)');
    expect(writeColour({ red: 1, green: 2, blue: 3, cover: 0.5 })).toBe('rgba(1, 2, 3, 0.5)');
  });
});
