import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { validateXML } from 'xmllint-wasm';

/**
 * The maker's own validator is a service on the network; what it checks is checked here from the maker's documentation:
 * "How to find the proper order of manifest elements" and the pages on each element (learn.microsoft.com, 2026).
 */

const file = (name: string) => ({ fileName: name, contents: readFileSync(`tests/office/schema/${name}`, 'utf8') });

async function faultsOf(manifest: string): Promise<readonly string[]> {
  const { errors } = await validateXML({
    xml: [{ fileName: 'manifest.xml', contents: manifest }],
    schema: [file('manifest.xsd')],
    preload: [file('overrides.xsd'), file('types.xsd')],
  });
  return errors.map(({ message }) => message);
}

const source = readFileSync('manifest.xml', 'utf8');
const built = readFileSync('dist/manifest.xml', 'utf8');
const all = (pattern: RegExp, text = built) => [...text.matchAll(pattern)].map((match) => match[1] as string);
const urls = (text: string) => all(/"(https?:[^"]+)"/g, text).filter((url) => !url.startsWith('http://'));

describe('the manifest', () => {
  it('is well-formed, in the order that the suite demands, with lengths, ids, version and https', async () => {
    expect(await faultsOf(source)).toEqual([]);
    expect(await faultsOf(built)).toEqual([]);
  });

  // The check would be worth nothing if it could not fail.
  it.each([
    [
      'an element out of order',
      /(<Host xsi:type="Workbook">)([\s\S]*?)(<Runtimes>[\s\S]*?<\/Runtimes>)([\s\S]*?<\/AllFormFactors>)/,
      '$1$2$4$3',
    ],
    ['an element twice', /(<SupportUrl.*?\/>)/, '$1$1'],
    ['an address without https', 'https://localhost:3443/icon-16.png', 'http://localhost:3443/icon-16.png'],
    ['a version of three parts', /<Version>.*?<\/Version>/, '<Version>0.1.0</Version>'],
    ['an id that is no GUID', /<Id>.*?<\/Id>/, '<Id>solebench</Id>'],
    ['a short string of 126 characters', 'DefaultValue="Solebench is ready"', `DefaultValue="${'x'.repeat(126)}"`],
    ['a resource id of 33 characters', 'resid="Group.Label"', `resid="${'x'.repeat(33)}"`],
    ['a runtime of short lifetime', 'lifetime="long"', 'lifetime="short"'],
    [
      'a pane of its own for the button',
      '<Action xsi:type="ShowTaskpane">',
      '<Action xsi:type="ShowTaskpane"><TaskpaneId>One</TaskpaneId>',
    ],
    ['a mark that is left open', '</OfficeApp>', ''],
  ])('is refused with %s', async (_what, found, put) => {
    const changed = source.replace(found, put);
    expect(changed).not.toBe(source);
    expect((await faultsOf(changed)).length).toBeGreaterThan(0);
  });

  it('refers only to resources that it has, uses each, and gives no id twice', () => {
    const given = all(/<bt:(?:Image|Url|String) id="([^"]+)"/g);
    expect(new Set(given).size).toBe(given.length);
    expect([...new Set(all(/ resid="([^"]+)"/g))].sort()).toEqual([...given].sort());
  });

  it('runs functions, pane and button in one page', () => {
    const [runtime] = all(/<Runtime resid="([^"]+)"/g);
    expect(all(/<Page>\s*<SourceLocation resid="([^"]+)"/g)).toEqual([runtime]);
    expect(all(/<FunctionFile resid="([^"]+)"/g)).toEqual([runtime]);
    expect(all(/<Action xsi:type="ShowTaskpane">\s*<SourceLocation resid="([^"]+)"/g)).toEqual([runtime]);
    const [page] = all(new RegExp(`id="${runtime}" DefaultValue="([^"]+)"`, 'g'));
    expect(all(/<DefaultSettings>\s*<SourceLocation DefaultValue="([^"]+)"/g)).toEqual([page]);
  });

  it('asks for a shared runtime and custom functions', () => {
    // Errors with a sentence, CustomFunctions.Error, are of the set 1.2.
    expect(all(/<Set Name="([^"]+" MinVersion="[^"]+)"/g)).toEqual([
      'SharedRuntime" MinVersion="1.1',
      'CustomFunctionsRuntime" MinVersion="1.2',
    ]);
  });

  it('names the functions as the embedded page does', () => {
    expect(all(/id="Functions.Namespace" DefaultValue="([^"]+)"/g)).toEqual(['SOLEBENCH']);
    expect(readFileSync('src/embedded/start.ts', 'utf8')).toContain("namespace = 'SOLEBENCH'");
  });

  it('names only files that are built', () => {
    const files = readdirSync('dist', { recursive: true, encoding: 'utf8' });
    const named = urls(built).map((url) => new URL(url).pathname.slice(1));
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((name) => !files.includes(name))).toEqual([]);
    const anchors = urls(built)
      .map((url) => new URL(url))
      .filter(({ hash }) => hash);
    expect(anchors.length).toBeGreaterThan(0);
    for (const { pathname, hash } of anchors) {
      expect(readFileSync(`dist${pathname}`, 'utf8')).toContain(`id="${hash.slice(1)}"`);
    }
  });

  // The suite keeps the list of functions for a day and longer, whatever the server says: office-js 2777, 3316, 4722.
  it('names the list of functions by its own version', () => {
    const [version] = all(/<Version>(.*?)<\/Version>/g);
    const { version: released } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    expect(version).toBe(`${released}.0`);
    const [url] = all(/id="Functions.Metadata.Url" DefaultValue="([^"]+)"/g);
    expect(new URL(url!).pathname).toBe(`/functions-${version}.json`);
    expect(readFileSync(`dist/functions-${version}.json`, 'utf8')).toBe(readFileSync('dist/functions.json', 'utf8'));
  });

  it('has each icon in the size that it says', () => {
    const size = (png: string) => {
      const bytes = readFileSync(`dist/${png}`);
      expect(bytes.subarray(1, 4).toString()).toBe('PNG');
      return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
    };
    for (const [, px, id] of built.matchAll(/size="(\d+)" resid="([^"]+)"/g)) {
      const [url] = all(new RegExp(`id="${id}" DefaultValue="([^"]+)"`, 'g'));
      expect(size(new URL(url!).pathname.slice(1))).toEqual([Number(px), Number(px)]);
    }
    expect(size('icon-32.png')).toEqual([32, 32]);
    expect(size('icon-64.png')).toEqual([64, 64]);
    for (const list of built.match(/<Icon>[\s\S]*?<\/Icon>/g)!) {
      expect(all(/size="(\d+)"/g, list)).toEqual(expect.arrayContaining(['16', '32', '80']));
    }
  });

  it('loads the suite’s script before the functions on its page', () => {
    const page = readFileSync('dist/taskpane.html', 'utf8');
    const scripts = all(/<script[^>]* src="([^"]+)"/g, page);
    expect(scripts[0]).toBe('https://appsforoffice.microsoft.com/lib/1/hosted/office.js');
    expect(scripts).toContain('functions.js');
    for (const script of scripts.slice(1)) expect(readdirSync('dist')).toContain(script);
    expect(page).not.toMatch(/<script(?![^>]*\bsrc=)|<style|\son\w+=|\sstyle=|javascript:/);
  });
});

describe('a build for another address', () => {
  let folder: string;
  const build = (address: string) =>
    spawnSync(
      process.execPath,
      ['node_modules/webpack/bin/webpack.js', '--mode', 'production', '--output-path', folder].concat(
        ['functions', 'page', 'office'].flatMap((name) => ['--config-name', name]),
      ),
      { env: { ...process.env, SOLEBENCH_ADDRESS: address }, encoding: 'utf8' },
    );
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'solebench-build-'));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('names that address everywhere and this machine nowhere', () => {
    const { status, stderr, stdout } = build('https://example.org/bottoms');
    expect(status, stderr + stdout).toBe(0);
    for (const name of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((one) =>
      /\.(html|js|json|xml|css)$/.test(one),
    )) {
      // The grid's own files have addresses of their makers in them, which they never ask for here.
      if (name.startsWith('grid-')) continue;
      const text = readFileSync(join(folder, name), 'utf8');
      expect(text, name).not.toMatch(/localhost:\d|127\.0\.0\.1/);
    }
    const manifest = readFileSync(join(folder, 'manifest.xml'), 'utf8');
    expect(urls(manifest).filter((url) => !url.startsWith('https://example.org/bottoms/'))).toEqual([]);
    const { functions } = JSON.parse(readFileSync(join(folder, 'functions.json'), 'utf8')) as {
      functions: { helpUrl: string; id: string }[];
    };
    for (const { helpUrl, id } of functions) {
      expect(helpUrl).toBe(`https://example.org/bottoms/help/${id.toLowerCase()}.html`);
    }
  }, 180_000);

  it.each(['http://example.org/', 'example.org', 'https://example.org/?a=1', 'https://example.org/#a'])(
    'is refused for %s with what to give instead',
    (address) => {
      const { status, stderr } = build(address);
      expect(status).not.toBe(0);
      expect(stderr).toContain('Give the address of the folder that serves the files');
    },
    180_000,
  );
});
