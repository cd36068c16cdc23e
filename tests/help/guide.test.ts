import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { responseHeaders } from '../../src/cli/response-headers';

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

  it('says what was tried where, and what nobody has tried', () => {
    expect(text).toContain('Nobody has yet tried Solebench inside Excel itself.');
    expect(html).toContain('id="what-was-tried-where"');
  });
});
