import { describe, expect, it } from 'vitest';
import { wordsWhileFollowing } from '../../src/embedded/words-while-following';

describe('the words of a run that is at work in another tab', () => {
  it('take the place of what the grid says of what may not be done, and of nothing else', () => {
    const words = {
      'a-part': {
        menu: { delete: 'Delete' },
        permission: { panel: 'Rights', dialog: { editErr: 'Ask its owner.', alert: 'No', confirm: 'Confirm' } },
      },
      another: { menu: 'Hide' },
    };
    expect(wordsWhileFollowing(words)).toEqual({
      'a-part': {
        menu: { delete: 'Delete' },
        permission: {
          panel: 'Rights',
          dialog: {
            editErr: expect.stringContaining('another tab'),
            alert: 'Open in another tab',
            confirm: 'Confirm',
          },
        },
      },
    });
  });
});
