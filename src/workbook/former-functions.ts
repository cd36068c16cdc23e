/** Names that functions had before, each with today's. They were changed once; no name is ever given to another function. */
const FORMER: Readonly<Record<string, string>> = { ROUNDS: 'BATCHES', MIXEDCUTTING: 'LAYOUTSEARCH' };

/** Text and quoted names of sheets, which stay as they are; and calls of functions that had another name. */
const PARTS = new RegExp(
  `"(?:[^"]|"")*"|'(?:[^']|'')*'|\\bSOLEBENCH\\.(${Object.keys(FORMER).join('|')})(?=\\s*\\()`,
  'gi',
);

/** A formula with today's names of functions, whatever names it was written with. */
export function withTodaysFunctions(formula: string): string {
  return formula.replace(PARTS, (part, name: string | undefined) =>
    name === undefined ? part : `SOLEBENCH.${FORMER[name.toUpperCase()]}`,
  );
}
