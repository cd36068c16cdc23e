import fc from 'fast-check';
import { INPUT_TABLES } from '../../src/tables/input-tables';
import { type Bundle, CellError, type FunctionMetadata } from '../bundle';
import { planArguments } from '../demo-cells';
import { evenly } from '../evenly';

/** Cells of every kind that a host can hand over, and some that it should not. */
const anyCell = fc.oneof(
  { weight: 6, arbitrary: fc.double({ min: -1000, max: 1000, noNaN: true }) },
  { weight: 4, arbitrary: fc.integer({ min: -5, max: 400 }) },
  { weight: 2, arbitrary: fc.constantFrom(0, -0, NaN, Infinity, -Infinity, 1e308, -1e308, 1e-308, 1e9, 2 ** 53) },
  { weight: 2, arbitrary: fc.constantFrom('', ' ', null, undefined, true, false) },
  {
    weight: 3,
    arbitrary: fc.constantFrom(
      'EU',
      'UK',
      'hollow',
      'left',
      'flat',
      'bent',
      '12 iron',
      '7,5',
      '1/4 in',
      '#N/A',
      'x',
      'y',
    ),
  },
  { weight: 2, arbitrary: fc.string({ maxLength: 12 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      { type: 'Error', basicValue: '#DIV/0!' },
      { type: 'FormattedNumber', basicValue: 7, numberFormat: '0.0' },
      { type: 'Entity', text: 'a' },
      [],
      {},
    ),
  },
);

/** Ranges of any shape, also ragged ones and single cells. */
const anyRange = fc.oneof(
  { weight: 5, arbitrary: fc.array(fc.array(anyCell, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 8 }) },
  {
    weight: 5,
    arbitrary: fc.array(fc.tuple(evenly(-300, 300), evenly(-300, 300)), {
      minLength: 1,
      maxLength: 12,
    }),
  },
  {
    weight: 2,
    arbitrary: fc.array(fc.tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -3, max: 3 })), {
      minLength: 2,
      maxLength: 9,
    }),
  },
  { weight: 1, arbitrary: fc.constantFrom([[]], [['']], [[null]], []) },
);

const sound = planArguments().map((block) =>
  // Blank rows at the end say nothing, and cost time.
  block.slice(0, 1 + block.findLastIndex((row) => row.some((cell) => cell !== ''))),
);

/** The demo's tables with some cells, rows, columns or whole tables changed. */
const mutatedPlan = fc
  .array(
    fc.record({
      table: fc.nat(6),
      how: fc.constantFrom('cell', 'cell', 'cell', 'cell', 'drop row', 'drop column', 'heading', 'double row', 'table'),
      row: fc.nat(40),
      column: fc.nat(40),
      cell: anyCell,
      range: anyRange,
    }),
    { minLength: 1, maxLength: 4 },
  )
  .map((changes) => {
    const tables: unknown[][][] = sound.map((block) => block.map((row) => [...row]));
    for (const { table, how, row, column, cell, range } of changes) {
      const block = tables[table] as unknown[][];
      if (how === 'table') {
        tables[table] = range as unknown[][];
        continue;
      }
      const r = 1 + (row % Math.max(1, block.length - 1));
      const c = column % Math.max(1, block[0]?.length ?? 1);
      if (how === 'cell' && block[r]) block[r][c] = cell;
      if (how === 'heading' && block[0]) block[0][c] = cell;
      if (how === 'drop row') block.splice(r, 1);
      if (how === 'drop column') block.forEach((line) => line.splice(c, 1));
      if (how === 'double row' && block[r]) block.push([...block[r]]);
    }
    return tables;
  });

/** Arguments for a function: anything at all, or for a plan function the demo with changes. */
export function anyArguments({ name, parameters }: FunctionMetadata): fc.Arbitrary<readonly unknown[]> {
  const free = fc.tuple(
    ...parameters.map(({ dimensionality, optional }) => {
      const one: fc.Arbitrary<unknown> = dimensionality === 'matrix' ? anyRange : anyCell;
      return optional ? fc.oneof(one, fc.constant(null)) : one;
    }),
  );
  if (!parameters.some((one) => one.name === 'pairage')) return lastsFirst(parameters, free);
  return fc.oneof(
    { weight: 4, arbitrary: mutatedPlan.map((tables) => (name === 'TICKET' ? ['Betony', ...tables] : tables)) },
    { weight: 1, arbitrary: free },
  );
}

/** Functions of one last are mostly given the demo's lasts, so that the rest of their arguments comes into play. */
function lastsFirst(
  parameters: FunctionMetadata['parameters'],
  free: fc.Arbitrary<readonly unknown[]>,
): fc.Arbitrary<readonly unknown[]> {
  if (parameters[1]?.name !== 'lasts') return free;
  return fc.oneof(
    free,
    fc
      .tuple(fc.constantFrom('Round 45', 'Sandal 0', 'Town 60', 'Court 85', 'No such last'), free)
      .map(([last, others]) => [
        last,
        sound[2],
        ...others.slice(2).map((one, i) => (parameters[i + 2]?.name === 'outlines' ? sound[5] : one)),
      ]),
  );
}

/**
 * Calls a function and says what is wrong with its answer: anything but finite numbers, text and true or false, or an
 * error that names neither argument nor table. undefined where nothing is.
 */
export function complaint(bundle: Bundle, metadata: FunctionMetadata, args: readonly unknown[]): string | undefined {
  let result: unknown;
  try {
    result = bundle.call(metadata.name, ...args);
  } catch (error) {
    if (!(error instanceof CellError)) return `threw ${String(error)}`;
    if (error.code !== '#VALUE!' && error.code !== '#N/A') return `answered with ${String(error.code)}`;
    if (error.message.includes('fault of its own')) return error.message;
    const names = [...metadata.parameters.map(({ name }) => name), ...TABLES];
    // "row 3 of Pairage, Due" where nobody tells on which sheet the table stands.
    const place = error.message.replace(/^row \d+ of /, '');
    return names.some((name) => place.startsWith(name)) ? undefined : `the sentence names nothing: ${error.message}`;
  }
  return unshowable(result);
}

const TABLES = Object.values(INPUT_TABLES).map(({ name }) => name);

function unshowable(value: unknown): string | undefined {
  if (Array.isArray(value)) return value.map(unshowable).find((one) => one !== undefined);
  // What was NaN or infinite became null on its way out of the bundle's context.
  if (typeof value === 'number' && Number.isFinite(value)) return undefined;
  if (typeof value === 'string' || typeof value === 'boolean') return undefined;
  return `a cell would hold ${String(value)}`;
}
