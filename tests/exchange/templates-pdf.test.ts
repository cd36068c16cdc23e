import { describe, expect, it } from 'vitest';
import { packagedFonts } from '../../src/cli/fonts';
import { box } from '../../src/core/geometry/box';
import { moved } from '../../src/core/geometry/moved';
import type { Point } from '../../src/core/geometry/ring';
import { type PaperJob, chosenPieces } from '../../src/drawing/paper/chosen';
import { nestPages } from '../../src/drawing/paper/nest-pages';
import { PAPERS } from '../../src/drawing/paper/page';
import { type TemplatePage, templatePages } from '../../src/drawing/paper/template-pages';
import { tileArea } from '../../src/drawing/paper/true-pages';
import { onTile, seamsOf, type Tile } from '../../src/drawing/paper/tiles';
import { writePdf } from '../../src/exchange/pdf';
import { PART_WORDS } from '../../src/tables/words';
import { demoJob, renamedJob, whole } from '../drawing/paper/jobs';
import { Ink } from '../ink';
import { type ReadPage, readPdf } from '../read-pdf';

const DPI = 300;
const fonts = packagedFonts();

async function printed(pages: ReturnType<typeof nestPages> extends Generator<string, infer P> ? P : never) {
  return readPdf((await writePdf(pages, { title: 'Templates' }, fonts)).bytes);
}

async function templates(job: PaperJob) {
  const pages = whole(templatePages(job));
  return { pages, read: await printed(pages) };
}

const ink = async (page: ReadPage) => new Ink(await page.render(DPI));

/** Side of the check square along both axes: from its middle to the lines about it. */
function squareOf(page: ReadPage, on: Ink): readonly [number, number] {
  const label = page.texts.find(({ words }) => words === '100 × 100 mm')!;
  const [x, y] = [label.x, label.y + 20];
  return [
    on.firstLine(x, y, 1, 0) + on.firstLine(x, y, -1, 0),
    on.firstLine(label.x - 10, y, 0, 1) + on.firstLine(label.x - 10, y, 0, -1),
  ];
}

describe('printed templates', { timeout: 120_000 }, () => {
  it('carry a square of 100 mm and rules of 200 mm that measure so', async () => {
    const { read } = await templates(
      demoJob({ styles: ['Betony'], sizes: [36], stocks: ['Foam 10'], paper: PAPERS.A3 }),
    );
    const on = await ink(read[0]!);
    for (const side of squareOf(read[0]!, on)) expect(Math.abs(side - 100)).toBeLessThan(0.2);
    const a4 = await templates(demoJob({ styles: ['Betony'], sizes: [38] }));
    for (const page of a4.read.slice(0, 2)) {
      expect([page.width, page.height].map((mm) => Math.round(mm * 10) / 10)).toEqual([210, 297]);
      // Rules meet 5 mm from the left edge and 22.5 mm from the lower one; half a stroke, 0.125 mm, is beyond both ends.
      const measured = await ink(page);
      expect(Math.abs(measured.run(3, 297 - 22.55, 1, 0) - 0.25 - 200)).toBeLessThan(0.2);
      expect(Math.abs(measured.run(5, 297 - 21.5, 0, -1) - 0.25 - 200)).toBeLessThan(0.2);
      expect(page.texts.map(({ words }) => words).join(' ')).toContain('Print at 100 %, measure before cutting');
    }
  });

  it.each([
    ['Betony', 36, 'Foam 10'],
    ['Yarrow', 41, 'Shoulder 3'],
    ['Teasel', 40, 'Foam 18'],
  ])('of %s %i from %s are as long and as wide as core has the piece', async (style, size, stock) => {
    const job = demoJob({ styles: [style], sizes: [size], stocks: [stock], paper: PAPERS.A3 });
    const { pages, read } = await templates(job);
    const piece = pages[0]!.templates[0]!;
    const label = read[0]!.texts.find(({ words }) => words.startsWith(`${style} EU`) && / [LR]$/.test(words))!;
    const found = (await ink(read[0]!)).connected(11, label.y);
    // The ink reaches half a wide line, 0.25 mm, beyond the edge on either side.
    const sides = [found.right - found.left - 0.5, found.bottom - found.top - 0.5].sort((a, b) => a - b);
    expect(Math.abs(sides[0]! - piece.line.layer.width)).toBeLessThan(0.2);
    expect(Math.abs(sides[1]! - piece.line.layer.length)).toBeLessThan(0.2);
  });

  it('that run over pages give their outline back when the pages are joined by their marks', async () => {
    for (const [style, size, stock] of [
      ['Yarrow', 42, 'Bend 4'],
      ['Fennel', 38, 'Kid 1'],
    ] as const) {
      const { pages, read } = await templates(demoJob({ styles: [style], sizes: [size], stocks: [stock] }));
      const first = pages.findIndex(({ tile }) => tile);
      const template = pages[first]!.templates[0]!;
      const own = pages.flatMap((page, i) => (page.templates[0] === template && page.tile ? [i] : []));
      expect(own.length).toBeGreaterThan(1);
      const sheets = await Promise.all(own.map((i) => ink(read[i]!)));
      const tiles = own.map((i) => pages[i]!.tile as Tile);
      const off = joined(tiles, sheets);
      // The drawing's measure as the first page has it.
      const area = tileArea({ paper: PAPERS.A4 });
      const stands = box(template.ground).right - box(template.ground).left > 190 ? 90 : 0;
      for (const [x, y] of along(moved(template.ring, stands).map(([px, py]): Point => [px, -py]))) {
        const [px, py] = onTile(tiles[0]!, area, x, y);
        const drawn = sheets.some((sheet, i) => sheet.near(px - off[i]![0], py - off[i]![1], 0.3));
        expect(drawn, `${style} at ${x.toFixed(1)}, ${y.toFixed(1)}`).toBe(true);
      }
    }
  });

  it('hold every piece of the plan once, with all its words', async () => {
    const job = demoJob({ styles: ['Betony', 'Clover', 'Tansy'], sizes: [37, 39] });
    const { pages, read } = await templates(job);
    const shown = new Set(pages.flatMap((page) => page.templates));
    const pieces = chosenPieces(job);
    // Clover's sheet has a moulded face, so that left and right are drawn each.
    const wanted = pieces.flatMap(({ run }) => (run.style.code === 'Clover' ? ['L', 'R'] : ['L']));
    expect(shown.size).toBe(wanted.length);
    const shared = pages.filter(({ tile }) => !tile).flatMap((page) => page.templates);
    expect(new Set(shared).size).toBe(shared.length);
    const words = read.flatMap((page, i) => page.texts.map((text) => ({ ...text, page: pages[i] as TemplatePage })));
    for (const template of shown) {
      const { run, layer, count, sizeRun } = template.line;
      const on = words.filter(({ page }) => page.templates.includes(template)).map((text) => text.words);
      const name = `${run.style.code} ${sizeRun.system} ${sizeRun.size} ${template.foot}`;
      expect(on).toContain(name);
      expect(on).toContain(`${PART_WORDS[layer.part]} ${layer.item} from ${layer.stock}`);
      const each = count / 2;
      expect(on).toContain(
        template.turned ? `cut ${each} L; turn over for R: ${each}` : `cut ${each} ${template.foot}`,
      );
      if (!layer.skive) continue;
      // From above, what is rasped off below afterwards still stands at the edge (derived).
      const { face, edge, width } = layer.skive;
      const left = edge + (face === 'upper' ? (layer.rasped ?? 0) : 0);
      const [wide, thick, thin] = [width, layer.thickness, left].map((one) => Number(one.toFixed(1)));
      const skived = on.find((one) => one.startsWith(`skive ${face} face ${wide} mm, `));
      expect(skived).toMatch(new RegExp(`, from ${thick} to ${thin}$`));
    }
    expect(pieces.some(({ layer }) => layer.skive?.face === 'upper' && layer.rasped)).toBe(true);
    // Each is lettered once on its page: nothing is drawn twice.
    const heads = words.filter(({ words: one }) => /^(Betony|Clover|Tansy) EU \d+ [LR]$/.test(one));
    expect(heads).toHaveLength(pages.reduce((sum, page) => sum + page.templates.length, 0));
    read.forEach((page, i) => {
      expect(page.texts.map((text) => text.words)).toContain(`${i + 1} of ${read.length}`);
    });
  });

  it('nest all sizes of a piece on its page', async () => {
    const pages = whole(nestPages(demoJob({ styles: ['Betony'] })));
    const read = await printed(pages);
    const lifts = read.find((page) => page.texts.some(({ words }) => words === 'Lift 2'))!;
    const sizes = demoJob().plan.runs.styles.find(({ style }) => style.code === 'Betony')!.sizes;
    for (const { size } of sizes) expect(lifts.texts.map(({ words }) => words)).toContain(String(size));
  });

  it('print Latin, Greek and Cyrillic names, and tell what their font lacks', async () => {
    const job = renamedJob({ Betony: 'Ωραία Ёлка Žluťoučká' }, { styles: ['Ωραία Ёлка Žluťoučká'], sizes: [36] });
    const pages = whole(templatePages(job));
    const { bytes, lacking } = await writePdf(pages, { title: job.run }, fonts);
    expect(lacking).toEqual([]);
    const [page] = await readPdf(bytes);
    expect(page!.texts.some(({ words }) => words.includes('Ωραία Ёлка Žluťoučká EU 36'))).toBe(true);
    const asian = whole(templatePages({ ...job, run: '靴 run' }));
    expect((await writePdf(asian, { title: '' }, fonts)).lacking).toEqual(['靴']);
  });

  it('keep hostile names harmless', async () => {
    const names = ['../x<script>', 'n'.repeat(300), 'ab\u202Egnp.exe'];
    for (const name of names) {
      const job = renamedJob({ Betony: name }, { styles: [name], sizes: [36], stocks: ['Cork 6'], run: name });
      const pages = whole(templatePages(job));
      expect(pages.length).toBeGreaterThan(0);
      const read = await printed(pages);
      const words = read[0]!.texts.map((text) => text.words).join('\n');
      expect(words).not.toMatch(/[\u0000-\u0009\u202a-\u202e\u2066-\u2069]/);
      expect(words).toContain(name.slice(0, 2));
    }
  });
});

/** For each tile, what brings its page on to the first one's, measured at the crosses that they share. */
function joined(tiles: readonly Tile[], sheets: readonly Ink[]): readonly Point[] {
  const area = tileArea({ paper: PAPERS.A4 });
  const seams = seamsOf(tiles);
  const off: Point[] = [[0, 0]];
  for (let i = 1; i < tiles.length; i++) {
    const [one, other] = [tiles[i - 1] as Tile, tiles[i] as Tile];
    const { crosses } = seams[i - 1]!;
    const moves = crosses.map(({ x, y }) => {
      const [ax, ay] = sheets[i - 1]!.cross(...onTile(one, area, x, y), 3.2);
      const [bx, by] = sheets[i]!.cross(...onTile(other, area, x, y), 3.2);
      return [ax - bx, ay - by] as const;
    });
    const mean = (k: 0 | 1) => moves.reduce((sum, move) => sum + move[k], 0) / moves.length;
    off.push([off[i - 1]![0] + mean(0), off[i - 1]![1] + mean(1)]);
  }
  return off;
}

/** Points of a ring, 2 mm apart at most. */
function along(ring: readonly Point[]): readonly Point[] {
  return ring.flatMap(([ax, ay], i) => {
    const [bx, by] = ring[(i + 1) % ring.length] as Point;
    const n = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / 2));
    return Array.from({ length: n }, (_, k): Point => [ax + ((bx - ax) * k) / n, ay + ((by - ay) * k) / n]);
  });
}
