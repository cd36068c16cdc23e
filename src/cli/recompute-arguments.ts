import { itemAt } from '../core/item-at';
import type { TicketsFor } from '../drawing/paper/chosen';
import { type PaperFormat, paperOf, PAPERS } from '../drawing/paper/page';
import { EFFORT, type Effort, EFFORTS } from '../workers/search-stock';
import { DOCUMENT_KINDS, documentKinds, ticketsFor } from './document-kinds';
import { type Change, readChange } from './recompute-workbook';

/** What `npm run recompute` is asked to do. */
export interface Asked {
  readonly files: readonly string[];
  /** A file, or a folder where there are several files. */
  readonly to: string;
  readonly json?: string;
  readonly changes: readonly Change[];
  /** Millions of places tried a stock; undefined where nothing is searched. */
  readonly search?: number;
  /** What is put on paper, and where. */
  readonly paper?: {
    readonly folder: string;
    readonly kinds: readonly string[];
    readonly format: PaperFormat;
    readonly tickets: TicketsFor;
  };
  readonly watch: boolean;
  readonly quiet: boolean;
  /** Writes values in place of formulas. */
  readonly values: boolean;
}

const EFFORT_NAMES = Object.keys(EFFORTS).join(', ');

export const HELP = `Works a workbook file out anew, as the page does, and writes it with its values.

  npm run recompute -- IN.xlsx OUT.xlsx
  npm run recompute -- IN1.xlsx IN2.xlsx FOLDER/
  npm run recompute -- FOLDER/ OTHER-FOLDER/ --watch

  --set 'Run!D5=4'    changes a cell first; may be given several times. Nothing after "=" empties the cell.
  --search EFFORT     looks for layouts with fewer sheets and puts those it finds into the table Layouts, as the page
                      does. EFFORT is ${EFFORT_NAMES}, or millions of places tried a stock
                      (${EFFORT.least} to ${EFFORT.most}). Ctrl+C ends the search and keeps the best so far.
  --paper FOLDER      writes the run's documents there; of several files each into a folder of its own
  --documents KINDS   only these, separated by commas: ${DOCUMENT_KINDS.slice(0, 6).join(', ')},
                      ${DOCUMENT_KINDS.slice(6).join(', ')}
  --page FORMAT       A4, A3, Letter or width × height in mm, such as 300x400; usual A4
  --tickets size      one for each size, as usual, or with "style" one for all sizes of a style
  --json FILE         writes the tables and what is wrong as JSON, of several files as a list; "-" writes it to the
                      terminal, with --watch file by file
  --values            writes values in place of formulas, for programs that do not know the functions
  --watch             goes on, and works a file out again whenever it changes, until Ctrl+C
  --quiet             says only what is wrong
  --help              shows this

Ends with 0 when all holds, 1 where something must be put right, 2 for a file that cannot be read or written.
`;

/** Reads the words of the command. @returns undefined where help is asked for @throws Error in words */
export function readArguments(words: readonly string[]): Asked | undefined {
  if (words.length === 0 || words.includes('--help') || words.includes('-h')) return undefined;
  const files: string[] = [];
  const changes: Change[] = [];
  const flags = { watch: false, quiet: false, values: false };
  const given: Partial<Record<(typeof WITH_WORD)[number], string>> = {};
  for (let at = 0; at < words.length; at++) {
    const [word, joined] = split(itemAt(words, at));
    const name = word.replace(/^--/, '');
    const value = () => {
      const found = joined ?? words[++at];
      if (found === undefined || found === '') throw new Error(`${word} needs something after it. See --help.`);
      return found;
    };
    if (word === '--set') changes.push(readChange(value()));
    else if (word.startsWith('--') && isWithWord(name)) given[name] = value();
    else if (word.startsWith('--') && name in flags && joined === undefined) flags[name as 'watch'] = true;
    else if (word.startsWith('--')) throw new Error(`${word} is not known. See --help.`);
    else files.push(word);
  }
  const to = files.pop();
  if (to === undefined || files.length === 0) throw new Error('Name a file to read and one to write. See --help.');
  const { json, search, paper, documents, page, tickets } = given;
  if (paper === undefined && (documents ?? page ?? tickets) !== undefined)
    throw new Error('--documents, --page and --tickets say what --paper FOLDER writes. See --help.');
  return {
    files,
    to,
    changes,
    ...flags,
    ...(json !== undefined && { json }),
    ...(search !== undefined && { search: effortOf(search) }),
    ...(paper !== undefined && {
      paper: {
        folder: paper,
        kinds: documents === undefined ? DOCUMENT_KINDS : documentKinds(documents),
        format: formatOf(page),
        tickets: ticketsFor(tickets ?? 'size'),
      },
    }),
  };
}

/** Words that another word belongs to. */
const WITH_WORD = ['json', 'search', 'paper', 'documents', 'page', 'tickets'] as const;

function isWithWord(name: string): name is (typeof WITH_WORD)[number] {
  return (WITH_WORD as readonly string[]).includes(name);
}

function effortOf(words: string): number {
  const effort = Object.hasOwn(EFFORTS, words) ? EFFORTS[words as Effort] : Number(words);
  if (effort >= EFFORT.least && effort <= EFFORT.most) return effort;
  throw new Error(
    `--search takes ${EFFORT_NAMES}, or a number of ${EFFORT.least} to ${EFFORT.most}, and "${words}" is none of them.`,
  );
}

function formatOf(words: string | undefined): PaperFormat {
  const format = words === undefined ? PAPERS.A4 : paperOf(words);
  if (!format) throw new Error(`--page ${words} is none of A4, A3, Letter or width × height in mm, such as 300x400.`);
  return format;
}

/** A word such as --json=FILE in its two parts. */
function split(word: string): [string, string | undefined] {
  const joined = /^(--[a-z]+)=(.*)$/s.exec(word);
  return joined ? [itemAt(joined, 1), joined[2]] : [word, undefined];
}
