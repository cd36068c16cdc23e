/** What the grid's own errors mean and what would do, for a reader of the cell. Custom functions say it themselves. */
const sentences: Readonly<Record<string, string>> = {
  '#GETTING_DATA': 'The answer is being worked out.',
  '#SPILL!': 'The table needs room; empty the cells below and to the right, or move the formula.',
  '#NAME?': 'The formula names a function or a range that does not exist; put its spelling right.',
  '#REF!': 'The formula refers to cells that no longer exist; point it to others.',
  '#DIV/0!': 'The formula divides by zero or by a blank cell; give a divisor.',
  '#VALUE!': 'A value is of the wrong kind for the formula; give a number where it needs one.',
  '#N/A': 'The formula finds no answer to its values.',
  '#NUM!': 'A number is out of the formula’s range.',
  '#CYCLE!': 'The formula refers to its own cell; point it to others.',
  '#CALC!': 'The formula has nothing to work on.',
  '#NULL!': 'The formula intersects ranges that do not meet.',
  '#ERROR!': 'The formula cannot be read; put its brackets and commas right.',
};

/** The sentence for an error's code; undefined where the text is no error. */
export function problemOf(code: unknown): string | undefined {
  return typeof code === 'string' && Object.hasOwn(sentences, code) ? sentences[code] : undefined;
}
