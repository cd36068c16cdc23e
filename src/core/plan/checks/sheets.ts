import type { Part } from '../../bottom/layer';
import type { Stock } from '../../stock/stock';
import { USUAL_THICKNESS } from '../../stock/usual-thickness';
import type { Cutting } from '../cutting';
import { fold } from '../codes';
import type { PlanInput } from '../inputs';
import type { Runs } from '../runs';
import { strayLayouts } from '../unused';
import type { Check } from './check';

export function offcutChecks({ stocks }: Cutting): readonly Check[] {
  return stocks
    .filter(({ offcuts }) => offcuts.length > 0)
    .map(({ stock: { code: subject }, offcuts }): Check => ({
      kind: 'offcutsUsed',
      subject,
      verdict: 'holds',
      codes: offcuts.map(({ code }) => code),
    }));
}

const LENGTHWISE: ReadonlySet<Part> = new Set<Part>(['insole', 'midsole', 'sole', 'outsole', 'welt']);

/**
 * Of leather, soles and insoles lie along the backbone, never at a quarter turn: it stretches and wears otherwise across; and
 * so do welts, which must not stretch (common practice).
 */
export function leatherChecks({ stocks }: Cutting): readonly Check[] {
  const parts = new Map<string, Part>();
  for (const { stock, lines } of stocks) {
    const part = lines.map(({ layer }) => layer.part).find((one) => LENGTHWISE.has(one));
    if (part && stock.material === 'leather' && stock.direction === 'any way') parts.set(stock.code, part);
  }
  return [...parts].map(([subject, part]) => ({ kind: 'leatherAnyWay', subject, verdict: 'lookAt', part }));
}

/** Styles of which pairs are cut: no sheets are planned for those. */
export function cutChecks({ styles }: Pick<Runs, 'styles'>): readonly Check[] {
  return styles
    .filter(({ pairs, toCut }) => toCut < pairs)
    .map(({ style: { code: subject }, pairs, toCut }): Check => ({
      kind: 'pairsCut',
      subject,
      verdict: 'holds',
      found: pairs - toCut,
      wanted: pairs,
    }));
}

export function layoutChecks({ stocks }: Cutting): readonly Check[] {
  const told = new Set<string>();
  return stocks.flatMap(({ stock: { code: subject }, ignored, source, rows, sheets }): readonly Check[] => {
    if (ignored !== undefined) {
      // Once, in however many formats its pieces are cut.
      if (told.has(subject)) return [];
      told.add(subject);
      return [{ kind: 'layoutIgnored', subject, verdict: 'lookAt', reason: ignored }];
    }
    if (source === 'rows') return [];
    return [{ kind: 'layoutUsed', subject, verdict: 'holds', found: sheets, wanted: rows }];
  });
}

/** Layouts of sheets from which nothing is cut in this run. Where sheets cannot be laid, that is told instead. */
export function strayLayoutChecks(
  { stocks, problems }: Cutting,
  input: Pick<PlanInput, 'layouts' | 'stock'>,
): readonly Check[] {
  if (problems.length > 0) return [];
  const cut = new Set(stocks.map(({ stock }) => fold(stock.code)));
  return strayLayouts(input, (code) => cut.has(code)).map(({ row, known }): Check => ({
    kind: 'strayLayout',
    subject: row.stock,
    verdict: 'lookAt',
    row: row.row,
    known,
  }));
}

/** Sheets that measure otherwise than they are sold as: which of the two was meant, the maker knows. */
export function measuredApart(stock: readonly Stock[]): readonly Check[] {
  return stock.flatMap(({ code, apart }): readonly Check[] =>
    apart
      ? [{ kind: 'measuredApart', subject: code, verdict: 'lookAt', found: apart.measured, wanted: apart.nominal }]
      : [],
  );
}

/** Parts that are thin whatever they are cut from, and the most that they measure, mm (common practice). */
const THIN_PARTS = [
  ['cover', 6],
  ['welt', 8],
  ['insole', 20],
] as const satisfies readonly (readonly [Part, number])[];

/**
 * Sheets that are not sold so thin or so thick, or are too stout for what styles cut from them: mostly a point that is lacking.
 * Where they measure otherwise, that is told.
 */
export function thicknessFar({ stock, styles }: Pick<PlanInput, 'stock' | 'styles'>): readonly Check[] {
  return stock.flatMap(({ code: subject, material, thickness, nominal, apart }): readonly Check[] => {
    const found = nominal ?? thickness;
    const { least, most } = USUAL_THICKNESS[material];
    const sold = Math.min(most, Math.max(least, found));
    const cut = (part: (typeof THIN_PARTS)[number][0]) =>
      styles.some((style) => fold(style[part] ?? '') === fold(subject));
    const [part, stoutest] =
      sold === found ? (THIN_PARTS.find(([one, thickest]) => thickest < found && cut(one)) ?? []) : [];
    const wanted = stoutest ?? sold;
    return apart || wanted === found
      ? []
      : [{ kind: 'thicknessFar', subject, verdict: 'lookAt', material, part, found, wanted }];
  });
}
