import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Around, run } from '../../src/cli/recompute-command';
import { readBook } from '../../src/exchange/xlsx/read';
import { layoutsTable } from '../../src/tables/layouts';
import { readPdf } from '../read-pdf';
import { smallFile } from './small-run';

const folder = mkdtempSync(join(tmpdir(), 'solebench-recompute-'));
const at = (...names: string[]) => join(folder, ...names);
const OK = at('quay.xlsx');

beforeAll(() => writeFileSync(OK, smallFile()));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the command as the terminal does, and keeps what it says. */
async function told(words: readonly string[], more: Partial<Around> = {}) {
  let [out, said] = ['', ''];
  const code = await run(words, {
    folder: 'dist',
    out: (text) => (out += text),
    say: (text) => (said += text),
    live: false,
    stop: new AbortController().signal,
    ...more,
  });
  return { code, out, said };
}

const json = (name: string) => JSON.parse(readFileSync(at(name), 'utf8')) as Record<string, unknown>;

describe('recompute at the command line', { timeout: 60_000 }, () => {
  it('ends with 0 when all holds, and prints order, cost and checks', async () => {
    const { code, out, said } = await told([OK, at('a.xlsx')]);
    expect(out).toMatch(/^Order \(Run!A\d+\)$/m);
    expect(out).toMatch(/^Cost \(Cost!A3\)$/m);
    expect(out).toMatch(/^Checks \(Checks!A3\)$/m);
    expect(out).toContain('Foam 18');
    expect(out).toContain(`${OK} is worked out: ${at('a.xlsx')}`);
    expect(said).toBe(`Working out ${OK} …\n`);
    expect(code).toBe(0);
  });

  it('ends with 1 where something must be put right, naming sheet and cell, and says nothing else when quiet', async () => {
    const { code, out, said } = await told([OK, at('b.xlsx'), '--quiet', '--set', 'Styles!B4=No such last']);
    expect([code, out]).toEqual([1, '']);
    expect(
      said
        .trim()
        .split('\n')
        .every((line) => /^[A-Z][A-Za-z' ]*!A?[A-Z]\d+ \S/.test(line)),
    ).toBe(true);
    expect(said).toContain('No such last');
    const quiet = await told([OK, at('b.xlsx'), '--quiet']);
    expect(quiet).toEqual({ code: 0, out: '', said: '' });
  });

  it('ends with 2 for files that cannot be read or written, goes on with the others, and tells all of it as JSON', async () => {
    writeFileSync(at('notes.xlsx'), 'Cork 6, 20 sheets');
    const { code, said } = await told([at('notes.xlsx'), OK, at('missing.xlsx'), at('out'), '--json', at('all.json')]);
    expect(code).toBe(2);
    expect(said).toContain(`${at('notes.xlsx')}: the file cannot be worked out: it is not a workbook (.xlsx).`);
    expect(said).toContain(`${at('missing.xlsx')}: the file cannot be worked out: `);
    expect(readdirSync(at('out'))).toEqual(['quay.xlsx']);
    const reports = json('all.json') as unknown as Record<string, unknown>[];
    expect(reports.map(({ file }) => file)).toEqual([at('notes.xlsx'), OK, at('missing.xlsx')]);
    expect(reports[0]).toMatchObject({ unread: 'it is not a workbook (.xlsx)' });
    expect(reports[1]).toMatchObject({ written: at('out', 'quay.xlsx'), wrong: [] });
    expect((await told([OK, OK])).said).toContain('written over itself');
    expect((await told([OK, at('no', '\0')])).code).toBe(2);
  });

  it('never writes two files into one', async () => {
    mkdirSync(at('one'));
    mkdirSync(at('two'));
    writeFileSync(at('one', 'quay.xlsx'), smallFile());
    writeFileSync(at('two', 'Quay.xlsx'), smallFile());
    await expect(told([at('one'), at('two'), at('both')])).rejects.toThrow(/would both be written as .*rename one/);
  });

  it('answers one file with one JSON report, on the terminal too', async () => {
    const { out } = await told([OK, at('c.xlsx'), '--json=-', '--quiet', '--set', 'Run!E8=10']);
    const report = JSON.parse(out) as { tables: { name: string; rows: unknown[][] }[] };
    const cost = report.tables.find(({ name }) => name === 'Cost')!;
    expect(cost.rows.at(-1)).toContain(16);
  });

  // Long work by its nature: the search spends its least effort, and the file is worked out three times.
  it(
    'searches for fewer sheets, tells how far it is, and writes layouts where the page does',
    { timeout: 240_000 },
    async () => {
      const { code, out, said } = await told([OK, at('d.xlsx'), '--search', '1', '--json', at('d.json')]);
      expect(said).not.toContain('cannot be worked out');
      expect(said).toMatch(/^Searching Foam 18, 1 of \d$/m);
      const { searched } = json('d.json') as unknown as {
        searched: { stock: string; before: number; sheets: number }[];
      };
      const better = searched.filter(({ sheets, before }) => sheets < before);
      expect(better.length).toBeGreaterThan(0);
      for (const { stock, sheets, before } of better) {
        expect(said).toContain(`${stock}: ${sheets} ${sheets === 1 ? 'sheet' : 'sheets'} instead of ${before}`);
        expect(out).toMatch(new RegExp(`^${stock} .*`, 'm'));
      }
      const { book } = readBook(readFileSync(at('d.xlsx')));
      const cells = book.sheets.find(({ name }) => name === layoutsTable.name)!.cells;
      const stocks = cells.filter(({ row, column }) => row > 2 && column === 0).map(({ value }) => value);
      for (const { stock } of better) expect(stocks).toContain(stock);
      // Each piece lies somewhere, and the file that was written is worked out with the same sheets.
      const again = await told([at('d.xlsx'), at('e.xlsx'), '--json', at('e.json')]);
      expect(again.code).toBe(code);
      const cutting = (name: string) =>
        (json(name)['tables'] as { name: string }[]).find((one) => one.name === 'Cutting');
      expect(cutting('e.json')).toEqual(cutting('d.json'));
    },
  );

  it('keeps the best so far when a search is stopped', async () => {
    const stop = new AbortController();
    const { said } = await told([OK, at('f.xlsx'), '--search', 'longest'], {
      stop: stop.signal,
      say: () => setTimeout(() => stop.abort(), 200),
    });
    expect(said).toBe('');
    expect(readBook(readFileSync(at('f.xlsx'))).book.sheets.length).toBeGreaterThan(8);
  });

  it('puts the run on paper', async () => {
    const words = [OK, at('g.xlsx'), '--paper', at('paper'), '--documents', 'tickets,shopping,worksheet,drawings'];
    const { said } = await told([...words, '--tickets', 'style', '--page', 'Letter']);
    expect(said).toContain('tickets.pdf: ');
    expect(readdirSync(at('paper')).sort()).toEqual([
      'drawings',
      'shopping.csv',
      'shopping.pdf',
      'shopping.txt',
      'tickets.pdf',
      'worksheet.pdf',
    ]);
    const [page] = await readPdf(readFileSync(at('paper', 'tickets.pdf')));
    expect(page!.width).toBeCloseTo(215.9, 1);
    const lettered = page!.texts.map((text) => text.words).join(' ');
    expect(lettered).toContain('Woodruff');
    expect(lettered).toContain('Quay run');
    expect(readdirSync(at('paper', 'drawings')).some((name) => name.endsWith('.dxf'))).toBe(true);
  });

  it('works a file out again whenever it changes, until it is stopped', async () => {
    const watched = at('watched');
    mkdirSync(watched);
    const stop = new AbortController();
    let said = '';
    const heard = (words: string) =>
      new Promise<void>((resolve) => {
        const look = setInterval(() => {
          if (!said.includes(words)) return;
          clearInterval(look);
          said = '';
          resolve();
        }, 20);
      });
    const ended = told([watched, at('followed'), '--watch'], { stop: stop.signal, say: (text) => (said += text) });
    await heard('Watching');
    writeFileSync(join(watched, 'new.xlsx'), smallFile());
    await heard('new.xlsx …');
    writeFileSync(join(watched, '~$new.xlsx'), 'in use');
    writeFileSync(join(watched, 'bad.xlsx'), 'no workbook');
    await heard('bad.xlsx: the file cannot be worked out');
    stop.abort();
    expect((await ended).code).toBe(0);
    expect(readdirSync(at('followed'))).toEqual(['new.xlsx']);
  });

  it('is a program whose end tells how it went', () => {
    const program = (...words: string[]) =>
      spawnSync(process.execPath, ['src/cli/recompute.js', ...words], { encoding: 'utf8' });
    const help = program('--help');
    expect([help.status, help.stderr]).toEqual([0, '']);
    for (const word of ['--set', '--search', '--paper', '--json', '--watch', '--quiet', '--values']) {
      expect(help.stdout).toContain(word);
    }
    const unread = program(at('missing.xlsx'), at('h.xlsx'));
    expect(unread.status).toBe(2);
    expect(unread.stderr).toContain('missing.xlsx');
    expect(program(OK, at('h.xlsx'), '--fast').stderr).toContain('--fast is not known');
  });
});
