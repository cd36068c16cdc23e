import type { Role } from '../../workbook/workbook';
import { colours } from '../colours';

type Edge = 'EdgeTop' | 'EdgeBottom' | 'EdgeLeft' | 'EdgeRight' | 'InsideHorizontal' | 'InsideVertical';

interface Rule {
  readonly weight: 'Thin' | 'Medium';
  readonly colour: string;
}

interface Look {
  readonly bold?: boolean;
  /** Lettering in points; without it the workbook's own. */
  readonly size?: number;
  readonly colour?: string;
  readonly fill?: string;
  readonly wrap?: boolean;
  readonly rules?: Readonly<Partial<Record<Edge, Rule>>>;
}

const wide: Rule = { weight: 'Medium', colour: colours.ink };
const narrow: Rule = { weight: 'Thin', colour: colours.ink };
const hairline: Rule = { weight: 'Thin', colour: colours.line };
const box: Rule = { weight: 'Thin', colour: colours.edge };

const boxed: Look = {
  fill: colours.paper,
  rules: {
    EdgeTop: box,
    EdgeBottom: box,
    EdgeLeft: box,
    EdgeRight: box,
    InsideHorizontal: box,
    InsideVertical: box,
  },
};

const worked: Look = { fill: colours.tint, rules: { EdgeBottom: hairline, InsideHorizontal: hairline } };

/** The look of each role: inputs boxed, results tinted. The lettering is the workbook's own. */
export const looks: Readonly<Record<Role, Look>> = {
  title: { bold: true, size: 15 },
  note: { colour: colours.ink2 },
  caption: { bold: true, size: 12 },
  heading: { bold: true, wrap: true, colour: colours.ink, rules: { EdgeTop: wide, EdgeBottom: narrow } },
  input: boxed,
  // Greyed by a condition, while they stand.
  example: boxed,
  result: worked,
  words: { ...worked, wrap: true },
  total: { bold: true, fill: colours.tint, rules: { EdgeTop: narrow, EdgeBottom: wide } },
};

/** Gives cells a look. Lines between cells are only where there are such cells. */
export function dress(
  { format }: Excel.Range,
  { bold, size, colour, fill, wrap, rules = {} }: Look,
  area: { readonly rows: number; readonly columns: number },
): void {
  if (bold) format.font.bold = true;
  if (size !== undefined) format.font.size = size;
  if (colour !== undefined) format.font.color = colour;
  if (fill !== undefined) format.fill.color = fill;
  if (wrap) {
    format.wrapText = true;
    format.verticalAlignment = 'Bottom';
  }
  for (const [edge, rule] of Object.entries(rules) as [Edge, Rule][]) {
    if ((edge === 'InsideHorizontal' && area.rows < 2) || (edge === 'InsideVertical' && area.columns < 2)) continue;
    const border = format.borders.getItem(edge);
    border.style = 'Continuous';
    border.weight = rule.weight;
    border.color = rule.colour;
  }
}

/** Greys the examples of a row while all of them stand as they came. @param come each cell's address and what it came with */
export function greyWhile(
  cells: Excel.Range,
  come: readonly (readonly [address: string, value: string | number])[],
): void {
  const grey = cells.conditionalFormats.add('Custom');
  const same = come.map(
    ([address, value]) => `${address}=${typeof value === 'number' ? value : `"${value.replaceAll('"', '""')}"`}`,
  );
  grey.custom.rule.formula = `=AND(${same.join(',')})`;
  grey.custom.format.font.color = colours.ink2;
}

/** Tints a result's rows as far as its table reaches, and rules off its sum. Shifts with the cells that it is about. */
export function tintWhereFilled(rows: Excel.Range, first: string, below: string, total: boolean): void {
  if (total) {
    const sum = rows.conditionalFormats.add('Custom');
    sum.custom.rule.formula = `=AND(COUNTA(${first})>0,COUNTA(${below})=0)`;
    sum.custom.format.font.bold = true;
    const border = sum.custom.format.borders.getItem('EdgeTop');
    border.style = 'Continuous';
    border.color = colours.ink;
  }
  const filled = rows.conditionalFormats.add('Custom');
  filled.custom.rule.formula = `=COUNTA(${first})>0`;
  filled.custom.format.fill.color = colours.tint;
  const border = filled.custom.format.borders.getItem('EdgeBottom');
  border.style = 'Continuous';
  border.color = colours.line;
}
