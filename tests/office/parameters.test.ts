import { describe, expect, it } from 'vitest';
import { loadBundle } from '../bundle';

/**
 * Every parameter that a release has had, in its place. Workbooks hold their arguments by place, and a host may keep the list of parameters
 * a day longer than the functions (office-js 2777, 4722): a name that moves would be given another's cells without a word. So
 * what is new comes at the end, may be left out, and is then added here; nothing here changes.
 */
const KNOWN: Readonly<Record<string, string>> = {
  ADHESIVE: 'area coats coverage',
  WEIGHT: 'area thickness density',
  BREAKEVEN: 'tooling make buy minimum?',
  UNIT: 'value from_unit to_unit',
  BENDSTRAIN: 'thickness radius side?',
  MAXTHICKNESS: 'radius tube_per_thickness side?',
  LAYERS: 'height thickness most_rasping?',
  LAYERMIX: 'height thicknesses most_rasping? on_hand?',
  HEELHEIGHT: 'last_heel platform outsole?',
  PLATFORM: 'finished_heel last_heel outsole?',
  PROFILE: 'last lasts size? outlines?',
  OUTLINE: 'last lasts size? foot? let_out? outlines?',
  TIGHTESTRADIUS: 'last lasts side? size? outlines?',
  WEDGE: 'last lasts thicknesses platform? laying? skive_to? most_rasping? size? outlines?',
  COVERSTRIP: 'last lasts turn_over turn_under platform? let_out? size? outlines?',
  WELTSTRIP: 'outline lap width? from?',
  LAYOUTSEARCH: 'pairage styles lasts stock outlines? effort? seed? offcuts?',
  OUTLINEAREA: 'outline',
  EDGELENGTH: 'outline',
  LETOUT: 'outline distance',
  SUMMARY: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  PIECES: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  CUTTING: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  FILLUP: 'pairage styles lasts stock rates outlines? layouts? offcuts? offers?',
  ORDER: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  COST: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  CHECKS: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  BATCHES: 'pairage styles lasts stock rates outlines? layouts? offcuts?',
  BENCHDAYS: 'pairage styles lasts stock rates outlines? layouts? offcuts? offers?',
  TICKET: 'style pairage styles lasts stock rates outlines? layouts? size? offcuts?',
  STOCKTOBUY: 'pairage styles lasts stock outlines? layouts? offcuts? offers? spoiled? effort?',
  PIECESPERSHEET: 'outline sheet_width sheet_length knife_room? edge_trim? direction? feet?',
  AREAUSE: 'outline sheet_width sheet_length knife_room? edge_trim? direction? feet?',
  FIRSTWASTE: 'outline knife_room? direction?',
  PLACEMENTS: 'outline sheet_width sheet_length knife_room? edge_trim? direction? feet?',
  SIZECONVERT: 'size from_system to_system rounding?',
  FOOTLENGTH: 'size system',
  LASTLENGTH: 'size system toe_allowance?',
  GRADE: 'value from_size to_size per_size',
  SIZERUN: 'smallest largest step?',
  PAIRS: 'total size_curve',
  SKIVEWIDTH: 'thickness skive_to angle',
  SKIVEANGLE: 'thickness skive_to width',
  LAPSKIVE: 'thickness skive_to ratio',
  TURNEDEDGE: 'thickness fold',
};

const { metadata, associated } = loadBundle();
const signature = (name: string) =>
  (metadata.find((one) => one.name === name)?.parameters ?? []).map(
    ({ name: parameter, optional }) => `${parameter}${optional ? '?' : ''}`,
  );

describe('parameters', () => {
  it.each(Object.entries(KNOWN))('of %s stay where they are, and new ones may be left out', (name, known) => {
    const before = known.split(' ');
    const now = signature(name);
    expect(now.slice(0, before.length)).toEqual(before);
    expect(now.slice(before.length).filter((one) => !one.endsWith('?'))).toEqual([]);
  });

  it('of new functions are added to the list', () => {
    expect(metadata.map(({ name }) => name).filter((name) => !(name in KNOWN))).toEqual([]);
  });
});

// The suite calls with as many arguments as its list of yesterday has, and the invocation behind them: office-js 2777.
describe('a list of functions that is older than the functions', () => {
  const invocation = { functionName: 'ANY' };
  it('leaves out the newest argument, and the answer is the same as without it', () => {
    const call = (id: string, ...args: unknown[]) => associated.get(id)!(...args);
    expect(call('LAYERS', 45, 7, invocation)).toBe(call('LAYERS', 45, 7, null, invocation));
    expect(call('SIZECONVERT', 42, 'EU', 'UK', invocation)).toBe(call('SIZECONVERT', 42, 'EU', 'UK', null, invocation));
    const lasts = [
      ['Last', 'System', 'Base size', 'Bottom length', 'Heel height', 'Tread', 'Waist', 'Seat'],
      ['A', 'EU', 38, 255, 45, 84, 57, 58],
    ];
    const rows = (answer: unknown) => JSON.stringify(answer);
    expect(rows(call('PROFILE', 'A', lasts, 38, invocation))).toBe(
      rows(call('PROFILE', 'A', lasts, 38, null, invocation)),
    );
    expect(rows(call('OUTLINE', 'A', lasts, 38, 'left', 0, invocation))).toBe(
      rows(call('OUTLINE', 'A', lasts, 38, 'left', 0, null, invocation)),
    );
  });
});
