import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { responseHeaders } from '../../src/cli/response-headers';
import type { RateUnit } from '../../src/core/plan/inputs';
import { LIMIT_ITEMS, USUAL_LIMITS } from '../../src/core/plan/limits';
import { INPUT_TABLES } from '../../src/tables/input-tables';

const html = readFileSync('dist/help/office.html', 'utf8');

/** Text of HTML without its marks, its white space as one blank. */
const text = html
  .replace(/<[^>]+>/g, ' ')
  .replace(/&quot;/g, '"')
  .replace(/&amp;/g, '&')
  .replace(/\s+/g, ' ');

describe('the guide to the office suite', () => {
  it.each(['taskpane.html', 'functions.json', 'index.html', 'icon-32.png'])(
    'names the headers that are sent with %s',
    (file) => {
      for (const [name, value] of Object.entries(responseHeaders(file))) expect(text).toContain(`${name}: ${value}`);
    },
  );

  it('tells how to load the manifest on the web, on Windows and on the Mac', () => {
    for (const id of ['excel-on-the-web', 'excel-on-windows', 'excel-on-the-mac']) expect(html).toContain(`id="${id}"`);
  });

  it('has remedies for unknown functions, kept functions and a lost network', () => {
    for (const id of ['remedies', 'name', 'an-old-version', 'no-network']) expect(html).toContain(`id="${id}"`);
  });

  it('says how arguments are separated where a comma is the decimal mark, and that names are not translated', () => {
    expect(text).toContain('=SOLEBENCH.LAYERS(45,5;6)');
    expect(text).toContain('never translated');
  });

  it('tells of the units, limits and columns that are easily passed over, by their names in the tables', () => {
    const { boughtFitting, coverLap, covered } = INPUT_TABLES.styles.columns;
    const columns = [boughtFitting, coverLap, covered, INPUT_TABLES.stock.columns.supplier];
    const units: readonly RateUnit[] = ['hours a day', 'days a week'];
    const names = [...columns.map(({ heading }) => heading), LIMIT_ITEMS.tipAngle, LIMIT_ITEMS.stiffForepart, ...units];
    for (const name of names) expect(text).toContain(name);
    expect(text).toContain(`in degrees; usual ${USUAL_LIMITS.tipAngle}`);
    expect(text).toContain(`in mm; usual ${USUAL_LIMITS.stiffForepart}`);
    expect(text).toContain(`Cover lap, in mm; usual ${coverLap.fallback}`);
  });

  it('says what was tried where, and what nobody has tried', () => {
    expect(text).toContain('Nobody has yet tried Solebench inside Excel itself.');
    expect(html).toContain('id="what-was-tried-where"');
  });

  it('names what was reported, with its number, beside what is done about it', () => {
    for (const report of ['4702, 5262, 1951', '2777, 3316, 4722', '6281'])
      expect(text).toContain(`office-js ${report}`);
    expect(text).toContain('None of these versions was tried');
  });

  it('says how to part a blank cell from 0, in a formula that the pane reads', () => {
    expect(text).toContain('IF(StylesTable[#All]="","",StylesTable[#All])');
  });

  it('leads to what becomes of the maker’s data', () => {
    expect(html).toContain('href="privacy.html"');
    expect(readFileSync('dist/help/privacy.html', 'utf8')).toContain('are sent nowhere');
  });
});
