/**
 * Rows as CSV (RFC 4180): lines end in CR LF, fields with commas, quotes or breaks stand in quotes, quotes doubled. A text
 * that a spreadsheet would take for a formula gets an apostrophe before it, which makes it text.
 */
export function writeCsv(rows: readonly (readonly (string | number | undefined)[])[]): string {
  return rows.map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

function field(value: string | number | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'number') return Number.isFinite(value) ? String(value) : '';
  const harmless = /^[\s\p{Cf}]*[=+\-@\t\r]/u.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
