import { describe, expect, it } from 'vitest';
import type { PieceLine } from '../../../src/core/plan/pieces';
import { singly } from '../../../src/drawing/mark';
import { templatesOf } from '../../../src/drawing/paper/template';
import { buildBottom } from '../../../src/core/bottom/bottom';
import { lastInSize } from '../../../src/core/last/last-in-size';
import { findSample, lastOf, stockOf, styleOf } from '../../core/samples';

const style = styleOf({
  Raise: 'heel',
  Lifts: 'Cork 6',
  'Top piece': 'Rubber 6',
  'Most rasping': 3,
  'Heel taper': 5,
  Cover: 'Calf 1',
});
const last = lastOf();
const bottom = buildBottom(style, lastInSize(last, 38, 'EU'), findSample);
const layer = bottom.layers.find(({ part }) => part === 'cover')!;
const line = {
  run: { style, last },
  sizeRun: { bottom, size: 38, system: 'EU', pairs: 2 },
  layer,
  area: 0,
  count: 4,
} as unknown as PieceLine;

function drawn(direction: string) {
  const leather = stockOf({ Stock: 'Calf 1', Material: 'leather', Thick: 1.2, Direction: direction });
  return singly(templatesOf(line, leather, 'EU 38')[0]!.draw(0));
}

describe('the template of a heel’s cover', () => {
  it('is dashed where it is turned, with the line that comes to the middle of the back', () => {
    const { unturned, back } = layer.cover!;
    const lines = drawn('any way').flatMap((mark) => (mark.kind === 'line' ? [mark] : []));
    const dashed = lines.find(({ pen }) => pen === 'dashed')!;
    expect(dashed.points).toEqual([...unturned, unturned[0]!].map(([x, y]) => [x, -y]));
    const chain = lines.find(({ pen }) => pen === 'chain')!;
    expect(chain.points).toEqual(back!.map(([x, y]) => [x, -y]));
  });

  it('says that the tight way goes round the heel where the hide has a way, and nothing where it has none', () => {
    const words = (direction: string) =>
      drawn(direction)
        .flatMap((mark) => (mark.kind === 'text' ? [mark.words] : []))
        .join(' ');
    expect(words('end for end')).toContain('along the backbone, the tight way');
    expect(words('any way')).not.toContain('backbone');
  });
});

describe('the template of a cover that goes all round', () => {
  it('is lettered where the seam stands, as far from its end as the cover laps there', () => {
    const wedge = styleOf({ Raise: 'wedge', Lifts: 'Cork 6', Platform: 'Foam 10', 'Most rasping': 3, Cover: 'Calf 1' });
    const whole = buildBottom(wedge, lastInSize(last, 38, 'EU'), findSample);
    const piece = whole.layers.find(({ part }) => part === 'cover')!;
    const strip = { ...line, run: { style: wedge, last }, sizeRun: { ...line.sizeRun, bottom: whole }, layer: piece };
    const leather = stockOf({ Stock: 'Calf 1', Material: 'leather', Thick: 1.2 });
    const seam = singly(templatesOf(strip as PieceLine, leather, 'EU 38')[0]!.draw(0)).flatMap((mark) =>
      mark.kind === 'text' && mark.words === 'seam at the back' ? [mark.at] : [],
    );
    expect(seam).toHaveLength(1);
    // The words stand 1 mm beside the line.
    expect(seam[0]![0] - Math.min(...piece.ring.map(([x]) => x))).toBeCloseTo(wedge.coverLap - 1, 6);
  });
});
