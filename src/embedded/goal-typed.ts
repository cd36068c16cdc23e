const CELLS = /^\$?[a-z]{1,3}\$?[1-9]\d{0,6}(:\$?[a-z]{1,3}\$?[1-9]\d{0,6})?$/i;

/** What the box above the sheet was told to go to: a sheet, and cells of it where they were named too. */
export interface Goal {
  readonly sheet: string;
  readonly cells?: string;
}

/**
 * Reads a cell of another sheet (Lasts!E4, 'Costs and times'!B4), a sheet's name, or a name that was given to cells,
 * whichever its capitals.
 * @param names given to cells, with what they stand for
 * @returns undefined for all else, which the grid itself understands
 */
export function goalOf(
  typed: string,
  sheets: readonly string[],
  names: readonly { readonly name: string; readonly reference: string }[],
): Goal | undefined {
  const text = typed.trim();
  const named = names.find(({ name }) => alike(name, text))?.reference;
  const said = named ?? text;
  const at = said.lastIndexOf('!');
  if (at < 0) {
    const sheet = sheets.find((name) => alike(name, said));
    return sheet === undefined ? undefined : { sheet };
  }
  const cells = said.slice(at + 1).trim();
  if (!CELLS.test(cells)) return undefined;
  const quoted = said.slice(0, at).trim();
  const own = /^'.*'$/.test(quoted) ? quoted.slice(1, -1).replaceAll("''", "'") : quoted;
  return { sheet: sheets.find((name) => alike(name, own)) ?? own, cells: cells.toUpperCase() };
}

// The box drops the blanks that are typed.
const plain = (name: string) => name.replace(/\s/g, '').toLowerCase();
const alike = (one: string, other: string) => plain(one) === plain(other);
