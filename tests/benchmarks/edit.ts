import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { cellAddress } from '../../src/tables/cell-address';
import { demo } from '../../src/workbook/demo';
import { type BuiltPage, builtPage, windowSize } from '../browser/built-page';
import { bundled } from '../browser/bundled';
import { type Edit, inputCell } from '../browser/pages/edit';
import { Sheet } from '../browser/sheet';
import type { EditClock } from './edit-clock';
import type { LabelsOf, RunLabels } from './edit-labels';
import type { Findings } from './main';
import { median } from './reference-loop';

/**
 * What is asked, in reference loops; a loop took 12.5 ms on the two cores on which it was settled: 0.3 s for an edit, 2 s
 * until the demo is planned, 1.5 s until a kept workbook shows its last values.
 */
const LOOPS = { edit: 24, planned: 160, kept: 120 } as const;
/** How much the heap may grow over the edits that are counted. */
const HEAP = 1.05;

const OPENINGS = 5;
const EDITS = 16;
/** Edits after which every cell holds what it held before; the first such turn fills what the page keeps. */
const TURN = 50;
const TURNS = 7;

type Clocked = { readonly clock: EditClock };

/** Cells of pairs in the demo, by style and size. */
const CELLS = (
  [
    ['Betony', '38'],
    ['Teasel', '39'],
    ['Yarrow', '42'],
    ['Bracken', '38'],
    ['Fennel', '38'],
    ['Tansy', '39'],
    ['Mallow', '40'],
    ['Clover', '39'],
  ] as const
).map(([style, size]) => inputCell(demo, 'Pairage', style, size));

/** Edits of pairs one after the other; no two leave the same run. */
const TYPED: readonly Edit[] = Array.from({ length: EDITS }, (_, i) => ({
  ...(CELLS[i % CELLS.length] as (typeof CELLS)[number]),
  value: i < CELLS.length ? 14 : 5,
}));

/** What the pane is to show of the demo, and after each edit, worked out in the same browser but not by the page. */
async function labelsWanted({ browser }: BuiltPage): Promise<readonly RunLabels[]> {
  const page = await browser.newPage();
  await page.evaluate(await bundled('../benchmarks/edit-labels.ts'));
  const labels = await page.evaluate(
    (edits) => (window as unknown as { readonly labelsOf: LabelsOf }).labelsOf(edits),
    TYPED,
  );
  await page.close();
  return labels;
}

/**
 * The built page in a browser: until the demo is planned on the screen, until a kept workbook shows its last values, until
 * the pane shows what an edit of pairs comes to, and whether the heap grows over 300 edits. Times in seconds and in
 * reference loops of the same page.
 */
export async function edit(): Promise<Findings> {
  const clock = await bundled('../benchmarks/edit-clock.ts');
  const built = await builtPage();
  try {
    const [wanted, ...edited] = await labelsWanted(built);
    if (!wanted) throw new Error('The demo has no labels.');
    const openings = await timesOfOpening(built, clock, wanted);
    const page = await openDemo(await newContext(built, clock), built.address, wanted);
    const times = await timesOfEdits(page, edited);
    const heap = await heapOverEdits(await openDemo(await newContext(built, clock), built.address, wanted));
    const lines = [
      line('demo planned on the screen', openings.planned, openings.loops, LOOPS.planned),
      line('kept workbook: last values on the screen', openings.kept, openings.loops, LOOPS.kept),
      line('kept workbook: worked out anew', openings.again, openings.loops),
      line('edit: the new total of pairs', times.pairs, times.loops, LOOPS.edit),
      line('edit: what it costs', times.cost, times.loops, LOOPS.edit),
    ];
    const first = heap[0]?.bytes ?? NaN;
    const growth = Math.max(...heap.map(({ bytes }) => bytes)) / first;
    return {
      lines: [
        { what: 'reference loop', seconds: rounded(median(times.loops) / 1000, 4), 'reference loops': 1 },
        ...lines,
        ...heap.map(({ bytes, code }, turn) => ({
          what: `heap after ${(turn + 1) * TURN} edits`,
          MB: rounded(bytes / 1e6, 2),
          ...(code !== undefined && { 'compiled code, MB': rounded(code / 1e6, 2) }),
          'over the first': rounded(bytes / first, 3),
          ...(turn === heap.length - 1 && { 'at most': HEAP }),
        })),
      ],
      holds: lines.every((one) => !('at most' in one) || one['reference loops'] <= one['at most']) && growth <= HEAP,
    };
  } finally {
    await built.close();
  }
}

function line(what: string, times: readonly number[], loops: readonly number[], most?: number) {
  const time = median(times);
  return {
    what,
    seconds: rounded(time / 1000, 3),
    'reference loops': rounded(time / median(loops), 1),
    ...(most !== undefined && { 'at most': most }),
  };
}

function rounded(value: number, places: number): number {
  return Math.round(value * 10 ** places) / 10 ** places;
}

async function newContext({ browser }: BuiltPage, clock: string): Promise<BrowserContext> {
  const context = await browser.newContext({ viewport: windowSize });
  await context.addInitScript(clock);
  return context;
}

/** Opens the page and waits until the run is planned on the screen. */
async function openDemo(context: BrowserContext, address: string, { pairs, cost }: RunLabels): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await page.evaluate((labels) => (window as unknown as Clocked).clock.runShown(labels), [pairs, cost]);
  return page;
}

function loopIn(page: Page): Promise<number> {
  return page.evaluate(() => (window as unknown as Clocked).clock.loop());
}

function awaiting(page: Page, labels: readonly string[]): Promise<void> {
  return page.evaluate((awaited) => (window as unknown as Clocked).clock.await(awaited), labels);
}

function shownIn(page: Page): Promise<readonly number[]> {
  return page.evaluate(() => (window as unknown as Clocked).clock.shown());
}

/** Opens the demo in fresh browsers, edits it, and opens what was kept of it. */
async function timesOfOpening(built: BuiltPage, clock: string, { pairs, cost }: RunLabels) {
  const times = { planned: [] as number[], kept: [] as number[], again: [] as number[], loops: [] as number[] };
  const opened = (page: Page) =>
    page.evaluate(
      async (labels) => {
        const { clock } = window as unknown as Clocked;
        const [sheet, planned] = await Promise.all([clock.sheetShown, clock.runShown(labels)]);
        return { ...sheet, planned: Math.max(sheet.at, planned) };
      },
      [pairs, cost],
    );
  for (let i = 0; i < OPENINGS; i++) {
    const context = await newContext(built, clock);
    const first = await context.newPage();
    await first.goto(built.address);
    const shown = await opened(first);
    times.planned.push(shown.planned);
    times.loops.push(await loopIn(first));
    // A note of the maker's own, so that there is something to keep and the plan stays.
    const note = `Kept ${i}`;
    await new Sheet(first).enter('H1', note);
    await first.waitForTimeout(1500);
    await first.close();
    const second = await context.newPage();
    await second.goto(built.address);
    const again = await opened(second);
    // The sheet with the note in it, and all that was worked out, to the letter.
    const same = again.table.replace(note, '').replace(/\s+/g, ' ') === shown.table.replace(/\s+/g, ' ');
    if (!again.table.includes(note) || !same) throw new Error('The kept workbook does not show its last values.');
    times.kept.push(again.at);
    times.again.push(again.planned);
    times.loops.push(await loopIn(second));
    await context.close();
  }
  return times;
}

async function timesOfEdits(page: Page, wanted: readonly RunLabels[]) {
  const sheet = new Sheet(page);
  const times = { pairs: [] as number[], cost: [] as number[], loops: [] as number[] };
  for (const [i, labels] of wanted.entries()) {
    const { row, column, value } = TYPED[i] as Edit;
    await sheet.select(cellAddress(row, column));
    await page.waitForTimeout(500);
    times.loops.push(await loopIn(page));
    await awaiting(page, [labels.pairs, labels.cost]);
    await sheet.type(String(value));
    const [pairs = NaN, cost = NaN] = await shownIn(page);
    times.pairs.push(pairs);
    times.cost.push(Math.max(pairs, cost));
  }
  return times;
}

/** What lives on the heap, bytes. */
interface Heap {
  readonly bytes: number;
  /** What of it the engine has made of functions that run often: it goes on with that for hundreds of edits. */
  readonly code?: number;
}

/** What lives on the heap after each turn of edits: cell after cell is raised, by more each turn, and set back. */
async function heapOverEdits(page: Page): Promise<readonly Heap[]> {
  const sheet = new Sheet(page);
  const session = await page.context().newCDPSession(page);
  const sizes: Heap[] = [];
  const cells = pairsCells().slice(0, TURN / 2);
  let total = pairsCells().reduce((sum, { value }) => sum + value, 0);
  const enter = async (address: string, value: number) => {
    await awaiting(page, [`Pairs by size: ${total} pairs;`]);
    await sheet.enter(address, String(value));
    await shownIn(page);
  };
  for (let turn = 1; turn <= TURNS; turn++) {
    for (const { address, value } of cells) {
      total += turn;
      await enter(address, value + turn);
    }
    for (const { address, value } of cells) {
      total -= turn;
      await enter(address, value);
    }
    await page.waitForTimeout(2000);
    const bytes = await heapOf(session);
    sizes.push({ bytes, ...((turn === 1 || turn === TURNS) && { code: await compiledCode(session) }) });
  }
  return sizes;
}

/** Every cell of the demo that holds pairs of one size. */
function pairsCells(): readonly { readonly address: string; readonly value: number }[] {
  const [run] = demo.sheets;
  const area = run?.tables.find(({ name }) => name === 'Pairage')?.area;
  if (!run || !area) throw new Error('The demo has no Pairage.');
  const sizes = run.cells.filter(({ row, value }) => row === area.row && typeof value === 'number');
  return run.cells.flatMap(({ row, column, value }) =>
    row > area.row &&
    row < area.row + area.rows &&
    typeof value === 'number' &&
    sizes.some((one) => one.column === column)
      ? [{ address: cellAddress(row, column), value }]
      : [],
  );
}

async function heapOf(session: CDPSession): Promise<number> {
  await session.send('HeapProfiler.collectGarbage');
  return (await session.send('Runtime.getHeapUsage')).usedSize;
}

/** What of the heap is compiled code, bytes, by a snapshot of it. */
async function compiledCode(session: CDPSession): Promise<number> {
  const parts: string[] = [];
  const take = ({ chunk }: { readonly chunk: string }) => void parts.push(chunk);
  session.on('HeapProfiler.addHeapSnapshotChunk', take);
  await session.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
  session.off('HeapProfiler.addHeapSnapshotChunk', take);
  const { snapshot, nodes } = JSON.parse(parts.join('')) as HeapSnapshot;
  const { node_fields: fields, node_types: types } = snapshot.meta;
  const [type, size, code] = [fields.indexOf('type'), fields.indexOf('self_size'), types[0].indexOf('code')];
  let bytes = 0;
  for (let at = 0; at < nodes.length; at += fields.length) {
    if (nodes[at + type] === code) bytes += nodes[at + size] ?? 0;
  }
  return bytes;
}

/** What of a snapshot is read: a row of numbers for each object, one number for each field. */
interface HeapSnapshot {
  readonly snapshot: {
    readonly meta: { readonly node_fields: readonly string[]; readonly node_types: readonly [readonly string[]] };
  };
  readonly nodes: readonly number[];
}
