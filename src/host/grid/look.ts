import { itemAt } from '../../core/item-at';
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderStyleData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { CellPlan, Role } from '../../workbook/workbook';
import { colours } from '../colours';

export { colours };

const fontFamily = 'Segoe UI, Helvetica Neue, Arial, Liberation Sans, sans-serif';

/**
 * Sizes of lettering in points; a point is 4/3 px. The look's 14 px would be 10.5, but the grid draws whole points only,
 * and columns are measured so that 14 px fit.
 */
const points = { text: 10, caption: 12, title: 15 } as const;

const rule = (weight: BorderStyleTypes, colour: string): IBorderStyleData => ({ s: weight, cl: { rgb: colour } });
const wideRule = rule(BorderStyleTypes.MEDIUM, colours.ink);
const narrowRule = rule(BorderStyleTypes.THIN, colours.ink);
const hairline = rule(BorderStyleTypes.THIN, colours.line);
const box = rule(BorderStyleTypes.THIN, colours.edge);

const lettering: IStyleData = {
  ff: fontFamily,
  fs: points.text,
  cl: { rgb: colours.ink },
  vt: VerticalAlign.MIDDLE,
};
const padding = { l: 6, r: 6, t: 0, b: 1 } as const;
/** Room for the letters' lower ends above a rule. */
const aboveRule = { vt: VerticalAlign.BOTTOM, pd: { ...padding, b: 3 } } as const;

/** What cells look like that nothing else is said of. */
export const plain: IStyleData = { ...lettering, pd: padding };

const semibold = { bl: BooleanNumber.TRUE } as const;

const worked: IStyleData = { bg: { rgb: colours.tint }, bd: { b: hairline } };

/** The look of a role without its format and alignment. */
const roles: Readonly<Record<Role, IStyleData>> = {
  title: { ...semibold, fs: points.title },
  note: { cl: { rgb: colours.ink2 } },
  caption: { ...semibold, ...aboveRule, fs: points.caption },
  heading: { ...semibold, ...aboveRule, tb: WrapStrategy.WRAP, bd: { t: wideRule, b: narrowRule } },
  input: { bg: { rgb: colours.paper }, bd: { t: box, r: box, b: box, l: box } },
  example: { cl: { rgb: colours.ink2 }, bg: { rgb: colours.paper }, bd: { t: box, r: box, b: box, l: box } },
  result: worked,
  words: { ...worked, tb: WrapStrategy.WRAP },
  total: { ...semibold, bg: { rgb: colours.tint }, bd: { t: narrowRule, b: wideRule } },
};

/** The style of a cell in a role, with its number format and alignment. */
export function styleOf({ role, format, align }: Pick<CellPlan, 'role' | 'format' | 'align'>): IStyleData {
  return {
    // The grid draws a cell with a drop-down list by the cell's own style alone, with room of its own around it.
    ...lettering,
    ...roles[role],
    ...(format !== undefined && { n: { pattern: format } }),
    ...(align && { ht: align === 'right' ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT }),
  };
}

/** Name of a role's style in a workbook. The maker's own styles have other names. */
export function styleId({ role, format, align }: Pick<CellPlan, 'role' | 'format' | 'align'>): string {
  return [role, align, format].filter((part) => part !== undefined).join(' ');
}

/** The style that a planned style's cell has in another role; undefined for a style of the maker's own. */
export function inRole(role: Role, id: string): IStyleData | undefined {
  if (!isPlanned(id)) return undefined;
  const [, first, ...rest] = id.split(' ');
  const align = first === 'left' || first === 'right' ? first : undefined;
  const format = [...(align || first === undefined ? [] : [first]), ...rest].join(' ');
  return styleOf({ role, ...(align && { align }), ...(format && { format }) });
}

/** Whether a style came from a plan, and not from the maker. */
export function isPlanned(id: unknown): id is string {
  return typeof id === 'string' && Object.hasOwn(roles, itemAt(id.split(' '), 0));
}

/** The role that a planned style is of. */
export function roleOf(id: string): Role {
  return id.split(' ')[0] as Role;
}
