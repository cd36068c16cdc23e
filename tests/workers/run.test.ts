import { afterAll, describe, expect, it } from 'vitest';
import type { Piece } from '../../src/core/cutting/sheet/piece';
import { type Answer, perform, type Task } from '../../src/core/cutting/search/perform';
import { Crew, type WorkerLike } from '../../src/workers/crew';
import { run } from '../../src/workers/run';
import { complaints } from '../core/cutting/oracle';
import { soleLike } from '../core/cutting/outlines';
import { nodeCrew, nodeWorker } from './node-crew';

const pieces: readonly Piece[] = [
  { key: 'long', ring: soleLike(270, 24), count: 8, way: { kind: 'any' } },
  { key: 'short', ring: soleLike(180, 20), count: 8, way: { kind: 'endForEnd' } },
];
const format = { length: 600, width: 400, knifeRoom: 3, edgeTrim: 5 };
const job = { pieces, format, effort: 0.3, seed: 5 };
const never = { stopped: false };
const crews: Crew<Task, Answer>[] = [];
const crew = (make: () => Crew<Task, Answer>): Crew<Task, Answer> => {
  const made = make();
  crews.push(made);
  return made;
};
afterAll(() => crews.forEach((one) => one.end()));

describe('run', { timeout: 60_000 }, () => {
  it('gives the same answer inline, with one worker and with three', async () => {
    const inline = await run(
      job,
      () => undefined,
      never,
      crew(() => new Crew(perform, undefined, 0)),
    );
    expect(complaints(pieces, format, inline.layout.sheets)).toEqual([]);
    for (const size of [1, 3]) {
      expect(
        await run(
          job,
          () => undefined,
          never,
          crew(() => nodeCrew(size)),
        ),
      ).toEqual(inline);
    }
  });

  it('tells of the quick rows first, and of no layout that takes more sheets than the one before', async () => {
    const sheets: number[] = [];
    await run(
      job,
      ({ layout }) => sheets.push(layout.sheets.length),
      never,
      crew(() => nodeCrew(2)),
    );
    expect(sheets.length).toBeGreaterThan(2);
    expect(sheets).toEqual([...sheets].sort((a, b) => b - a));
  });

  it('tells how far it has come, and keeps what it found, within a round that is stopped', async () => {
    // Derived: a square of 60 mm does not fit beside one of 90 mm, so three sheets are needed where the areas ask for two.
    const square = (side: number, count: number): Piece => ({
      key: `square ${side}`,
      ring: [
        [0, 0],
        [side, 0],
        [side, side],
        [0, side],
      ],
      count,
      way: { kind: 'oneWay' },
    });
    const squares = [square(60, 2), square(90, 2), square(30, 4)];
    const small = { length: 125, width: 125, knifeRoom: 0, edgeTrim: 0 };
    const token = { stopped: false };
    const done: number[] = [];
    const { layout } = await run(
      { pieces: squares, format: small, effort: 1000, seed: 1 },
      (progress) => {
        done.push(progress.done);
        if (done.length > 4) token.stopped = true;
      },
      token,
      crew(() => nodeCrew(2)),
    );
    expect(complaints(squares, small, layout.sheets)).toEqual([]);
    expect(done.length).toBeGreaterThan(4);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    // A round is an eighth of the effort.
    expect(done.filter((share) => share > 0 && share < 1 / 8).length).toBeGreaterThan(2);
  });

  it('stops at once and keeps the best that it has', async () => {
    const token = { stopped: false };
    const begun = performance.now();
    setTimeout(() => (token.stopped = true), 300);
    const { layout } = await run(
      { ...job, effort: 1000 },
      () => undefined,
      token,
      crew(() => nodeCrew(2)),
    );
    expect(performance.now() - begun).toBeLessThan(10_000);
    expect(complaints(pieces, format, layout.sheets)).toEqual([]);
  });

  it('replaces a worker that dies, and the answer is the same', async () => {
    let hired = 0;
    const frail = (): WorkerLike => {
      if (++hired % 2 === 0) return nodeWorker();
      const dying: WorkerLike = {
        postMessage: (_task: unknown) => void setTimeout(() => dying.onerror?.(new Error('died')), 5),
        terminate: () => undefined,
        onmessage: null,
        onerror: null,
      };
      return dying;
    };
    const answer = await run(
      job,
      () => undefined,
      never,
      crew(() => new Crew(perform, frail, 2)),
    );
    expect(hired).toBeGreaterThan(2);
    expect(answer).toEqual(
      await run(
        job,
        () => undefined,
        never,
        crew(() => new Crew(perform, undefined, 0)),
      ),
    );
  });

  it('does the work itself where workers die one after the other', async () => {
    const dead = (): WorkerLike => {
      throw new Error('no worker here');
    };
    const answer = await run(
      job,
      () => undefined,
      never,
      crew(() => new Crew(perform, dead, 2)),
    );
    expect(complaints(pieces, format, answer.layout.sheets)).toEqual([]);
  });

  it('names a piece that fits on no sheet', async () => {
    const large = [...pieces, { key: 'giant', ring: soleLike(900, 24), count: 1, way: { kind: 'any' } as const }];
    await expect(
      run(
        { ...job, pieces: large },
        () => undefined,
        never,
        crew(() => new Crew(perform, undefined, 0)),
      ),
    ).rejects.toThrow(/giant/);
  });

  it('takes tasks of several searches, those of the lowest rank first, and ends none of them with another', async () => {
    const order: string[] = [];
    const shared = new Crew<string, string>(
      async (task) => (order.push(task), await Promise.resolve(task)),
      undefined,
      0,
    );
    const token = { stopped: false };
    const searches = [
      shared.perform(['b1', 'b2'], token, undefined, 1),
      shared.perform(['a1', 'a2'], never, undefined, 0),
    ];
    expect(await searches[1]).toEqual(['a1', 'a2']);
    // The first was at work before the others came.
    expect(order.slice(0, 3)).toEqual(['b1', 'a1', 'a2']);
    token.stopped = true;
    expect(await searches[0]).toBeUndefined();
    expect(await shared.perform(['c'], never)).toEqual(['c']);
  });

  it('keeps its workers from one search to the next, and goes on from what was found', async () => {
    let hired = 0;
    const kept = crew(
      () =>
        new Crew(
          perform,
          () => {
            hired++;
            return nodeWorker();
          },
          2,
        ),
    );
    const first = await run(job, () => undefined, never, kept);
    const again = await run({ ...job, seed: 6, start: first.layout }, () => undefined, never, kept);
    expect(hired).toBeLessThanOrEqual(2);
    expect(again.layout.sheets.length).toBeLessThanOrEqual(first.layout.sheets.length);
  });
});
