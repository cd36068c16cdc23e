import { planArguments, tableCells } from '../workbook/table-cells';

/** A function's name and arguments that it has an answer to; null is an omitted argument. */
export interface SampleCall {
  readonly name: string;
  readonly args: readonly unknown[];
}

const square = [
  [0, 0],
  [200, 0],
  [200, 80],
  [0, 80],
];
const { Lasts: lasts, Outlines: outlines } = tableCells();
const plan = planArguments();
/** One style of the run: each size is laid anew. */
const oneStyle = (plan[0] ?? []).filter(([style], at) => at === 0 || style === 'Teasel');

/** At least one call of every function, with all of its arguments. */
export const sampleCalls: readonly SampleCall[] = [
  { name: 'ADHESIVE', args: [40_000, 2, 3.5] },
  { name: 'WEIGHT', args: [20_000, 6, 250] },
  { name: 'BREAKEVEN', args: [180, 12, 9.5, 60] },
  { name: 'UNIT', args: [12, 'iron', 'mm'] },
  { name: 'BENDSTRAIN', args: [4, 60, 'hollow'] },
  { name: 'MAXTHICKNESS', args: [60, 8, 'over'] },
  { name: 'LAYERS', args: [45, 6, 5] },
  { name: 'LAYERMIX', args: [45, [[6, 4]], 1, [[10, 10]]] },
  { name: 'HEELHEIGHT', args: [45, 10, 4] },
  { name: 'PLATFORM', args: [59, 45, 4] },
  { name: 'PROFILE', args: ['Court 85', lasts, 38, outlines] },
  { name: 'OUTLINE', args: ['Round 45', lasts, 39, 'right', 3, outlines] },
  { name: 'TIGHTESTRADIUS', args: ['Round 45', lasts, 'over', 38, outlines] },
  { name: 'WEDGE', args: ['Round 45', lasts, [[6, 4]], 10, 'flat', 1, 1, 38, outlines] },
  { name: 'WEDGE', args: ['Walk 24', lasts, [[6]], 0, 'bent', 1, 3, 38, outlines] },
  { name: 'COVERSTRIP', args: ['Round 45', lasts, 10, 15, 10, 3, 38, outlines] },
  { name: 'WELTSTRIP', args: [square, 20, 12, 50] },
  { name: 'OUTLINEAREA', args: [square] },
  { name: 'EDGELENGTH', args: [square] },
  { name: 'LETOUT', args: [square, 3] },
  { name: 'SIZECONVERT', args: [42, 'EU', 'UK', 0.5] },
  { name: 'FOOTLENGTH', args: [42, 'EU'] },
  { name: 'LASTLENGTH', args: [42, 'EU', 15] },
  { name: 'GRADE', args: [84, 38, 41, 1.67] },
  { name: 'SIZERUN', args: [36, 43, 0.5] },
  { name: 'PAIRS', args: [50, [[1, 2, 4, 4, 2, 1]]] },
  { name: 'SKIVEWIDTH', args: [6, 1, 15] },
  { name: 'SKIVEANGLE', args: [6, 1, 22] },
  { name: 'LAPSKIVE', args: [3, 0.5, 6] },
  { name: 'TURNEDEDGE', args: [1.2, 5] },
  { name: 'PIECESPERSHEET', args: [square, 640, 950, 4, 10, 'end for end', 'one foot'] },
  { name: 'AREAUSE', args: [square, 640, 950, 4, 10, 'any way', 'one foot'] },
  { name: 'FIRSTWASTE', args: [square, 4, 'one way'] },
  { name: 'PLACEMENTS', args: [square, 640, 950, 4, 10, 15, 'both feet'] },
  { name: 'PIECESPERSHEET', args: [square, 1000, 1200, 3, 10, 'end for end', 'both feet'] },
  { name: 'AREAUSE', args: [square, 1000, 1200, 3, 10, 'any way', 'both feet'] },
  { name: 'FIRSTWASTE', args: [square, 3, 'one way'] },
  { name: 'PLACEMENTS', args: [square, 600, 400, 3, 10, 5, 'one foot'] },
  { name: 'LAYOUTSEARCH', args: [...plan.slice(0, 4), plan[5], 1, 7, plan[7], plan[8]] },
  { name: 'STOCKTOBUY', args: [...plan.slice(0, 4), ...plan.slice(5), 0.02, 1] },
  { name: 'SUMMARY', args: plan },
  { name: 'PIECES', args: plan },
  { name: 'CUTTING', args: plan },
  { name: 'FILLUP', args: [oneStyle, ...plan.slice(1)] },
  { name: 'ORDER', args: plan },
  { name: 'COST', args: plan },
  { name: 'CHECKS', args: plan },
  { name: 'BATCHES', args: plan },
  { name: 'BENCHDAYS', args: plan },
  { name: 'TICKET', args: ['Betony', ...plan.slice(0, 7), 38, plan[7], plan[8]] },
];
