import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';

const folder = 'dist/help';
const pages = readdirSync(folder).filter((name) => name.endsWith('.html'));
const read = (name: string) => readFileSync(join(folder, name), 'utf8');

describe('the help', () => {
  it('has a page for each function, and the list names each', () => {
    const index = read('index.html');
    for (const { name } of loadBundle().metadata) {
      expect(pages).toContain(`${name.toLowerCase()}.html`);
      expect(index).toContain(`<a href="${name.toLowerCase()}.html"><b>${name}</b>`);
    }
  });

  it.each(pages)('%s has nothing inline, a title of its own, and leads only to what is there', (name) => {
    const html = read(name);
    expect(html).not.toMatch(/<script(?![^>]*\bsrc=)|<style|\son\w+=|\sstyle=|javascript:/);
    expect(html.match(/<h1>/g)).toHaveLength(1);
    expect(html).toMatch(/<title>[^<]+ – Solebench help<\/title>/);
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, link] of html.matchAll(/(?:href|src)="([^"]+)"/g)) {
      if (/^https:/.test(link!)) continue;
      const [file, anchor] = link!.split('#') as [string, string | undefined];
      const path = file === '' ? join(folder, name) : normalize(join(folder, file));
      expect(existsSync(path), link).toBe(true);
      if (anchor !== undefined) expect(readFileSync(path, 'utf8'), link).toContain(`id="${anchor}"`);
    }
  });
});
