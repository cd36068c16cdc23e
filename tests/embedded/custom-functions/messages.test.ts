import { describe, expect, it } from 'vitest';
import { Messages } from '../../../src/embedded/custom-functions/messages';

const cell = { unitId: 'w', sheetId: 's', row: 4, column: 2 };

describe('Messages', () => {
  it('belong to the error that the cell shows', () => {
    const messages = new Messages();
    messages.note(cell, '#VALUE!', 'height: enter one');
    expect(messages.at(cell, '#VALUE!')).toBe('height: enter one');
    expect(messages.at(cell, '#N/A')).toBeUndefined();
    expect(messages.at({ ...cell, row: 5 }, '#VALUE!')).toBeUndefined();
  });

  it('keep the first reason, and give way to the next when formulas are worked out again', () => {
    const messages = new Messages();
    messages.note(cell, '#VALUE!', 'first');
    messages.note(cell, '#VALUE!', 'what follows from it');
    expect(messages.at(cell, '#VALUE!')).toBe('first');
    messages.begin();
    messages.note(cell, '#VALUE!', 'second');
    expect(messages.at(cell, '#VALUE!')).toBe('second');
  });

  it('go when the formula works, but not through another call of the same formula that does', () => {
    const messages = new Messages();
    messages.note(cell, '#VALUE!', 'first');
    messages.passed(cell);
    expect(messages.size).toBe(1);
    messages.begin();
    messages.passed(cell);
    expect(messages.size).toBe(0);
  });
});
