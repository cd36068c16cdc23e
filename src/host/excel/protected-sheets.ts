/**
 * Asks, before anything is written, whether all of it may be: what is refused on one sheet would leave the others changed.
 * @returns to be called after the next exchange; throws an Error that names the sheets whose protection is in the way
 */
export function askedUnprotected(sheets: readonly Excel.Worksheet[]): () => void {
  const asked = sheets.map((sheet) => ({ sheet: sheet.load('name'), by: sheet.protection.load('protected') }));
  return () => refuse(asked.filter(({ by }) => by.protected).map(({ sheet }) => sheet.name));
}

/**
 * The same of cells, which the maker may have unlocked on a protected sheet.
 * @throws Error that names the sheets whose protection is in the way
 */
export async function assertWritable(context: Excel.RequestContext, ranges: readonly Excel.Range[]): Promise<void> {
  const asked = ranges.map((range) => ({
    sheet: range.worksheet.load('name'),
    by: range.worksheet.protection.load('protected'),
    cells: range.format.protection.load('locked'),
  }));
  await context.sync();
  // Of cells some of which are locked the suite says null.
  const held = asked.filter(({ by, cells }) => by.protected && cells.locked !== false);
  refuse(held.map(({ sheet }) => sheet.name));
}

function refuse(protectedSheets: readonly string[]): void {
  const names = [...new Set(protectedSheets)].map((name) => `“${name}”`);
  if (names.length === 0) return;
  const those = names.length === 1 ? `The sheet ${names[0]} is` : `The sheets ${names.join(', ')} are`;
  throw new Error(
    `${those} protected. Choose Review, Unprotect Sheet there, then do it again. Nothing has been changed.`,
  );
}
