import { describe, expect, it } from 'vitest';
import { goalOf } from '../../src/embedded/goal-typed';

describe('what is typed into the box above the sheet', () => {
  const sheets = ['Run', 'Lasts', 'Costs and times', "Betony's"];
  const names = [
    { name: 'Heights', reference: "'Costs and times'!$B$4:$B$9" },
    { name: 'Rate', reference: '=0.2' },
  ];
  const goal = (typed: string) => goalOf(typed, sheets, names);

  it('may be a cell of another sheet, with quotes or without, whichever its capitals', () => {
    expect(goal('Lasts!E4')).toEqual({ sheet: 'Lasts', cells: 'E4' });
    expect(goal(' lasts!$e$4:f6 ')).toEqual({ sheet: 'Lasts', cells: '$E$4:F6' });
    expect(goal("'Costs and times'!B4")).toEqual({ sheet: 'Costs and times', cells: 'B4' });
    expect(goal('costs and times!b4')).toEqual({ sheet: 'Costs and times', cells: 'B4' });
    expect(goal("'Betony''s'!A1")).toEqual({ sheet: "Betony's", cells: 'A1' });
  });

  it('may be a sheet or a name', () => {
    expect(goal('LASTS')).toEqual({ sheet: 'Lasts' });
    // The grid's box takes no blanks.
    expect(goal('Costsandtimes')).toEqual({ sheet: 'Costs and times' });
    expect(goal("'Costsandtimes'!B4")).toEqual({ sheet: 'Costs and times', cells: 'B4' });
    expect(goal('heights')).toEqual({ sheet: 'Costs and times', cells: '$B$4:$B$9' });
  });

  it('keeps the name of a sheet that there is none of, to be told of', () => {
    expect(goal('Soles!A1')).toEqual({ sheet: 'Soles', cells: 'A1' });
  });

  it('is left to the grid where it is anything else', () => {
    for (const typed of ['', 'E4', 'B2:C9', 'Rate', 'Something', 'Lasts!', 'Lasts!E', 'Lasts!E0', 'a!b!c'])
      expect(goal(typed), typed).toBeUndefined();
  });
});
