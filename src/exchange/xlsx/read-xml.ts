import { SaxesParser } from 'saxes';
import type { Container } from './container';
import { Refusal } from './limits';
import { escaped } from './xml-text';

export type Attributes = Readonly<Record<string, string>>;

/** Is told of a part's elements in their order, by their names without prefixes. */
export interface Listener {
  open?(name: string, attributes: Attributes, inside: readonly string[]): void;
  text?(text: string, inside: readonly string[]): void;
  /** @param inside the elements around it */
  close?(name: string, inside: readonly string[]): void;
}

/**
 * Reads a part as XML, bit by bit. Nothing outside the part is ever fetched, and no entities are expanded.
 * @throws Refusal where it is no XML, or has a document type, which no workbook needs
 */
export function readXml(container: Container, name: string, listener: Listener): void {
  const parser = new SaxesParser<{ position: false; xmlns: false }>({ position: false, xmlns: false });
  const path: string[] = [];
  const failed = (why: string) => {
    throw new Refusal(`its part ${name} ${why}`);
  };
  parser.on('error', () => failed('is not well formed'));
  parser.on('doctype', () => failed('defines entities of its own'));
  parser.on('opentag', ({ name: full, attributes }) => {
    const local = withoutPrefix(full);
    container.counter.add('elements', 'elements');
    listener.open?.(local, attributes, path);
    path.push(local);
    if (path.length > container.counter.limits.depth) failed('is nested too deep');
  });
  const text = (characters: string) => listener.text?.(characters, path);
  parser.on('text', text);
  parser.on('cdata', text);
  parser.on('closetag', () => {
    const local = path.pop() as string;
    listener.close?.(local, path);
  });
  let decoder: TextDecoder | undefined;
  container.unpack(name, (bytes) => {
    decoder ??= decoderFor(bytes);
    parser.write(decoder.decode(bytes, { stream: true }));
  });
  parser.write(decoder?.decode() ?? '');
  parser.close();
}

/** An XML document is in UTF-8 unless it begins otherwise. */
function decoderFor(bytes: Uint8Array): TextDecoder {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le');
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be');
  return new TextDecoder();
}

function withoutPrefix(name: string): string {
  const colon = name.indexOf(':');
  return colon < 0 ? name : name.slice(colon + 1);
}

/** A truth value of an attribute (xsd:boolean). */
export function isTrue(value: string | undefined, otherwise = false): boolean {
  return value === undefined ? otherwise : value === '1' || value === 'true' || value === 'on';
}

/** A whole number of an attribute, within bounds; undefined for anything else. */
export function whole(value: string | undefined, most = 2 ** 31): number | undefined {
  const number = value === undefined || !/^\s*\d+\s*$/.test(value) ? NaN : Number(value);
  return number <= most ? number : undefined;
}

/** Any finite number of an attribute. */
export function decimal(value: string | undefined): number | undefined {
  const number = value === undefined || value.trim() === '' ? NaN : Number(value);
  return Number.isFinite(number) ? number : undefined;
}

/** The relationship that an element names, whatever prefix the file has for relationships. */
export function relationId(attributes: Attributes): string | undefined {
  const found = Object.entries(attributes).find(([name]) => /^[^:]+:(id|embed)$/.test(name));
  return found?.[1];
}

/** Writes elements down again as they came, to be carried into another file. */
export class Copy {
  private readonly parts: string[] = [];
  private depth = 0;
  private open = false;

  /** Whether it is within an element. */
  get busy(): boolean {
    return this.depth > 0;
  }

  /** Attributes with a prefix belong to other parts of the file, and are left out but for blanks that are kept. */
  start(name: string, attributes: Attributes): void {
    this.endTag();
    const given = Object.entries(attributes)
      .filter(([key]) => key === 'xml:space' || !key.includes(':'))
      .filter(([key]) => key !== 'xmlns')
      .map(([key, value]) => ` ${key}="${escaped(value)}"`)
      .join('');
    this.parts.push(`<${name}${given}`);
    this.open = true;
    this.depth++;
  }

  text(text: string): void {
    if (text === '') return;
    this.endTag();
    this.parts.push(escaped(text));
  }

  end(name: string): void {
    this.depth--;
    this.parts.push(this.open ? '/>' : `</${name}>`);
    this.open = false;
  }

  toString(): string {
    return this.parts.join('');
  }

  private endTag(): void {
    if (this.open) this.parts.push('>');
    this.open = false;
  }
}
