import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  watch,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, resolve, sep } from 'node:path';
import process from 'node:process';
import { whatWentWrong } from '../core/what-went-wrong';
import { valuesOnly } from '../exchange/xlsx/values-only';
import { writeBook } from '../exchange/xlsx/write';
import { type FunctionsBundle, loadFunctions } from './functions-bundle';
import { type Asked, HELP, readArguments } from './recompute-arguments';
import { recompute, type Recomputed } from './recompute-workbook';
import { terminalTable } from './terminal-table';

/** Tables that are shown on the terminal, in this order. */
const SHOWN = ['Order', 'Cost', 'Checks'];
/** How the command ends. */
const CODE = { holds: 0, wrong: 1, unread: 2 } as const;
/** Programs write a file in several steps: it is read once it has rested, ms. */
const REST = 300;

/** Entry of recompute.cjs. */
run(process.argv.slice(2)).then(
  (code) => {
    process.exitCode = code;
  },
  (error: unknown) => {
    console.error(whatWentWrong(error));
    process.exitCode = CODE.unread;
  },
);

async function run(words: readonly string[]): Promise<number> {
  const asked = readArguments(words);
  if (!asked) {
    console.log(HELP);
    return CODE.holds;
  }
  const functions = loadFunctions(__dirname);
  const files = filesOf(asked.files);
  if (files.length === 0 && !asked.watch) throw new Error('There is no workbook (.xlsx) there.');
  let code: number = CODE.holds;
  for (const file of files) code = Math.max(code, await one(file, asked, functions, files.length > 1));
  if (!asked.watch) return code;
  await follow(asked, functions);
  return code;
}

/** The workbooks named, and those in the folders named. */
function filesOf(named: readonly string[]): string[] {
  return named.flatMap((name) =>
    existsSync(name) && statSync(name).isDirectory()
      ? readdirSync(name)
          .filter(isWorkbook)
          .sort()
          .map((file) => join(name, file))
      : [name],
  );
}

/** The office suite keeps notes of its own beside a workbook that is open. */
function isWorkbook(name: string): boolean {
  return /\.xls[xm]$/i.test(name) && !basename(name).startsWith('~$');
}

async function one(file: string, asked: Asked, functions: FunctionsBundle, several: boolean): Promise<number> {
  try {
    const to = target(file, asked, several);
    if (resolve(to) === resolve(file)) throw new Error('it would be written over itself; name another file');
    if (!asked.quiet) console.error(`Working out ${file} …`);
    const done = await recompute(readFileSync(file), asked.changes, functions);
    writeWhole(to, writeBook(asked.values ? valuesOnly(done.book) : done.book));
    tell(file, to, done, asked);
    return done.wrong.length > 0 ? CODE.wrong : CODE.holds;
  } catch (error) {
    console.error(`${file}: the file cannot be worked out: ${whatWentWrong(error)}.`.replace(/\.\.$/, '.'));
    return CODE.unread;
  }
}

function target(file: string, { to }: Asked, several: boolean): string {
  const folder = several || /[/\\]$/.test(to) || (existsSync(to) && statSync(to).isDirectory());
  if (!folder) return to;
  mkdirSync(to, { recursive: true });
  return join(to, basename(file));
}

/** A file is either the old one or the whole new one, whatever happens while it is written. */
function writeWhole(to: string, bytes: Uint8Array | string): void {
  const draft = join(dirname(resolve(to)), `.${basename(to)}.${process.pid}${sep === '/' ? '' : '.tmp'}`);
  try {
    writeFileSync(draft, bytes);
    renameSync(draft, to);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  }
}

function tell(file: string, to: string, { tables, wrong, left, broughtUp }: Recomputed, { quiet, json }: Asked): void {
  if (!quiet) {
    for (const name of SHOWN) {
      for (const table of tables.filter((one) => one.name === name)) console.log(`\n${terminalTable(table)}`);
    }
    console.log(`\n${file} is worked out: ${to}`);
    for (const what of broughtUp) console.error(what);
    for (const what of left) console.error(`Not in it: ${what}`);
  }
  for (const { at, what } of wrong) console.error(`${at} ${what}`);
  if (json === undefined) return;
  const report = { file, written: to, wrong, left, tables: tables.map(({ name, at, rows }) => ({ name, at, rows })) };
  const text = `${JSON.stringify(report, null, 2)}\n`;
  if (json === '-') process.stdout.write(text);
  else writeWhole(json, text);
}

/** Works files out again as they change, one after the other, until the program is stopped. */
function follow(asked: Asked, functions: FunctionsBundle): Promise<never> {
  const pending = new Map<string, ReturnType<typeof setTimeout>>();
  let work = Promise.resolve();
  const changed = (file: string, several: boolean) => {
    clearTimeout(pending.get(file));
    const begin = () => {
      pending.delete(file);
      if (!existsSync(file)) return;
      work = work.then(async () => void (await one(file, asked, functions, several)));
    };
    pending.set(file, setTimeout(begin, REST));
  };
  const several = asked.files.length > 1;
  for (const name of asked.files) {
    const folder = existsSync(name) && statSync(name).isDirectory();
    // A folder is watched for a single file too: programs put a new file in the old one's place.
    watch(folder ? name : dirname(resolve(name)), (_, file) => {
      if (file === null || !isWorkbook(file)) return;
      if (folder) changed(join(name, file), true);
      else if (file === basename(name)) changed(name, several);
    });
  }
  if (!asked.quiet) console.error('Watching. Press Ctrl+C to stop.');
  return new Promise(() => undefined);
}
