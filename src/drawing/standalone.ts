import { itemAt } from '../core/item-at';
import { hatchings } from './hatching';
import { escape, f, type Picture, svgOf } from './svg';

/** Colours of the tokens in a picture that leaves the page: ink on white paper, whatever the page looks like. */
const ON_PAPER: Readonly<Record<string, string>> = {
  ink: '#14191b',
  ink2: '#465156',
  edge: '#6b797e',
  line: '#c6cfd1',
  paper: '#ffffff',
  accent: '#00596b',
  wash: '#dcedf0',
};

/** Room about the drawing, u: lines at its edge have their width, letters their halo. */
const MARGIN = 4;

/**
 * A picture as an SVG file of its own: true size in mm, its hatchings with it, every line kind written out as attributes,
 * because many programs read no style sheet. Its sentence is its description.
 * @param css the rules of drawing.css
 */
export function standalone({ width, height, label, marks }: Picture, title: string, css: string): string {
  const body = svgOf(marks);
  const attributes = attributesOf(css);
  const [w, h] = [width + 2 * MARGIN, height + 2 * MARGIN];
  const used = new Set([...body.matchAll(/url\(#(hatch-[a-z0-9-]+)\)/g)].map(([, id]) => id));
  const patterns = (hatchings().match(/<pattern .*?<\/pattern>/gs) ?? []).filter((one) =>
    [...used].some((id) => one.includes(`id="${id}"`)),
  );
  const drawn = plain(`<defs>${patterns.join('')}</defs>${body}`, attributes);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${f(w)}mm" height="${f(h)}mm" viewBox="${-MARGIN} ${-MARGIN} ${f(w)} ${f(h)}"`,
    ` font-family="'Segoe UI', 'Helvetica Neue', Arial, 'Liberation Sans', sans-serif" color="${ON_PAPER['ink']}">\n`,
    `<title>${escape(title)}</title>\n<desc>${escape(label)}</desc>\n`,
    `<rect x="${-MARGIN}" y="${-MARGIN}" width="${f(w)}" height="${f(h)}" fill="${ON_PAPER['paper']}"/>\n`,
    drawn.replaceAll('><', '>\n<'),
    '\n</svg>\n',
  ].join('');
}

interface Rule {
  readonly classes: readonly string[];
  readonly properties: readonly (readonly [name: string, value: string])[];
}

/** The rules for classes within a drawing, in their order. */
function attributesOf(css: string): readonly Rule[] {
  const rules: Rule[] = [];
  for (const [, selectors = '', block = ''] of css.replace(/\/\*.*?\*\//gs, '').matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
    const properties = block
      .split(';')
      .map((declaration) => declaration.split(':').map((part) => part.trim()))
      .flatMap(([name, value]) => (name && value ? [[name, inColour(value)] as const] : []));
    for (const selector of selectors.split(',')) {
      const match = /^\s*\.draw ((?:\.[a-z]+)+)\s*$/.exec(selector);
      if (match) rules.push({ classes: itemAt(match, 1).split('.').filter(Boolean), properties });
    }
  }
  return rules;
}

function inColour(value: string): string {
  return value.replace(/var\(--([a-z0-9]+)\)/g, (_, token: string) => ON_PAPER[token] ?? ON_PAPER['ink'] ?? 'black');
}

/** Classes become the attributes that they stand for; an attribute that is there stays. */
function plain(body: string, rules: readonly Rule[]): string {
  return body
    .replace(/ data-item="[^"]*"/g, '')
    .replace(/<([a-z]+)([^>]*?) class="([^"]*)"([^>]*?)(\/?)>/g, (...found) => {
      const [, tag, before, names, after, end] = found as unknown as [string, string, string, string, string, string];
      const own = names.split(' ');
      const properties = new Map<string, string>();
      for (const { classes, properties: more } of rules) {
        if (!classes.every((name) => own.includes(name))) continue;
        for (const [name, value] of more) properties.set(name, value);
      }
      const given = `${before}${after}`;
      const written = [...properties].filter(([name]) => !given.includes(` ${name}="`));
      return `<${tag}${given}${written.map(([name, value]) => ` ${name}="${value}"`).join('')}${end}>`;
    });
}
