import { expect, it } from 'vitest';
import { bareEdge } from '../../../../src/core/plan/checks/bare-edge';
import type { StyleRun } from '../../../../src/core/plan/runs';
import type { Named } from '../../samples';
import { built } from '../../steps/samples';

const COVERED: Named = { Raise: 'heel', Lifts: 'Cork 6, Cork 4', Platform: 'Foam 10', Cover: 'Calf 1' };

function found(named: Named) {
  const { style, bottom } = built({ ...COVERED, ...named });
  return bareEdge({ style, sizes: [{ bottom }] } as unknown as StyleRun).map(({ kind }) => kind);
}

it('is told of a platform over a heel that alone is covered, and of nothing else', () => {
  expect(found({ Covered: 'heel' })).toEqual(['bareEdge']);
  for (const other of [{}, { Covered: 'platform' }, { Cover: '' }, { Platform: '', Covered: 'heel' }]) {
    expect(found(other)).toEqual([]);
  }
});
