import { itemAt } from '../core/item-at';
import { type Place, Problem } from '../core/problem';
import { convertUnit } from '../core/units';

/** What a spreadsheet cell hands over: a number, text, true or false, or nothing. */
export type Cell = unknown;

/** A cell whose value comes with a format or as an error: newer hosts hand these over instead of the bare value. */
interface RichCell {
  readonly basicValue: unknown;
}

/** The bare value of a cell. */
export function bare(cell: Cell): Cell {
  return typeof cell === 'object' && cell !== null && 'basicValue' in cell ? (cell as RichCell).basicValue : cell;
}

/** The error that a cell shows, such as #N/A; undefined where it shows none. Hosts hand errors over as objects of this type. */
export function errorIn(cell: Cell): string | undefined {
  if (typeof cell !== 'object' || cell === null || !('type' in cell) || cell.type !== 'Error') return undefined;
  const code = bare(cell);
  return typeof code === 'string' ? code : '#VALUE!';
}

/** @throws Problem for a cell that shows an error */
function assertNoError(cell: Cell, place: Place): void {
  const code = errorIn(cell);
  if (code) throw new Problem('invalid', place, `the cell shows ${code}; put that one right first`);
}

/** A block of cells, row by row. */
export type Cells = readonly (readonly Cell[])[];

/** Blank cells arrive as "", null or undefined, depending on the host. */
export function isBlank(rich: Cell): boolean {
  const cell = bare(rich);
  return cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');
}

/** Whether a cell holds the number 0, which some versions of the office suite hand over for a blank cell too. */
export function isNought(cell: Cell): boolean {
  return bare(cell) === 0;
}

/**
 * Whether an argument is left out: blank, or 0 where that cannot be an answer.
 * @param rule of the number that it may be; without it, it is no number
 */
export function isLeftOut(cell: Cell, rule?: NumberRule): boolean {
  return isBlank(cell) || (isNought(cell) && !(rule && allowsNought(rule)));
}

/** Whether 0 is within a rule. */
export function allowsNought({ least = -Infinity, above = -Infinity, most = Infinity }: NumberRule): boolean {
  return least <= 0 && above < 0 && most >= 0;
}

/** Whether a cell holds one of the spreadsheet's error values. */
export function isError(cell: Cell): cell is string {
  return typeof cell === 'string' && /^#[A-Z0-9/_]+[!?]?$/.test(cell.trim());
}

/** What a number in a cell may be. Bounds are inclusive unless `above` is given. */
export interface NumberRule {
  /** Unit that the number is in, and into which "12 iron" is converted. */
  readonly unit?: string;
  readonly least?: number;
  /** The number must be more than this. */
  readonly above?: number;
  readonly most?: number;
  readonly whole?: boolean;
}

/** No bench measure comes near these; beyond them arithmetic would lose its digits. */
const GREATEST = 1e9;
const SMALLEST = 1e-9;

const NUMBER_IN_TEXT = /^([+-]?[\d.,\s’']*\d)\s*([a-z²]+2?)?$/i;

/**
 * A number from a cell: a number, text that reads as one ("7", "7,5"), or a measure with its unit ("12 iron").
 * @throws Problem for anything else and for a number outside the rule.
 */
export function readNumber(rich: Cell, rule: NumberRule, place: Place): number {
  assertNoError(rich, place);
  const cell = bare(rich);
  const read = typeof cell === 'number' ? cell : fromText(cell, rule, place);
  const value = Math.abs(read) < SMALLEST ? 0 : read;
  const { least, above, most, whole, unit = '' } = rule;
  const bad = (reason: string) => new Problem('invalid', place, reason);
  const given = `${cellInWords(cell)} is not possible`;
  if (!Number.isFinite(value) || Math.abs(value) > GREATEST) throw bad(`${given}; give an ordinary number`);
  if (above !== undefined && !(value > above)) throw bad(`${given}; give more than ${measure(above, unit)}`);
  if (least !== undefined && value < least) throw bad(`${given}; give ${measure(least, unit)} or more`);
  if (most !== undefined && value > most) throw bad(`${given}; give ${measure(most, unit)} or less`);
  if (whole && !Number.isInteger(value)) throw bad(`${given}; give a whole number`);
  return value;
}

/** Whether a cell is meant as a number: as one, with a format, or as text. */
export function readsAsNumber(rich: Cell): boolean {
  const cell = bare(rich);
  return typeof cell === 'number' || (typeof cell === 'string' && /^\s*[+-]?[.,]?\d/.test(cell));
}

/** Pasted prices bring their money along. */
function withoutMoney(text: string): string {
  return text.trim().replace(/^(?:[€$£¥]|EUR|USD|GBP|CHF)\s*|\s*(?:[€$£¥]|EUR|USD|GBP|CHF)$/gi, '');
}

/** Groups of three digits, set off by blanks or apostrophes, points or commas. */
const BLANKS = /^[+-]?\d{1,3}(?:[\s’']\d{3})+(?:[.,]\d+)?$/;
const POINTS = /^[+-]?\d{1,3}(?:\.\d{3})+,\d+$|^[+-]?\d{1,3}(?:\.\d{3}){2,}$/;
const COMMAS = /^[+-]?\d{1,3}(?:,\d{3})+\.\d+$|^[+-]?\d{1,3}(?:,\d{3}){2,}$/;
/** One mark and three digits: decimals to one maker, thousands to another. */
const EITHER = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const PLAIN = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/;

/** What digits with marks between them may mean: one number, two, or none. */
function numbersMeant(digits: string): readonly number[] {
  const decimal = (text: string) => Number(text.replace(',', '.'));
  if (BLANKS.test(digits)) return [decimal(digits.replace(/[\s’']/g, ''))];
  if (POINTS.test(digits)) return [decimal(digits.replaceAll('.', ''))];
  if (COMMAS.test(digits)) return [decimal(digits.replaceAll(',', ''))];
  if (EITHER.test(digits)) return [decimal(digits), Number(digits.replace(/[.,]/, ''))];
  return PLAIN.test(digits) ? [decimal(digits)] : [];
}

/** The number that a text means, with its money if need be; unclear where it may be either of two, undefined where it is none. */
export function numberMeant(text: string): number | 'unclear' | undefined {
  const meant = numbersMeant(withoutMoney(text).trim());
  return meant.length > 1 ? 'unclear' : meant[0];
}

/** The only one of two numbers that the rule allows. @throws Problem where it allows both */
function theOne(cell: Cell, [first, second]: readonly number[], rule: NumberRule, place: Place): number {
  const { least = -Infinity, above = -Infinity, most = Infinity, whole = false } = rule;
  const allowed = (value: number | undefined): value is number =>
    value !== undefined && value >= least && value > above && value <= most && (!whole || Number.isInteger(value));
  if (second === undefined || !allowed(second)) return first as number;
  if (!allowed(first)) return second;
  throw new Problem('invalid', place, `${cellInWords(cell)} may be ${first} or ${second}; enter the one that is meant`);
}

/** A length with the mark of inches, 3.5" or 3.5″, with the unit's name. */
function inchesSpelt(text: string): string {
  return text.trim().replace(/\s*(?:["″”]|'')$/, ' in');
}

/** Fractions as one character, such as ½. */
const FRACTIONS = /[¼½¾⅐-⅞]/;
/** 2 1/2, 2-1/2 or 1/2, with a unit or not. */
const IN_PARTS = /^([+-]?)(?:(\d+)(?:\s+|-))?(\d+)\s*[/⁄]\s*([1-9]\d*)(?!\d)/;

/** Text that begins with a fraction, with a decimal in its place: 2 1/2 in, 6½. */
function withoutFractions(text: string): string {
  return text
    .trim()
    .replace(FRACTIONS, (one) => ` ${one.normalize('NFKD')}`)
    .replace(/^([+-]?)\s+/, '$1')
    .replace(
      IN_PARTS,
      (_, sign: string, whole: string | undefined, over: string, under: string) =>
        `${sign}${Number((Number(whole ?? 0) + Number(over) / Number(under)).toFixed(9))}`,
    );
}

function fromText(cell: Cell, rule: NumberRule, place: Place): number {
  const { unit = '' } = rule;
  if (isBlank(cell)) throw new Problem('invalid', place, `a number is missing; enter one${unit && ` in ${unit}`}`);
  if (isError(cell))
    throw new Problem('invalid', place, `the cell shows an error (${cell}); put that cell right first`);
  const said = typeof cell === 'string' ? withoutFractions(unit ? inchesSpelt(cell) : withoutMoney(cell)) : '';
  const match = NUMBER_IN_TEXT.exec(said);
  const meant = match ? numbersMeant(itemAt(match, 1)) : [];
  if (!match || meant.length === 0) {
    // Where the text holds just one number, it is most likely the one that is meant.
    const numbers = typeof cell === 'string' ? (cell.match(/\d+(?:[.,]\d+)?/g) ?? []) : [];
    const such = !unit && numbers.length === 1 ? ` alone, such as ${(numbers[0] as string).replace(',', '.')}` : '';
    const inches = unit === 'mm' ? ', or such as 2.5 in' : '';
    const enter = such ? `enter the number${such}` : `enter one${unit && ` in ${unit}`}${inches}`;
    throw new Problem('invalid', place, `${cellInWords(cell)} is not a number; ${enter}`);
  }
  const value = theOne(cell, meant, rule, place);
  if (!match[2] || match[2] === unit) return value;
  if (!unit) throw new Problem('invalid', place, `${cellInWords(cell)} has a unit; enter the number alone`);
  try {
    return convertUnit(value, match[2], unit);
  } catch {
    throw new Problem('invalid', place, `${cellInWords(cell)} is not in ${unit} or a unit that converts to it`);
  }
}

function measure(value: number, unit: string): string {
  return unit ? `${value} ${unit}` : String(value);
}

/** Text from a cell, blanks at its ends taken off; a number reads as its digits. */
export function readText(rich: Cell, place: Place): string {
  assertNoError(rich, place);
  const cell = bare(rich);
  if (isBlank(cell)) throw new Problem('invalid', place, 'the text is missing; enter it');
  if (isError(cell))
    throw new Problem('invalid', place, `the cell shows an error (${cell}); put that cell right first`);
  if (typeof cell === 'string') return cell.trim();
  if (typeof cell === 'number' && Number.isFinite(cell)) return String(cell);
  throw new Problem('invalid', place, `${cellInWords(cell)} is not text`);
}

/**
 * One of several words, found whatever its capitals.
 * @param formerly words that stood for them before, each with today's
 */
export function readChoice<T extends string>(
  cell: Cell,
  choices: readonly T[],
  place: Place,
  formerly: Readonly<Record<string, NoInfer<T>>> = {},
): T {
  const ticked = bare(cell);
  // TRUE and FALSE, as a tick box gives them, are yes and no.
  const said = typeof ticked === 'boolean' ? (ticked ? 'yes' : 'no') : readText(cell, place);
  const fold = (word: string) => word.toLowerCase().replace(/\s+/g, ' ').replace('²', '2');
  const found =
    choices.find((choice) => fold(choice) === fold(said)) ??
    Object.entries(formerly).find(([word]) => fold(word) === fold(said))?.[1];
  if (found === undefined) {
    throw new Problem('invalid', place, `${cellInWords(cell)} is not known; use ${alternatives(choices)}`);
  }
  return found;
}

/** "a, b or c". */
export function alternatives(words: readonly string[]): string {
  const last = words[words.length - 1] ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}

/** A cell's content as a message names it, cut where it is long. */
export function cellInWords(rich: Cell): string {
  const cell = bare(rich);
  if (isBlank(cell)) return 'a blank cell';
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell !== 'string') return 'a value of another kind';
  const shown = cell.length > 40 ? `${cell.slice(0, 40)}…` : cell;
  // What holds the mark of inches is quoted by others.
  return cell.includes('"') ? `“${shown}”` : `"${shown}"`;
}
