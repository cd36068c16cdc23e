import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { standIn } from '../../../src/embedded/custom-functions/stand-in';
import { loadBundle } from '../../bundle';

describe('the stand-in runtime', () => {
  it('has the error codes of the office suite’s runtime', () => {
    // Source: the suite's own custom-functions-runtime.js, as its package brings it.
    const runtime = readFileSync('node_modules/@microsoft/office-js/dist/custom-functions-runtime.js', 'utf8');
    const theirs = /function\(e\)\{((?:e\.\w+="#[^"]+",?){5,})\}\(\w+=t\.ErrorCode/.exec(runtime)?.[1] ?? '';
    const codes = Object.fromEntries([...theirs.matchAll(/e\.(\w+)="([^"]+)"/g)].map(([, name, code]) => [name, code]));
    expect(Object.keys(codes)).toHaveLength(7);
    expect(standIn().ErrorCode).toEqual(codes);
  });

  it('reads back by capitals what was associated, one by one or together', () => {
    const { associate, associated } = standIn();
    const one = () => 1;
    const two = () => 2;
    associate('one', one);
    associate({ TWO: two });
    expect([...associated]).toEqual([
      ['ONE', one],
      ['TWO', two],
    ]);
  });

  it('refuses what is no function, as a fault of the bundle', () => {
    const { associate } = standIn();
    expect(() => associate({ ONE: 1 as never })).toThrow('associate("ONE", …) needs a function');
  });

  it('makes errors that carry their code and sentence', () => {
    const { Error: HostError, ErrorCode } = standIn();
    const error = new HostError(ErrorCode.notAvailable, 'size: there is no last for 49');
    expect(error).toBeInstanceOf(Error);
    expect([error.code, error.message]).toEqual(['#N/A', 'size: there is no last for 49']);
    expect(new HostError().code).toBe('#VALUE!');
  });

  it('is all that the bundle as it ships asks for', () => {
    const { metadata, associated } = loadBundle();
    expect([...associated.keys()].sort()).toEqual(metadata.map(({ id }) => id).sort());
  });
});
