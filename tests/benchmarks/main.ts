/**
 * npm run bench -- NAME [--instances DIR] [--seconds S] [--seeds N] [--evaluations MILLION] [--json]
 * Runs one benchmark and prints what it found: a table, or JSON.
 */

/** What a benchmark may be told. */
export interface Options {
  /** Folder of instances. */
  readonly instances?: string | undefined;
  readonly seconds?: number | undefined;
  readonly seeds?: number | undefined;
  /** Millions of places tried. */
  readonly evaluations?: number | undefined;
}

/** What a benchmark finds: one record a line, and whether all that was asked of it holds. */
export interface Findings {
  readonly lines: readonly Readonly<Record<string, string | number | boolean>>[];
  readonly holds: boolean;
}

/** Benchmarks by name; each loads only when it is asked for. */
const BENCHMARKS: Readonly<Record<string, () => Promise<(options: Options) => Findings | Promise<Findings>>>> = {
  blocks: async () => (await import('./blocks')).blocks,
  buy: async () => (await import('./buy')).buying,
  descents: async () => (await import('./descents')).descents,
  drawing: async () => (await import('./drawing')).drawing,
  cutting: async () => (await import('./cutting')).cutting,
  edit: async () => (await import('./edit')).edit,
  files: async () => (await import('./files')).files,
  fuzz: async () => (await import('./fuzz')).fuzz,
  joined: async () => (await import('./joined')).joined,
  memory: async () => (await import('./memory')).memory,
  paper: async () => (await import('./paper')).paper,
  plan: async () => (await import('./plan')).plan,
  'search-start': async () => (await import('./search-start')).searchStart,
  sheets: async () => (await import('./sheets')).sheets,
  yield: async () => (await import('./yield')).yieldOfPieces,
};

async function main(): Promise<void> {
  const [name = '', ...rest] = process.argv.slice(2);
  const load = Object.hasOwn(BENCHMARKS, name) ? BENCHMARKS[name] : undefined;
  const options = read(rest);
  if (!load || !options) {
    console.error(
      `npm run bench -- NAME [--instances DIR] [--seconds S] [--seeds N] [--evaluations MILLION] [--json]\nNAME is one of ${Object.keys(BENCHMARKS).join(', ')}.`,
    );
    process.exit(2);
  }
  const { lines, holds } = await (await load())(options);
  if (options.json) console.log(JSON.stringify({ benchmark: name, lines, holds }, null, 2));
  else {
    console.table(lines);
    console.log(holds ? 'All that is asked of it holds.' : 'Not all that is asked of it holds.');
  }
  process.exit(holds ? 0 : 1);
}

function read(words: readonly string[]): (Options & { readonly json: boolean }) | undefined {
  const options: { instances?: string; seconds?: number; seeds?: number; evaluations?: number; json: boolean } = {
    json: false,
  };
  for (let i = 0; i < words.length; i++) {
    const word = words[i];
    if (word === '--json') options.json = true;
    else if (word === '--instances') options.instances = words[++i] ?? '';
    else if (word === '--seconds' || word === '--seeds' || word === '--evaluations') {
      const value = Number(words[++i]);
      if (!(value > 0)) return undefined;
      options[word.slice(2) as 'seconds' | 'seeds' | 'evaluations'] = value;
    } else return undefined;
  }
  return options;
}

await main();
