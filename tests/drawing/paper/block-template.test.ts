import { describe, expect, it } from 'vitest';
import { area } from '../../../src/core/geometry/area';
import { box } from '../../../src/core/geometry/box';
import { atGround, type Profile } from '../../../src/core/last/profile';
import { buildShape } from '../../../src/drawing/build-shape';
import { singly } from '../../../src/drawing/mark';
import { type BlockTemplate, blockTemplate } from '../../../src/drawing/paper/block-template';
import { pieceFiles } from '../../../src/drawing/paper/piece-files';
import { templatePages } from '../../../src/drawing/paper/template-pages';
import { writeDxf } from '../../../src/exchange/dxf';
import { edgesAt } from '../../../src/drawing/stations';
import { built as sampled } from '../../core/steps/samples';
import { built, demoPlan } from '../demo-plan';
import { demoJob, whole } from './jobs';

const { plan } = demoPlan();
const { run, sizeRun } = built(plan, 'Fennel', 38);
const fennel = blockTemplate(run, sizeRun, 'EU 38')!;

/** How far the upper edge of a template lies from the face that it is sawn to, at most, mm. */
function off({ ring }: BlockTemplate, face: Profile, height: number): number {
  const { right } = box(ring);
  const places = Array.from({ length: Math.floor(right) - 2 }, (_, i) => i + 1);
  return Math.max(...places.map((x) => Math.abs(edgesAt(ring, x)[1] - Math.min(height, atGround(face, x).z))));
}

describe('the template of a block', () => {
  it('has the ground face level and the upper face as the last’s bottom stands, within a tenth of a millimetre', () => {
    expect(box(fennel.ring).bottom).toBeCloseTo(0, 2);
    expect(box(fennel.ring).top).toBeCloseTo(45, 2);
    expect(off(fennel, sizeRun.bottom.face, 45)).toBeLessThan(0.1);
  });

  it('is as long as the longest of its pieces before their fronts slant, and tells its heights from the back', () => {
    const lifts = sizeRun.bottom.layers.filter(({ part }) => part === 'lift');
    const { left, right } = box(fennel.ring);
    expect(right).toBeCloseTo(Math.max(...lifts.map(({ lift }) => lift?.front ?? 0)), 2);
    expect(left).toBeCloseTo(Math.min(...lifts.map(({ ring }) => box(ring).left)), 2);
    expect(fennel.heights.map(({ name }) => name)).toEqual(['back', 'seat line', 'waist', 'front']);
    expect(fennel.heights[0]?.height).toBeCloseTo(45, 2);
    for (const { at, height } of fennel.heights.slice(1, 3)) {
      expect(height).toBeCloseTo(atGround(sizeRun.bottom.face, at).z, 1);
    }
  });

  it('is one piece of 50 mm that is sawn to 40, and a heel’s that ends upright at its breast', () => {
    for (const named of [
      { Raise: 'wedge', Lifts: 'Cork 6' },
      { Raise: 'heel', Lifts: 'Cork 6' },
    ]) {
      const { style, bottom } = sampled({ Laying: 'block', ...named });
      const one = blockTemplate({ ...run, style }, { ...sizeRun, bottom }, 'EU 38')!;
      expect(box(one.ring).top).toBeCloseTo(40, 2);
      expect(off(one, bottom.face, 40)).toBeLessThan(0.1);
    }
  });

  it('of one that goes on under the tread follows the last to the toe, and is as thick there as under the tread', () => {
    const { style, bottom } = sampled({ Laying: 'block', Raise: 'wedge', Lifts: 'Cork 6', 'Finished heel': 60 });
    const one = blockTemplate({ ...run, style }, { ...sizeRun, bottom }, 'EU 38')!;
    expect(one.heights.map(({ name }) => name)).toEqual(['back', 'seat line', 'waist', 'tread', 'toe']);
    const [back, tread, toe] = ['back', 'tread', 'toe'].map(
      (name) => one.heights.find((at) => at.name === name)!.height,
    );
    expect([back, tread]).toEqual([expect.closeTo(60, 2), expect.closeTo(20, 2)]);
    // Measured upright, where its curve rises.
    expect(toe! / tread!).toBeGreaterThan(1);
    expect(toe! / tread!).toBeLessThan(1.05);
    const { x, z } = bottom.face;
    const upper = [...x].map((at, i) =>
      Math.abs((at < box(one.ring).right - 5 ? edgesAt(one.ring, at)[1] : z[i]!) - Math.min(60, z[i]!)),
    );
    expect(Math.max(...upper.slice(8))).toBeLessThan(0.1);
    // Its lifts together are the whole of it.
    const lifts = buildShape(bottom).faces.filter(({ layer }) => layer.sawn);
    expect(lifts.reduce((sum, { ring }) => sum + area(ring), 0)).toBeCloseTo(area(one.ring), 0);
  });

  it('is of the centre line, and says how far a slanted front runs on inside and ends short outside', () => {
    const said = (slant: number) => {
      const { style, bottom } = sampled({ Laying: 'block', Raise: 'wedge', Lifts: 'Cork 6', 'Front slant': slant });
      const [longest] = bottom.layers.filter(({ sawn }) => sawn).sort((a, b) => b.length - a.length);
      const drawn = blockTemplate({ ...run, style }, { ...sizeRun, bottom }, 'EU 38')!.draw(0);
      return { words: writeDxf(drawn), ring: longest!.ring, front: longest!.lift!.front };
    };
    const { words, ring, front } = said(12);
    expect(words).toContain('side view on the centre line');
    const [, inside, outside] = /inside (\d+) further, outside (\d+) short/.exec(words)!.map(Number);
    expect(Math.abs(box(ring).right - front - inside!)).toBeLessThanOrEqual(0.5);
    // Together they are the tangent of the piece's width there: wider than the waist, narrower than the widest, rounded.
    const across = (inside! + outside!) / Math.tan((12 * Math.PI) / 180);
    expect(across).toBeGreaterThan(56);
    expect(across).toBeLessThan(box(ring).top - box(ring).bottom + 5);
    expect(said(0).words).not.toContain('further');
  });

  it('is none of lifts that are laid one by one', () => {
    const betony = built(plan, 'Betony', 38);
    expect(blockTemplate(betony.run, betony.sizeRun, 'EU 38')).toBeUndefined();
  });

  it('stands among the templates and drawings of its size once, with its words on the layer of words', () => {
    const job = demoJob({ styles: ['Fennel', 'Betony'], sizes: [38, 39] });
    const blocks = whole(templatePages(job)).flatMap((page) => page.blocks);
    expect([...new Set(blocks.map(({ name }) => name))]).toEqual([
      'Fennel EU 38, Block profile',
      'Fennel EU 39, Block profile',
    ]);
    const files = whole(pieceFiles(job)).filter(({ name }) => name.includes('Block profile'));
    expect(files).toHaveLength(2);
    expect(writeDxf(files[0]!.draw())).toContain('saw back 45, seat');
  });

  it('is cut along one closed line whose area is that of the block’s side', () => {
    const cut = singly(fennel.draw(0)).flatMap((mark) =>
      mark.kind === 'area' && mark.layer === 'cut' ? mark.rings : [],
    );
    expect(cut).toHaveLength(1);
    expect(Math.abs(area(cut[0]!))).toBeCloseTo(area(fennel.ring), 3);
  });
});
