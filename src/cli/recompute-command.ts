import { existsSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { whatWentWrong } from '../core/what-went-wrong';
import { valuesOnly } from '../exchange/xlsx/values-only';
import { writeBook } from '../exchange/xlsx/write';
import { dateInWords } from '../drawing/paper/orders';
import { INPUT_TABLES } from '../tables/input-tables';
import { planCells } from '../tables/plan-cells';
import { readPlan } from '../tables/plan-input';
import { builtFonts } from './built-fonts';
import { type FunctionsBundle, loadFunctions } from './functions-bundle';
import { type Asked, HELP, readArguments } from './recompute-arguments';
import { recompute, type Recomputed } from './recompute-workbook';
import { SearchLine, searchInWords } from './search-in-words';
import { type SearchedStock, searchWorkbook } from './search-workbook';
import { terminalTable } from './terminal-table';
import { watchFiles } from './watch-files';
import { crewOfThreads } from './worker-threads';
import { writeWhole } from './write-whole';

/** Tables that are shown on the terminal, in this order. */
const SHOWN = ['Order', 'Cost', 'Checks'];
/** How the command ends. */
export const CODE = { holds: 0, wrong: 1, unread: 2 } as const;

/** Where the command works and whom it tells. */
export interface Around {
  /** Of the built files. */
  readonly folder: string;
  /** What was asked for: tables, JSON. */
  readonly out: (text: string) => void;
  /** How far it is, and what is wrong. */
  readonly say: (text: string) => void;
  /** A line that was said may be written over. */
  readonly live: boolean;
  readonly stop: AbortSignal;
}

/** A workbook, and where it goes. */
interface Job {
  readonly file: string;
  readonly to: string;
  /** Of its documents. */
  readonly paper: string | undefined;
}

/**
 * Does what the words ask for.
 * @returns how the program is to end
 * @throws Error in words where they ask for nothing that can be done
 */
export async function run(words: readonly string[], around: Around): Promise<number> {
  const asked = readArguments(words);
  if (!asked) {
    around.out(HELP);
    return CODE.holds;
  }
  const command = new Command(asked, loadFunctions(around.folder), around);
  const jobs = jobsOf(asked);
  if (jobs.length === 0 && !asked.watch) throw new Error('There is no workbook (.xlsx) there.');
  let code: number = CODE.holds;
  for (const [at, job] of jobs.entries()) {
    if (around.stop.aborted)
      throw new Error(
        `Stopped. Not worked out: ${jobs
          .slice(at)
          .map(({ file }) => file)
          .join(', ')}.`,
      );
    code = Math.max(code, await command.one(job));
  }
  if (!asked.watch) {
    command.end();
    return code;
  }
  if (!asked.quiet) around.say('Watching. Press Ctrl+C to stop.\n');
  const failed = (error: unknown) => around.say(`${whatWentWrong(error)}\n`);
  const work = (job: Job) => command.one(job);
  await watchFiles(asked.files, isWorkbook, () => jobsOf(asked), work, failed, around.stop);
  return code;
}

/** The workbooks named and those in the folders named, each with its own place. @throws Error where two would have the same */
function jobsOf(asked: Asked): readonly Job[] {
  const { files: named, to, paper } = asked;
  const isFolder = (name: string) => existsSync(name) && statSync(name).isDirectory();
  const files = named.flatMap((name) =>
    isFolder(name)
      ? readdirSync(name)
          .filter(isWorkbook)
          .sort()
          .map((file) => join(name, file))
      : [name],
  );
  const several = named.length > 1 || named.some(isFolder);
  const into = several || /[/\\]$/.test(to) || isFolder(to);
  const jobs = files.map((file) => ({
    file,
    to: into ? join(to, basename(file)) : to,
    paper: paper && (several ? join(paper.folder, basename(file).replace(/\.[^.]*$/, '')) : paper.folder),
  }));
  const places = new Map<string, string>();
  for (const { file, to: place } of jobs) {
    const before = places.get(place.toLowerCase());
    if (before !== undefined)
      throw new Error(`${before} and ${file} would both be written as ${place}; rename one of them.`);
    places.set(place.toLowerCase(), file);
  }
  return jobs;
}

/** The office suite keeps notes of its own beside a workbook that is open. */
function isWorkbook(name: string): boolean {
  return /\.xls[xm]$/i.test(name) && !basename(name).startsWith('~$') && !basename(name).startsWith('.');
}

/** What was found out about one file. */
interface Report {
  readonly file: string;
  readonly [fact: string]: unknown;
}

/** Works files out one by one and keeps what is to be told of all of them. */
class Command {
  private readonly reports = new Map<string, Report>();

  constructor(
    private readonly asked: Asked,
    private readonly functions: FunctionsBundle,
    private readonly around: Around,
  ) {}

  /** @returns how the program would end after this file alone */
  async one(job: Job): Promise<number> {
    const { file, to } = job;
    const { quiet, values } = this.asked;
    const { say } = this.around;
    try {
      if (resolve(to) === resolve(file)) throw new Error('it would be written over itself; name another file');
      if (!quiet) say(`Working out ${file} …\n`);
      const bytes = readFileSync(file);
      const searched: SearchedStock[] = [];
      const done = await recompute(bytes, this.asked.changes, this.functions, async (host) => {
        if (this.asked.search === undefined) return false;
        searched.push(...(await this.search(host, this.asked.search)));
        return searched.some(({ before, sheets }) => sheets < before);
      });
      mkdirSync(dirname(resolve(to)), { recursive: true });
      writeWhole(to, writeBook(values ? valuesOnly(done.book) : done.book));
      this.tell(job, done, searched);
      if (job.paper !== undefined) await this.paper(job.paper, done);
      return done.wrong.length > 0 ? CODE.wrong : CODE.holds;
    } catch (error) {
      const why = whatWentWrong(error);
      say(`${file}: the file cannot be worked out: ${why}.\n`.replace(/\.\.\n$/, '.\n'));
      this.report({ file, unread: why });
      return CODE.unread;
    }
  }

  private async search(host: Parameters<typeof searchWorkbook>[0], effort: number): Promise<readonly SearchedStock[]> {
    const { folder, stop, say, live } = this.around;
    const line = new SearchLine(say, live);
    const crew = crewOfThreads(folder);
    const token = {
      get stopped() {
        return stop.aborted;
      },
    };
    try {
      const tell = this.asked.quiet
        ? () => undefined
        : (progress: Parameters<SearchLine['tell']>[0]) => line.tell(progress);
      return await searchWorkbook(host, effort, crew, tell, token);
    } finally {
      line.end();
      crew.end();
    }
  }

  /** Puts the run on paper. */
  private async paper(out: string, { inputs, name }: Recomputed): Promise<void> {
    const { paper, quiet } = this.asked;
    if (!paper) return;
    const { plan, money } = readPlan(planCells(inputs));
    if (plan.buildable.length === 0) {
      this.around.say('There is no run to put on paper.\n');
      return;
    }
    const { writeDocuments } = await import('./write-documents');
    await writeDocuments(
      {
        job: { plan, money, paper: paper.format, run: name, date: dateInWords(new Date()), tickets: paper.tickets },
        tables: Object.values(INPUT_TABLES).map((table) => inputs.get(table.name) ?? null),
        fonts: builtFonts(this.around.folder),
        kinds: paper.kinds,
        out,
      },
      (sentence) => {
        if (!quiet) this.around.say(`${sentence}\n`);
      },
    );
  }

  private tell({ file, to }: Job, done: Recomputed, searched: readonly SearchedStock[]): void {
    const { tables, wrong, left, broughtUp } = done;
    const { out, say } = this.around;
    const { quiet, search } = this.asked;
    if (!quiet) {
      for (const name of SHOWN) {
        for (const table of tables.filter((one) => one.name === name)) out(`\n${terminalTable(table)}\n`);
      }
      out(`\n${file} is worked out: ${to}\n`);
      if (search !== undefined) say(`${searchInWords(searched, this.around.stop.aborted)}\n`);
      for (const what of broughtUp) say(`${what}\n`);
      for (const what of left) say(`Not in it: ${what}\n`);
    }
    for (const { at, what } of wrong) say(`${at} ${what}\n`);
    this.report({
      file,
      written: to,
      wrong,
      left,
      ...(search !== undefined && { searched }),
      tables: tables.map(({ name, at, rows }) => ({ name, at, rows })),
    });
  }

  /** Written anew with each file, so that it is whole whenever the work ends; on the terminal at the end. */
  private report(report: Report): void {
    const { json, watch } = this.asked;
    if (json === undefined) return;
    this.reports.set(report.file, report);
    if (json !== '-') writeWhole(json, this.json);
    else if (watch) this.around.out(`${JSON.stringify(report, null, 2)}\n`);
  }

  /** All files are worked out. */
  end(): void {
    if (this.asked.json === '-') this.around.out(this.json);
  }

  /** Of one file its report, of several a list. */
  private get json(): string {
    const all = [...this.reports.values()];
    const { files } = this.asked;
    const one = files.length === 1 && all.length === 1 && all[0]?.file === files[0];
    return `${JSON.stringify(one ? all[0] : all, null, 2)}\n`;
  }
}
