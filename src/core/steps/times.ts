import { itemAt } from '../item-at';
import type { Layer } from '../bottom/layer';
import type { Style } from '../bottom/style';
import { adhesiveForArea } from './adhesive-for-area';
import { does } from './operation';
import type { Face, Operation, Step, StepKind, Told } from './step';
import { ABSORBENT, USUAL_TIMES, USUAL_WAITS, type UsualTimes, type WaitItem } from './usual-times';

/** Costs and times as the steps ask for them; scopes run from the most particular to the least. */
export interface BenchRates {
  one(
    unit: 'coats' | 'm² a litre' | 'minutes open' | 'minutes pressed' | 'degrees warmed',
    scopes: readonly string[],
  ): number | undefined;
  sum(unit: 'minutes a piece' | 'minutes a skive' | 'minutes a joint', scopes: readonly string[]): number;
  items(
    unit: 'minutes a pair' | 'minutes waited',
    scopes: readonly string[],
  ): readonly { readonly item: string; readonly value: number; readonly step?: StepKind | undefined }[];
}

/** What a step takes, one pair. */
export type Times = Pick<Step, 'coats' | 'usualCoats' | 'open' | 'pressed' | 'wait' | 'warm' | 'minutes' | 'adhesive'>;

/** What a rate for a face may be given for: the lasted bottom is the upper's leather, whatever is under it. */
function scopesOfFace(style: string, { piece }: Face): readonly string[] {
  return piece ? scopesOf(style, piece) : [style, 'leather'];
}

/** What a rate for a layer may be given for, the most particular first. */
export function scopesOf(style: string, { stock, material }: Pick<Layer, 'stock' | 'material'>): readonly string[] {
  return [style, stock, material];
}

/** Operations with their times, minutes and adhesive, one pair. */
export function timesOf(
  operations: readonly Operation[],
  style: Style,
  rates: BenchRates,
): readonly (Times & Operation)[] {
  const usual = USUAL_TIMES[style.adhesive ?? 'polychloroprene'];
  const byPair = rates.items('minutes a pair', [style.code]);
  const sharing = new Map(byPair.flatMap(({ step }) => (step ? [[step, sharers(operations, step)]] : [])));
  return operations.map((operation): Times & Operation => {
    const { kind, acts, pieces, faces, joint, coated: allCoated, whole, onHeel, apart, fixing } = operation;
    // Paste is no adhesive that is measured out, and what is nailed waits for none.
    const coated = (does(operation, 'coat') && allCoated) || [];
    const scopes = pieces.length > 0 ? pieces.map((piece) => scopesOf(style.code, piece)) : [[style.code]];
    const coats = coated.map((face) => coatsOf(face, style, usual, rates));
    const shares = sharing.get(kind);
    const own = shares?.has(operation)
      ? byPair.reduce((sum, { value, step }) => (step === kind ? sum + value / shares.size : sum), 0)
      : 0;
    // Named one by one, which makes a record ten times as fast as to spread two into one.
    return {
      kind,
      acts,
      pieces,
      faces,
      joint,
      coated: allCoated,
      whole,
      onHeel,
      apart,
      fixing,
      coats,
      usualCoats: coated.some((face) => rates.one('coats', scopesOfFace(style.code, face)) === undefined),
      minutes: 2 * footMinutes(operation, style.code, rates) + own,
      adhesive: adhesiveOf(coated, coats, style.code, rates),
      open:
        coated.length > 0 ? told(least(scopes.map((one) => rates.one('minutes open', one))), usual.open) : undefined,
      pressed: does(operation, 'press')
        ? told(most(scopes.map((one) => rates.one('minutes pressed', one))), usual.pressed)
        : undefined,
      wait: waitOf(operation, { style, usual, rates, coats: Math.max(0, ...coats), scopes }),
      warm: does(operation, 'join') && operation.joint ? warmed(style, usual, rates, scopes) : undefined,
    };
  });
}

/**
 * The operations over which minutes by the pair are spread: all of their kind, but of finishing those of edges alone, as
 * long as there are any. Pulling a last takes no share.
 */
function sharers(operations: readonly Operation[], kind: StepKind): ReadonlySet<Operation> {
  const all = operations.filter((one) => one.kind === kind);
  const edges = kind === 'finish' ? all.filter(({ faces }) => faces.length > 0) : [];
  return new Set(edges.length > 0 ? edges : all);
}

/** Work that is counted by the pair and belongs to no kind of step: it is of the whole shoe. */
export interface FurtherWork {
  /** Of one pair. */
  readonly minutes: number;
  /** What they are spent on. */
  readonly items: readonly string[];
}

export function furtherWork(style: string, rates: BenchRates): FurtherWork {
  const rows = rates.items('minutes a pair', [style]).filter(({ step, value }) => step === undefined && value !== 0);
  return { minutes: rows.reduce((sum, { value }) => sum + value, 0), items: rows.map(({ item }) => item) };
}

function footMinutes(operation: Operation, style: string, rates: BenchRates): number {
  const of = (unit: 'minutes a piece' | 'minutes a skive' | 'minutes a joint', pieces: readonly Layer[]) =>
    pieces.reduce((sum, piece) => sum + rates.sum(unit, scopesOf(style, piece)), 0);
  if (does(operation, 'cut')) return of('minutes a piece', operation.pieces);
  if (operation.kind === 'skive') return of('minutes a skive', operation.pieces);
  return operation.joint && does(operation, 'join') ? of('minutes a joint', operation.joint.adds) : 0;
}

/** The maker's own, else what is usual for the adhesive: of polychloroprene where none is named, as all times are. */
function coatsOf(face: Face, style: Style, usual: UsualTimes, rates: BenchRates): number {
  const absorbent = !face.piece || ABSORBENT.has(face.piece.material);
  return rates.one('coats', scopesOfFace(style.code, face)) ?? (absorbent ? usual.absorbent : usual.coats);
}

/** Of all coated faces of both feet, ml. */
function adhesiveOf(
  faces: readonly Face[],
  coats: readonly number[],
  style: string,
  rates: BenchRates,
): number | undefined {
  let ml = 0;
  for (const [i, face] of faces.entries()) {
    const coverage = rates.one('m² a litre', scopesOfFace(style, face));
    if (coverage === undefined || coverage === 0) return undefined;
    ml += adhesiveForArea(face.area, itemAt(coats, i), coverage);
  }
  return 2 * ml;
}

interface Waiting {
  readonly style: Style;
  readonly usual: UsualTimes;
  readonly rates: BenchRates;
  readonly coats: number;
  readonly scopes: readonly (readonly string[])[];
}

function waitOf(operation: Operation, { usual, rates, coats, scopes }: Waiting): Told | undefined {
  const of = (item: WaitItem, fallback: number, times = 1): Told => {
    const given = most(
      scopes.map(
        (one) =>
          rates.items('minutes waited', one).find((row) => row.item.trim().toLowerCase() === item.toLowerCase())?.value,
      ),
    );
    return { value: times * (given ?? fallback), usual: given === undefined };
  };
  if (does(operation, 'coat')) return of('Flash-off', usual.flashOff, coats);
  if (does(operation, 'cure', 'cure core')) return of('Cure', usual.cure);
  if (does(operation, 'mellow')) return of('Mellowing', USUAL_WAITS.Mellowing);
  if (does(operation, 'dry')) return of('Drying', USUAL_WAITS.Drying);
  if (does(operation, 'cool')) return of('Cooling', USUAL_WAITS.Cooling);
  if (does(operation, 'fit shank')) return of('Shank', USUAL_WAITS.Shank);
  return undefined;
}

function warmed(
  style: Style,
  { warm, byHeat }: UsualTimes,
  rates: BenchRates,
  scopes: readonly (readonly string[])[],
): Step['warm'] {
  const given = most(scopes.map((one) => rates.one('degrees warmed', one)));
  if (given !== undefined) return { least: given, most: given, usual: false };
  return byHeat && style.adhesive !== undefined ? { ...warm, usual: true } : undefined;
}

function told(given: number | undefined, usual: number): Told {
  return given === undefined ? { value: usual, usual: true } : { value: given, usual: false };
}

function least(values: readonly (number | undefined)[]): number | undefined {
  return extreme(values, Math.min);
}

function most(values: readonly (number | undefined)[]): number | undefined {
  return extreme(values, Math.max);
}

function extreme(values: readonly (number | undefined)[], of: (...all: number[]) => number): number | undefined {
  const given = values.filter((value) => value !== undefined);
  return given.length > 0 ? of(...given) : undefined;
}
