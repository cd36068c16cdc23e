import type { Container } from './container';
import { readXml } from './read-xml';
import { relationshipsOf } from './relationships';
import { fromCellText, part, textElement } from './xml-text';

/** What a file is called, who made it and the like (ECMA-376 part 2, core properties), with the prefix of each name. */
const NAMES: Readonly<Record<string, 'dc' | 'cp' | 'dcterms'>> = {
  title: 'dc',
  subject: 'dc',
  creator: 'dc',
  description: 'dc',
  language: 'dc',
  keywords: 'cp',
  category: 'cp',
  contentStatus: 'cp',
  created: 'dcterms',
};
/** Letters of each at most. */
const LONGEST = 32_767;

/** Reads what a file says of itself under the standard's names. */
export function readCore(container: Container): Readonly<Record<string, string>> {
  const target = relationshipsOf(container, '').find(
    ({ kind, outside }) => kind === 'core-properties' && !outside,
  )?.target;
  if (target === undefined || !container.has(target)) return {};
  const found = new Map<string, string>();
  readXml(container, target, {
    text(text, inside) {
      const name = inside.at(-1) ?? '';
      if (inside.length !== 2 || NAMES[name] === undefined) return;
      found.set(name, ((found.get(name) ?? '') + text).slice(0, LONGEST));
    },
  });
  const told = [...found].map(([name, text]) => [name, fromCellText(text).trim()] as const);
  return Object.fromEntries(told.filter(([name, text]) => text !== '' && (name !== 'created' || isMoment(text))));
}

function isMoment(text: string): boolean {
  return /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?Z$/.test(text);
}

/** The same as a part of a file. */
export function corePart(core: Readonly<Record<string, string>>): string {
  const content = Object.entries(core).flatMap(([name, text]) => {
    const prefix = NAMES[name];
    if (prefix === undefined) return [];
    const written = textElement(`${prefix}:${name}`, text);
    return [prefix === 'dcterms' ? written.replace('>', ' xsi:type="dcterms:W3CDTF">') : written];
  });
  return part(
    '<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" ' +
      'xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" ' +
      `xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">${content.join('')}</cp:coreProperties>`,
  );
}
