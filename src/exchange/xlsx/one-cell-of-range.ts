import { type AstExpression, parse, tokenize } from '@borgar/fx';
import { OF_RANGES } from './newer-functions';

/** What a place in a formula takes: one cell, a whole range, or a range through which it works cell by cell. */
type Place = 'one' | 'range' | 'each';

/** Functions that take one cell for each argument, as they did before tables spilled. */
const OF_CELLS: ReadonlySet<string> = new Set(
  `ABS ACOS ASIN ATAN ATAN2 CEILING CHAR CLEAN CODE COMBIN CONCATENATE COS COSH DATE DATEVALUE DAY DEGREES EVEN EXACT
  EXP FACT FIND FIXED FLOOR HOUR INT ISBLANK ISERR ISERROR ISLOGICAL ISNA ISNONTEXT ISNUMBER ISTEXT LEFT LEN LN LOG
  LOG10 LOWER MID MINUTE MOD MONTH NOT ODD POWER PROPER RADIANS REPLACE REPT RIGHT ROUND ROUNDDOWN ROUNDUP SEARCH SECOND
  SIGN SIN SINH SQRT SUBSTITUTE TAN TANH TEXT TIME TIMEVALUE TRIM TRUNC UPPER VALUE WEEKDAY YEAR`.split(/\s+/),
);
/** First argument, from 0, and last in which functions work through ranges cell by cell wherever they stand. */
const EACH_OF: Readonly<Record<string, readonly [first: number, last: number]>> = {
  INDEX: [0, 0],
  LOOKUP: [1, 2],
  MATCH: [1, 1],
  MDETERM: [0, 0],
  SUMPRODUCT: [0, Infinity],
};

/** Which argument of a function, from 0, takes one cell although others take ranges. */
const ONE_OF: Readonly<Record<string, (argument: number) => boolean>> = {
  AVERAGEIF: (at) => at === 1,
  AVERAGEIFS: (at) => at > 0 && at % 2 === 0,
  COUNTIF: (at) => at === 1,
  COUNTIFS: (at) => at % 2 === 1,
  HLOOKUP: (at) => at !== 1,
  INDEX: () => true,
  LARGE: (at) => at === 1,
  LOOKUP: () => true,
  MATCH: () => true,
  MAXIFS: (at) => at > 0 && at % 2 === 0,
  MINIFS: (at) => at > 0 && at % 2 === 0,
  OFFSET: (at) => at > 0,
  PERCENTILE: (at) => at === 1,
  QUARTILE: (at) => at === 1,
  RANK: (at) => at !== 1,
  SMALL: (at) => at === 1,
  SUMIF: (at) => at === 1,
  SUMIFS: (at) => at > 0 && at % 2 === 0,
  VLOOKUP: (at) => at !== 1,
};

/**
 * A formula of a file that is not marked as one of tables, with an @ before each range of which it means the one cell in its own
 * row or column: without it the table spills. Only where that is sure; functions that are not known are left alone. Source:
 * vendor's "Implicit intersection operator: @".
 */
export function withOneOfRanges(formula: string): string {
  if (!formula.includes(':')) return formula;
  const root = parsed(formula);
  const places: number[] = [];
  if (root) gather(root, 'one', places);
  return withMarks(formula, places);
}

/** How a file has a formula whose every @ is one that it needs not say; undefined for any other. */
export function withoutMarks(formula: string): string | undefined {
  if (!formula.includes('@')) return undefined;
  const bare = tokenize(formula, { mergeRefs: true })
    .filter(({ type, value }) => type !== 'operator' || value !== '@')
    .map(({ value }) => value)
    .join('');
  return bare !== formula && withOneOfRanges(bare) === formula ? bare : undefined;
}

function withMarks(formula: string, places: readonly number[]): string {
  return [...places]
    .sort((one, other) => other - one)
    .reduce((text, at) => `${text.slice(0, at)}@${text.slice(at)}`, formula);
}

function parsed(formula: string): AstExpression | undefined {
  try {
    return parse(tokenize(formula, { mergeRefs: true, withLocation: true }));
  } catch {
    return undefined;
  }
}

/** Gathers where ranges begin of which one cell is meant. */
function gather(node: AstExpression | null, place: Place, found: number[]): void {
  if (!node) return;
  if (node.type === 'ReferenceIdentifier') {
    const [at] = node.loc ?? [];
    if (place === 'one' && at !== undefined && isRange(node)) found.push(at);
  } else if (node.type === 'UnaryExpression' || node.type === 'BinaryExpression') {
    // Between references these make a reference; an @ or # says itself what is meant.
    if ([':', ',', ' ', '@', '#'].includes(node.operator)) return;
    for (const one of node.arguments) gather(one, place === 'each' ? 'each' : 'one', found);
  } else if (node.type === 'CallExpression' && 'name' in node.callee) {
    const name = String(node.callee.name).toUpperCase();
    node.arguments.forEach((one, at) => gather(one, placeIn(name, at, place), found));
  }
}

function placeIn(name: string, argument: number, around: Place): Place {
  const [first, last] = EACH_OF[name] ?? [1, 0];
  if (around === 'each' || (argument >= first && argument <= last)) return 'each';
  if (OF_CELLS.has(name)) return 'one';
  // What it answers with is handed on as it is.
  if (name === 'IF') return argument === 0 ? 'one' : around;
  if (name === 'IFERROR') return around;
  if (OF_RANGES.has(name)) return ONE_OF[name]?.(argument) ? 'one' : 'range';
  return 'each';
}

function isRange({ kind, value }: { readonly kind: string; readonly value: string }): boolean {
  return kind === 'beam' || (kind === 'range' && value.slice(value.lastIndexOf('!') + 1).includes(':'));
}
