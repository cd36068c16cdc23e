/**
 * Custom functions for tests of the grid, beside the product's own: they stand at the end of functions.js and
 * functions.json as the page gets them.
 */
export const testFunctions = [
  {
    id: 'TESTTABLE',
    name: 'TESTTABLE',
    description: 'A table of squares with headings.',
    parameters: [{ name: 'count', description: 'Rows below the headings.', type: 'any' }],
    result: { type: 'any', dimensionality: 'matrix' },
  },
  {
    id: 'TESTSUM',
    name: 'TESTSUM',
    description: 'Sum of the numbers in a range, or an error that names what is not a number.',
    parameters: [{ name: 'range', description: 'Cells to add up.', type: 'any', dimensionality: 'matrix' }],
    result: { type: 'number' },
  },
  {
    id: 'TESTLATER',
    name: 'TESTLATER',
    description: 'Twice a number, some time later.',
    parameters: [
      { name: 'value', description: 'A number.', type: 'any' },
      { name: 'wait', description: 'ms until the answer comes.', type: 'any', optional: true },
    ],
    options: { cancelable: true },
    result: { type: 'number' },
  },
  {
    id: 'TESTARGUMENTS',
    name: 'TESTARGUMENTS',
    description: 'What the function was called with.',
    parameters: [
      { name: 'first', type: 'any' },
      { name: 'second', type: 'any', optional: true },
      { name: 'rest', type: 'any', repeating: true },
    ],
    result: { type: 'string' },
  },
];

/** Runs in the page, after the product's bundle. */
const implementations = `
(() => {
  const { associate, Error: HostError, ErrorCode } = CustomFunctions;
  const calls = (globalThis.testCalls = { later: 0, cancelled: [] });
  associate('TESTTABLE', (count) => [['n', 'square'], ...Array.from({ length: count }, (_, at) => [at + 1, (at + 1) ** 2])]);
  associate('TESTSUM', (rows) => {
    let sum = 0;
    rows.forEach((row, r) => row.forEach((cell, c) => {
      if (cell === null || cell === '') return;
      if (typeof cell !== 'number') throw new HostError(ErrorCode.invalidValue, 'range, row ' + (r + 1) + ', column ' + (c + 1) + ': "' + cell + '" is not a number; enter one');
      sum += cell;
    }));
    return sum;
  });
  associate('TESTLATER', (value, wait, invocation) => new Promise((resolve, reject) => {
    calls.later++;
    const timer = setTimeout(() => (value < 0 ? reject(new HostError(ErrorCode.notAvailable, 'value: ' + value + ' is below 0; give more')) : resolve(2 * value)), wait ?? 100);
    invocation.onCanceled = () => { clearTimeout(timer); calls.cancelled.push(value); };
  }));
  associate('TESTARGUMENTS', (first, second, rest, invocation) => JSON.stringify([first, second, rest, typeof invocation]));
})();
`;

export const withTestFunctions: Readonly<Record<string, (content: string) => string>> = {
  'functions.js': (content) => content + implementations,
  'functions.json': (content) => {
    const metadata = JSON.parse(content) as { functions: unknown[] };
    return JSON.stringify({ ...metadata, functions: [...metadata.functions, ...testFunctions] });
  },
};
