import { describe, expect, it } from 'vitest';
import type { Outline } from '../../../src/core/plan/inputs';
import { tracedSheet } from '../../../src/core/plan/traced-sheet';

const SQUARE = [
  [-100, -50],
  [900, -50],
  [900, 450],
  [-100, 450],
] as const;
const sheet: Outline = { code: 'Hide 1', ring: '1', role: 'sheet', points: SQUARE, row: 1 };
const hole: Outline = {
  code: 'hide 1',
  ring: '2',
  role: 'hole',
  points: [
    [10, 10],
    [10, 30],
    [30, 30],
  ],
  row: 5,
};
const zone: Outline = { ...hole, ring: '3', role: 'zone', quality: 2, row: 8 };
const named = { row: 4, outline: 'Hide 1', across: false };

describe('tracedSheet', () => {
  it('gathers outline, holes and zones of a code, counter-clockwise and from the corner of the box about them', () => {
    const { outline, holes, zones, quality, backbone } = tracedSheet(named, [sheet, hole, zone]);
    expect(outline[0]).toEqual([0, 0]);
    expect(holes).toEqual([
      [
        [130, 80],
        [110, 80],
        [110, 60],
      ],
    ]);
    expect(zones[0]?.quality).toBe(2);
    expect(quality).toBe(1);
    expect(backbone).toBe(50);
  });

  it('says in Bottom stock what is wrong with the code', () => {
    expect(() => tracedSheet(named, [hole])).toThrow(/^row 4 of Bottom stock, Outline: "Hide 1" has no outline/);
    expect(() => tracedSheet(named, [sheet, { ...sheet, ring: '9' }])).toThrow(/2 rings with the role sheet/);
    const beside = { ...sheet, points: SQUARE.map(([x, y]) => [x, y + 60] as const) };
    expect(() => tracedSheet({ ...named, across: true }, [beside])).toThrow(/lies on one side of it/);
  });

  it('says in Outlines what is wrong with a ring', () => {
    expect(() => tracedSheet(named, [sheet, { ...zone, quality: undefined }])).toThrow(
      /^row 8 of Outlines, Quality: a zone needs/,
    );
    expect(() => tracedSheet(named, [{ ...sheet, points: SQUARE.slice(0, 2) }])).toThrow(
      /^row 1 of Outlines, x: Hide 1, ring 1: an outline needs at least three/,
    );
  });
});
