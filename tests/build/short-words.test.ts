import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const { shortWords, withoutSetFields } = (await import(
  /* @vite-ignore */ pathToFileURL(resolve('.ci/short-words.js')).href
)) as Readonly<Record<'shortWords' | 'withoutSetFields', ts.TransformerFactory<ts.SourceFile>>>;

/** Compiled as the functions are, with shorter words or without. */
function compiled(text: string, transformers?: ts.CustomTransformers): string {
  const compilerOptions = { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ES2022 };
  return ts.transpileModule(text, { compilerOptions, ...(transformers && { transformers }) }).outputText;
}

const run = (text: string): unknown => new Function(`${text}; return answer();`)();

describe('what packs shorter', () => {
  it('is declared so within functions alone, and does the same, in loops with what is kept of each turn too', () => {
    const text = `const most = 3;
      function answer() {
        const kept = [];
        for (const one of [1, 2, most]) { const twice = 2 * one; kept.push(() => one + twice); }
        return kept.map((each) => each());
      }`;
    const short = compiled(text, { before: [shortWords] });
    expect(short.match(/\bconst\b/g)).toHaveLength(1);
    expect(short).toMatch(/^const most/m);
    expect(run(short)).toEqual(run(compiled(text)));
    expect(run(short)).toEqual([3, 6, 9]);
  });

  it('leaves out fields that the constructor sets first, and no other, in the same order', () => {
    const text = `class Piece {
        own = 1;
        later: number | undefined;
        constructor(readonly ring: number, private readonly count: number) {}
      }
      function answer() { return JSON.stringify([new Piece(4, 5), Object.keys(new Piece(4, 5))]); }`;
    const short = compiled(text, { after: [withoutSetFields] });
    expect(short).not.toMatch(/^\s*(ring|count);$/m);
    expect(short).toMatch(/^\s*later;$/m);
    expect(JSON.parse(String(run(short)))[0]).toEqual(JSON.parse(String(run(compiled(text))))[0]);
  });
});
