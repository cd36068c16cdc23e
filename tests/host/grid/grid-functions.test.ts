import * as engine from '@univerjs/engine-formula';
import { expect, it } from 'vitest';
import { GRID_FUNCTIONS } from '../../../src/host/grid/grid-functions';

it('the list of the grid’s functions is the grid’s', () => {
  const maps = Object.entries(engine).filter(([name, map]) => /^function[A-Z]/.test(name) && Array.isArray(map));
  const names = maps.flatMap(([, map]) => (map as readonly (readonly unknown[])[]).map(([, name]) => String(name)));
  expect(names.length).toBeGreaterThan(400);
  expect([...GRID_FUNCTIONS].sort()).toEqual([...new Set(names)].sort());
});
