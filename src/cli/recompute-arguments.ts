import { type Change, readChange } from './recompute-workbook';

/** What `npm run recompute` is asked to do. */
export interface Asked {
  readonly files: readonly string[];
  /** A file, or a folder where there are several files. */
  readonly to: string;
  readonly json?: string;
  readonly changes: readonly Change[];
  readonly watch: boolean;
  readonly quiet: boolean;
  /** Writes values in place of formulas. */
  readonly values: boolean;
}

export const HELP = `Works a workbook file out anew, as the page does, and writes it with its values.

  npm run recompute -- IN.xlsx OUT.xlsx
  npm run recompute -- IN1.xlsx IN2.xlsx FOLDER/
  npm run recompute -- FOLDER/ OTHER-FOLDER/ --watch

  --set 'Run!D5=4'  changes a cell first; may be given several times. Nothing after "=" empties the cell.
  --json FILE       writes order, cost, checks and what is wrong as JSON; "-" writes it to the terminal
  --values          writes values in place of formulas, for programs that do not know the functions
  --watch           goes on, and works a file out again whenever it changes
  --quiet           says only what is wrong
  --help            shows this

Ends with 0 when all holds, 1 where something must be put right, 2 for a file that cannot be read or written.
`;

/** Reads the words of the command. @returns undefined where help is asked for @throws Error in words */
export function readArguments(words: readonly string[]): Asked | undefined {
  if (words.length === 0 || words.includes('--help') || words.includes('-h')) return undefined;
  const files: string[] = [];
  const changes: Change[] = [];
  const flags = { watch: false, quiet: false, values: false };
  let json: string | undefined;
  for (let at = 0; at < words.length; at++) {
    const [word, joined] = split(words[at] as string);
    const value = () => {
      const found = joined ?? words[++at];
      if (found === undefined) throw new Error(`${word} needs something after it. See --help.`);
      return found;
    };
    if (word === '--set') changes.push(readChange(value()));
    else if (word === '--json') json = value();
    else if (word === '--watch' || word === '--quiet' || word === '--values') flags[word.slice(2) as 'watch'] = true;
    else if (word.startsWith('--')) throw new Error(`${word} is not known. See --help.`);
    else files.push(word);
  }
  const to = files.pop();
  if (to === undefined || files.length === 0) throw new Error('Name a file to read and one to write. See --help.');
  return { files, to, changes, ...flags, ...(json !== undefined && { json }) };
}

/** A word such as --json=FILE in its two parts. */
function split(word: string): [string, string | undefined] {
  const joined = /^(--[a-z]+)=(.*)$/s.exec(word);
  return joined ? [joined[1] as string, joined[2]] : [word, undefined];
}
