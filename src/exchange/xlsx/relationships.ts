import type { Container } from './container';
import { readXml } from './read-xml';
import { element, part } from './xml-text';

/** What a part of a file refers to (ECMA-376 part 2, relationships). */
export interface Relationship {
  readonly id: string;
  /** The last word of its type, such as worksheet. */
  readonly kind: string;
  /** Name of the part; of something outside the file, its address, which is never visited. */
  readonly target: string;
  readonly outside: boolean;
}

/** The relationships of a part; of the whole file where the part's name is blank. */
export function relationshipsOf(container: Container, of: string): readonly Relationship[] {
  const slash = of.lastIndexOf('/') + 1;
  const name = `${of.slice(0, slash)}_rels/${of.slice(slash)}.rels`;
  if (!container.has(name)) return [];
  const found: Relationship[] = [];
  readXml(container, name, {
    open(element, { Id, Type, Target, TargetMode }) {
      if (element !== 'Relationship' || Id === undefined || Type === undefined || Target === undefined) return;
      container.counter.add('others', 'relationships');
      const outside = TargetMode === 'External';
      const target = outside ? Target : resolved(of.slice(0, slash), Target);
      found.push({ id: Id, kind: Type.slice(Type.lastIndexOf('/') + 1), target, outside });
    },
  });
  return found;
}

/** A part's name from how another part, in a folder, refers to it. Steps out of the file lead nowhere. */
function resolved(folder: string, target: string): string {
  const steps = target.startsWith('/') ? [] : folder.split('/').filter(Boolean);
  for (const step of target.split(/[/\\]/)) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}

const TYPES = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** A part that lists relationships: kind (or whole type) and target of each; the first is rId1. */
export function relationshipsPart(targets: readonly (readonly [kind: string, target: string])[]): string {
  const entries = targets.map(([kind, Target], at) =>
    element('Relationship', {
      Id: `rId${at + 1}`,
      Type: kind.includes('/') ? kind : `${TYPES}/${kind}`,
      Target,
    }),
  );
  return part(
    element(
      'Relationships',
      { xmlns: 'http://schemas.openxmlformats.org/package/2006/relationships' },
      entries.join(''),
    ),
  );
}
