import { area } from '../core/geometry/area';
import { edgeLength } from '../core/geometry/edge-length';
import { letOut } from '../core/geometry/let-out';
import { readDistance, readOutline, writeOutline } from '../functions/arguments';
import { cells, type WorkingOf } from './arguments';
import { given, step, told } from './working';

const points = (count: number) => given('n', 'Points of the outline', count, undefined, 'outline');

export const outlines: Readonly<Record<string, WorkingOf>> = {
  OUTLINEAREA: ([outline]) => {
    const ring = readOutline(cells(outline));
    return {
      given: [points(ring.length)],
      steps: [
        step(
          'S',
          'Cross products of each point with the next, added up',
          'Σ (xᵢ · yᵢ₊₁ − xᵢ₊₁ · yᵢ)',
          2 * area(ring),
          'mm²',
        ),
        step('A', 'Area', 'S / 2', area(ring), 'mm²'),
      ],
      source: 'shoelace formula',
    };
  },
  EDGELENGTH: ([outline]) => {
    const ring = readOutline(cells(outline));
    return {
      given: [points(ring.length)],
      steps: [
        step(
          'l',
          'Straight pieces from point to point, added up',
          'Σ √((xᵢ₊₁ − xᵢ)² + (yᵢ₊₁ − yᵢ)²)',
          edgeLength(ring),
          'mm',
        ),
      ],
      source: 'Pythagoras',
    };
  },
  LETOUT: ([outline, distance], { row, column }) => {
    const ring = readOutline(cells(outline));
    const d = readDistance(distance);
    const out = letOut(ring, d);
    const value = writeOutline(out)[row]?.[column];
    if (typeof value !== 'number') return undefined;
    return {
      given: [points(ring.length), given('d', 'How far to let out', d, 'mm', 'distance')],
      steps: [
        step('A', 'Area before', undefined, area(ring), 'mm²'),
        step('B', 'Area after: every edge moved outward by d, corners rounded', undefined, area(out), 'mm²'),
        told(`Point ${row} of ${out.length}`, value, 'mm'),
      ],
      source: 'offset of a polygon (library clipper2-ts)',
    };
  },
};
