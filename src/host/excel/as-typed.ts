/** Beginnings and whole texts that the office suite would take for a formula, a number, a day or a truth value. */
const TAKEN_OTHERWISE =
  /^[=+\-@'\d.,(%$€£¥]|^(true|false)$|^(jan|feb|mar|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez)[a-zä]*\.?[\s./-]*\d/i;

/** A value as it must be given to a cell of the office suite, which reads text as if it were typed; '' is blank. */
export function asTyped(value: string | number | boolean): string | number | boolean {
  return typeof value === 'string' && TAKEN_OTHERWISE.test(value.trim()) ? `'${value}` : value;
}

/** A number format for the office suite, in which letters that are none of its codes stand in quotes. */
export function formatCode(pattern: string): string {
  return pattern.replace(/"[^"]*"|[°²³]+/g, (part) => (part.startsWith('"') ? part : `"${part}"`));
}
