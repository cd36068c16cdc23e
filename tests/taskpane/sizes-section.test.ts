import type { TemplateResult } from 'lit';
import { describe, expect, it } from 'vitest';
import { SizeChoice, sizesSection } from '../../src/taskpane/sizes-section';
import type { Watched } from '../../src/taskpane/watched';
import { words } from './words-of';

/** The section of a run with some sizes, planned or not. */
function section(planned: boolean, asked = false) {
  const tables = new Map([['Pairage', [['Style', 36, 37, 38]]]]);
  const runs = planned ? [{}] : [];
  const watched = { tables, runs } as unknown as Pick<Watched, 'tables' | 'runs'>;
  const nothing = () => undefined;
  const choice = new SizeChoice(nothing);
  choice.open = asked;
  return sizesSection(watched, choice, nothing) as TemplateResult;
}

function isOpen({ strings, values }: TemplateResult): unknown {
  return values[strings.findIndex((text) => text.endsWith('?open='))];
}

describe('columns for sizes', () => {
  it('stand open before any pairs are planned, which is when they are wanted, and fold away after', () => {
    expect(isOpen(section(false))).toBe(true);
    expect(isOpen(section(true))).toBe(false);
    expect(isOpen(section(true, true))).toBe(true);
  });

  it('are named where half sizes between those that are there lack', () => {
    expect(words(section(false))).toContain('36.5, 37.5');
  });

  it('are proposed in the system of the lasts, in the place of those that no last has', () => {
    const tables = new Map([
      ['Pairage', [['Style', 36, 37, 38, 'Pairs'], ['Rigg']]],
      [
        'Styles',
        [
          ['Style', 'Last'],
          ['Rigg', 'Fell'],
        ],
      ],
      [
        'Lasts',
        [
          ['Last', 'System', 'Base size'],
          ['Fell', 'UK', 5],
        ],
      ],
    ]);
    const nothing = () => undefined;
    const said = words(sizesSection({ tables, runs: [] }, new SizeChoice(nothing), nothing)).replace(/\s+/g, ' ');
    expect(said).toContain('Still without a column: 3.5, 4, 4.5, 5, 5.5.');
    expect(said).toContain(
      '36, 37, 38: no sizes of UK, the System of the lasts, and without pairs. From the left they become these.',
    );
    expect(said).toContain('Make 5 columns');
  });
});
