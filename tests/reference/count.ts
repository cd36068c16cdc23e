import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * Counts the check values of this folder by function, regime and source, and writes the table of them:
 * `npx tsx tests/reference/count.ts`. A value is one answer of one function held against one source.
 */
interface Reference {
  readonly function: string;
  readonly source: string;
  readonly regime?: string;
}

/** The fewest values that the numbers are to be held against. */
export const LEAST_VALUES = 130;

const folder = 'tests/reference';
const page = `${folder}/README.md`;

function references(): readonly Reference[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .flatMap((name) => JSON.parse(readFileSync(`${folder}/${name}`, 'utf8')) as Reference[]);
}

const KINDS = ['published', 'common practice', 'from memory', 'derived'] as const;

/** What kind of source a value has; one that is derived from a published one counts as derived. */
function kindOf(source: string): (typeof KINDS)[number] {
  if (/\bderived\b/i.test(source)) return 'derived';
  if (/^common practice/i.test(source)) return 'common practice';
  return /from memory/i.test(source) ? 'from memory' : 'published';
}

export function count(): { readonly values: number; readonly table: string } {
  const all = references();
  const rows = new Map<string, number>();
  for (const one of all) {
    const key = JSON.stringify([one.function, one.regime ?? '', one.source]);
    rows.set(key, (rows.get(key) ?? 0) + 1);
  }
  const cell = (text: string) => text.replaceAll('|', '\\|');
  const lines = [...rows]
    .map(([key, values]) => ({ parts: JSON.parse(key) as [string, string, string], values }))
    .sort((a, b) => a.parts.join('\n').localeCompare(b.parts.join('\n'), 'en'))
    .map(({ parts, values }) => `| ${parts.map(cell).join(' | ')} | ${values} |`);
  const functions = [...new Set(all.map((one) => one.function))].sort();
  const summary = functions.map((name) => {
    const own = all.filter((one) => one.function === name);
    const regimes = new Set(own.map(({ regime }) => regime)).size;
    return `| ${name} | ${[own.length, regimes, ...KINDS.map((kind) => own.filter(({ source }) => kindOf(source) === kind).length)].join(' | ')} |`;
  });
  const sums = KINDS.map((kind) => all.filter(({ source }) => kindOf(source) === kind).length);
  const table = [
    '# Check values',
    '',
    'Written by `npx tsx tests/reference/count.ts`; a test fails where it is stale. Each value is an answer of a custom',
    'function as it ships, held against a source outside the code; a derived value is worked out by another way than the',
    "code's own. A style that is worked wholly by hand (`worked-by-hand.test.ts`) and the values beside the core's own tests",
    'come on top.',
    '',
    `${all.length} values of ${functions.length} functions: ${KINDS.map((kind, i) => `${sums[i]} ${kind}`).join(', ')}.`,
    '',
    `| Function | Values | Regimes | ${KINDS.map((kind) => kind.charAt(0).toUpperCase() + kind.slice(1)).join(' | ')} |`,
    `| --- | --: | --: | ${KINDS.map(() => '--:').join(' | ')} |`,
    ...summary,
    '',
    '## By function, regime and source',
    '',
    '| Function | Regime | Source | Values |',
    '| --- | --- | --- | --: |',
    ...lines,
    '',
  ].join('\n');
  return { values: all.length, table };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(page, count().table);
