import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { mirror } from '../../src/core/geometry/mirror';
import type { Point } from '../../src/core/geometry/ring';
import { chosenPieces } from '../../src/drawing/paper/chosen';
import { pieceFiles } from '../../src/drawing/paper/piece-files';
import { writeDxf } from '../../src/exchange/dxf';
import { writeSvg } from '../../src/exchange/svg';
import { demoJob, renamedJob, whole } from '../drawing/paper/jobs';

interface DxfLine {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly vertices: readonly { readonly x: number; readonly y: number }[];
}

const job = demoJob({ styles: ['Betony', 'Clover', 'Yarrow'], sizes: [38, 41] });
const files = whole(pieceFiles(job));
const rings = chosenPieces(job).flatMap(({ layer, run }): (readonly Point[])[] =>
  run.style.code === 'Clover' ? [layer.ring, mirror(layer.ring)] : [layer.ring],
);

/** The greatest distance between points of two rings, point for point from the nearest first one. */
function apart(one: readonly Point[], other: readonly Point[]): number {
  const [first] = one as [Point];
  const start = other.findIndex(([x, y]) => Math.hypot(x - first[0], y - first[1]) < 0.01);
  if (one.length !== other.length || start < 0) return Infinity;
  return Math.max(
    ...one.map(([x, y], i) => {
      const [ox, oy] = other[(start + i) % other.length] as Point;
      return Math.hypot(x - ox, y - oy);
    }),
  );
}

describe('pieces as drawings', () => {
  it('are one file a template', () => {
    expect(files).toHaveLength(rings.length);
    expect(new Set(files.map(({ name }) => name)).size).toBe(files.length);
  });

  it('in DXF are closed, in mm, on layers, and within 0.01 mm of core’s outline', () => {
    files.forEach(({ draw }, i) => {
      const dxf = new DxfParser().parseSync(writeDxf(draw()))!;
      // $INSUNITS 4 is millimetres (DXF reference, HEADER).
      expect(dxf.header['$INSUNITS']).toBe(4);
      const lines = dxf.entities as unknown as readonly DxfLine[];
      const cut = lines.filter(({ layer }) => layer === 'CUT');
      expect(cut).toHaveLength(1);
      expect(cut[0]!.shape).toBe(true);
      const ring = cut[0]!.vertices.map(({ x, y }): Point => [x, y]);
      const wanted = rings[i]!;
      expect(Math.min(apart(wanted, ring), apart(wanted, [...ring].reverse()))).toBeLessThan(0.01);
      expect(lines.every(({ layer }) => ['CUT', 'FINISHED EDGE', 'SKIVE', 'MARK', 'TEXT'].includes(layer))).toBe(true);
      for (const { layer, shape } of lines) if (layer === 'FINISHED EDGE') expect(shape).toBe(true);
    });
  });

  it('in SVG are true to size and within 0.01 mm of core’s outline', () => {
    for (const [i, { name, box, draw }] of files.entries()) {
      const svg = writeSvg(draw(), name, box);
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!;
      const [, x, y, w, h] = /viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(svg)!;
      expect([width, height]).toEqual([w, h]);
      const [, cut = ''] = /<g id="CUT"[^>]*>([\s\S]*?)<\/g>/.exec(svg)!;
      const [, data = ''] = /d="M([^"]*)Z"/.exec(cut)!;
      const ring = data.split('L').map((pair): Point => {
        const [px, py] = pair.split(' ').map(Number) as [number, number];
        return [px, -py];
      });
      expect(Math.min(apart(rings[i]!, ring), apart(rings[i]!, [...ring].reverse()))).toBeLessThan(0.01);
      expect(ring.every(([px, py]) => px >= Number(x) && -py >= Number(y))).toBe(true);
      expect(Math.max(...ring.map(([, py]) => -py))).toBeLessThan(Number(y) + Number(h));
    }
  });

  it('keep hostile names harmless', () => {
    const name = '<script>"&\n0\nEOF';
    const [file] = whole(pieceFiles(renamedJob({ Betony: name }, { styles: [name], sizes: [36] })));
    const { name: title, box, draw } = file!;
    expect(writeSvg(draw(), title, box)).not.toContain('<script');
    const dxf = new DxfParser().parseSync(writeDxf(draw()))!;
    expect(dxf.entities.length).toBeGreaterThan(5);
  });
});
