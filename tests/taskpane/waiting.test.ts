import { describe, expect, it } from 'vitest';
import { paperSection } from '../../src/taskpane/paper-section';
import type { PaperMaking } from '../../src/taskpane/paper-making';
import { waiting } from '../../src/taskpane/waiting';
import type { Watched } from '../../src/taskpane/watched';
import { words } from './words-of';

const standing = (kind: 'empty' | 'slips') => ({ standing: { kind }, runs: [{}] }) as unknown as Watched;

describe('where there is nothing to show', () => {
  it('tells what is not there', () => {
    expect(words(waiting(standing('empty'), 'No pairs yet.'))).toContain('No pairs yet.');
  });

  it('tells of slips instead, on paper too, whose styles may be sound: what is missing is not a run', () => {
    const sentence = 'Nothing can be planned yet: first put right what Checks names.';
    expect(words(waiting(standing('slips'), 'No pairs yet.'))).toContain(sentence);
    expect(words(paperSection(standing('slips'), {} as PaperMaking))).toContain(sentence);
  });
});
