import { itemAt } from '../../core/item-at';
import { type Token, tokenize } from '@borgar/fx';
import { NEWER, OF_ARRAYS, OF_RANGES, OF_WORKSHEETS } from './newer-functions';

/** Stands in a file before the name of a function that an add-in brings, its dots turned to low lines. */
const ADD_IN = '_xldudf_';
/** The namespace of our functions. */
const OURS = /^SOLEBENCH\.([A-Z][A-Z0-9]*)$/i;

/**
 * A formula as a file has it: without its "=", functions of ours and newer ones under the names that files have for them.
 * @param formula with its leading "=", as a maker writes it
 */
export function storedFormula(formula: string): string {
  const tokens = singlesWrapped(tokenize(formula, { mergeRefs: true }));
  const parameters = parameterTokens(tokens);
  return tokens
    .slice(tokens[0]?.type === 'fx_prefix' ? 1 : 0)
    .map((token) => {
      if (parameters.has(token)) return `_xlpm.${token.value}`;
      return token.type === 'func' ? storedFunction(token.value) : token.value;
    })
    .join('');
}

/** A formula with SINGLE( … ) for each @, which files do not know. */
function singlesWrapped(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findLastIndex(({ type, value }) => type === 'operator' && value === '@');
  if (at < 0) return tokens;
  const end = endOfOperand(tokens, at + 1);
  const [before, operand, after] = [tokens.slice(0, at), tokens.slice(at + 1, end), tokens.slice(end)];
  const wrapped: Token[] = [
    { type: 'func', value: 'SINGLE' },
    { type: 'operator', value: '(' },
    ...operand,
    { type: 'operator', value: ')' },
  ];
  return singlesWrapped([...before, ...wrapped, ...after]);
}

/** Where what an @ stands before ends: a function or brackets with all in them, else one token. */
function endOfOperand(tokens: readonly Token[], from: number): number {
  let at = from;
  while (tokens[at]?.type === 'whitespace') at++;
  if (tokens[at]?.type === 'func') at++;
  if (tokens[at]?.value !== '(') return Math.min(tokens.length, at + 1);
  let depth = 0;
  for (; at < tokens.length; at++) {
    const { type, value } = itemAt(tokens, at);
    if (type !== 'operator') continue;
    if (value === '(') depth++;
    else if (value === ')' && --depth === 0) return at + 1;
  }
  return tokens.length;
}

function storedFunction(name: string): string {
  if (OURS.test(name)) return ADD_IN + name.replaceAll('.', '_');
  const plain = name.toUpperCase();
  if (OF_WORKSHEETS.has(plain)) return `_xlfn._xlws.${plain}`;
  return NEWER.has(plain) ? `_xlfn.${plain}` : name;
}

/** A formula as a maker writes it, with its leading "=", from how a file has it. */
export function writtenFormula(stored: string): string {
  const bare = stored.startsWith('=') ? stored.slice(1) : stored;
  if (!/_xl|xldudf/i.test(bare)) return `=${bare}`;
  const tokens = singlesUnwrapped(tokenize(bare, { mergeRefs: true }));
  return `=${tokens.map(({ type, value }) => (isName(type) ? writtenName(value) : value)).join('')}`;
}

/** Tokens with an @ for each SINGLE( … ), which the grid does not know; around more than one token its brackets stay. */
function singlesUnwrapped(tokens: readonly Token[]): readonly Token[] {
  const at = tokens.findLastIndex(({ type, value }) => type === 'func' && /^_xlfn\.SINGLE$/i.test(value));
  if (at < 0 || tokens[at + 1]?.value !== '(') return tokens;
  const end = endOfOperand(tokens, at);
  const inside = tokens.slice(at + 2, end - 1);
  const alone = inside.length > 0 && endOfOperand(inside, 0) === inside.length;
  const operand = alone ? inside : tokens.slice(at + 1, end);
  return singlesUnwrapped([...tokens.slice(0, at), { type: 'operator', value: '@' }, ...operand, ...tokens.slice(end)]);
}

function isName(type: string): boolean {
  return type === 'func' || type === 'range_named' || type === 'unknown';
}

function writtenName(stored: string): string {
  const ours = new RegExp(`^(?:_xlfn\\.)?${ADD_IN}(SOLEBENCH)_([A-Z][A-Z0-9]*)$`, 'i').exec(stored);
  if (ours) return `${ours[1]}.${ours[2]}`.toUpperCase();
  const [, marks = '', name = ''] = /^((?:_xlfn\.|_xlws\.|_xlpm\.)*)(.*)$/is.exec(stored) ?? [];
  // A function that is newer than this keeps its mark, without which the office suite would not know it.
  return /_xlpm\.$/i.test(marks) || NEWER.has(name.toUpperCase()) ? name : stored;
}

/**
 * Whether a formula must be marked so that the office suite lets its table spill, and does not put an @ before it: where it
 * calls a function of ours or one of tables, or works with a range cell by cell.
 */
export function answersWithTable(formula: string): boolean {
  if (!/[:({#@]/.test(formula)) return false;
  const tokens = tokenize(formula, { mergeRefs: true }).filter(({ type }) => type !== 'whitespace');
  return tokens.some(({ type, value }, at) => {
    if (type === 'func') return OURS.test(value) || OF_ARRAYS.has(value.toUpperCase());
    if (type === 'operator' && (value === '#' || value === '@')) return true;
    if (!isRange(type, value)) return false;
    const [before, after] = [tokens[at - 1], tokens[at + 1]];
    const within = enclosing(tokens, at);
    return !isEdge(before) || !isEdge(after) || within === undefined || !OF_RANGES.has(within.toUpperCase());
  });
}

/** Whether a token is a range of more than one cell, or an array. */
function isRange(type: string, value: string): boolean {
  return type === 'range_beam' || type === 'range_ternary' || (type === 'range' && value.includes(':'));
}

/** Whether a token is where an argument begins or ends. */
export function isEdge(token: Token | undefined): boolean {
  return token?.type === 'operator' && '(),;'.includes(token.value);
}

/** Name of the function among whose arguments a token is. */
export function enclosing(tokens: readonly Token[], at: number): string | undefined {
  let depth = 0;
  for (let before = at - 1; before >= 0; before--) {
    const { type, value } = itemAt(tokens, before);
    if (type !== 'operator') continue;
    if (value === ')') depth++;
    else if (value === '(' && depth-- === 0) {
      const name = tokens[before - 1];
      return name?.type === 'func' ? name.value : undefined;
    }
  }
  return undefined;
}

/** Names that LET and LAMBDA give, wherever they stand among those functions' arguments. */
function parameterTokens(tokens: readonly Token[]): ReadonlySet<Token> {
  const found = new Set<Token>();
  tokens.forEach(({ type, value }, at) => {
    const kind = type === 'func' ? value.toUpperCase() : '';
    if (kind !== 'LET' && kind !== 'LAMBDA') return;
    const parts = argumentsAfter(tokens, at);
    const named = parts.slice(0, -1).filter((_, part) => kind === 'LAMBDA' || part % 2 === 0);
    const names = new Set(named.flatMap((part) => solely(part)?.value.toUpperCase() ?? []));
    for (const token of parts.flat()) {
      if (token.type === 'range_named' && names.has(token.value.toUpperCase())) found.add(token);
    }
  });
  return found;
}

/** The one token of an argument that is a name. */
function solely(part: readonly Token[]): Token | undefined {
  const [only, ...others] = part.filter(({ type }) => type !== 'whitespace');
  return only?.type === 'range_named' && others.length === 0 ? only : undefined;
}

function argumentsAfter(tokens: readonly Token[], at: number): Token[][] {
  const parts: Token[][] = [[]];
  let depth = 0;
  for (const token of tokens.slice(at + 1)) {
    const mark = token.type === 'operator' ? token.value : '';
    if (mark === ')' || mark === '}') depth--;
    if (depth === 0 && mark === ')') break;
    if (mark === ',' && depth === 1) parts.push([]);
    else if (depth > 0) parts.at(-1)?.push(token);
    if (mark === '(' || mark === '{') depth++;
  }
  return parts;
}
