/** What XML 1.0 cannot hold at all, and what reads like the standard's own way of writing it. */
const UNFIT =
  /[\x00-\x08\x0B\x0C\x0E-\x1F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]|\r|_(?=x[\dA-Fa-f]{4}_)/g;
const MARKS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text of an element or of an attribute, from what XML can hold; blanks that a parser would change keep their kind. */
export function escaped(text: string): string {
  return text.replace(/[&<>"\t\n\r]/g, (mark) => MARKS[mark] ?? `&#${mark.charCodeAt(0)};`);
}

/** Any text, as the standard writes what XML cannot hold (ST_Xstring): _x0007_ for a bell. */
export function cellText(text: string): string {
  return escaped(text.replace(UNFIT, (mark) => `_x${mark.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`));
}

/** The other way round. */
export function fromCellText(text: string): string {
  return text.includes('_x')
    ? text.replace(/_x([\dA-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)))
    : text;
}

type Attribute = string | number | boolean | undefined;

/** An element; attributes that are undefined are left out. */
export function element(name: string, attributes: Readonly<Record<string, Attribute>>, content = ''): string {
  const given = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${cellText(typeof value === 'boolean' ? (value ? '1' : '0') : String(value))}"`)
    .join('');
  return content === '' ? `<${name}${given}/>` : `<${name}${given}>${content}</${name}>`;
}

/** An element around others with their count; nothing where there are none. */
export function counted(name: string, children: readonly string[]): string {
  return children.length === 0 ? '' : element(name, { count: children.length }, children.join(''));
}

/** An element with text in it, whose blanks at the ends are kept. */
export function textElement(name: string, text: string): string {
  const kept = /^\s|\s$/.test(text);
  return `<${name}${kept ? ' xml:space="preserve"' : ''}>${cellText(text)}</${name}>`;
}

/** A part of a file. */
export function part(root: string): string {
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${root}`;
}
