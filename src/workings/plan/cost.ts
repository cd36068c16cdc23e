import { benchOf } from '../../core/plan/bench';
import { fold } from '../../core/plan/codes';
import { type CostLine, cuttingDone, workOf } from '../../core/plan/cost/cost';
import { PASTE, pasteOf } from '../../core/plan/cost/beside-stock';
import { stockShares } from '../../core/plan/cost/stock-shares';
import { makeOrBuy } from '../../core/plan/cost/make-or-buy';
import { ratesOf } from '../../core/plan/cost/rates';
import type { Work } from '../../core/plan/cost/work';
import type { Rate, RateUnit } from '../../core/plan/inputs';
import type { SizeRun } from '../../core/plan/runs';
import { timesOfSteps } from '../../core/steps/steps';
import { furtherWork, scopesOf } from '../../core/steps/times';
import { WORK_WORDS } from '../../tables/words';
import { below } from '../heights';
import { given, type Given, step, told, type WorkedStep } from '../working';
import { adhesivePrice } from './adhesive-price';
import { cell, type ColumnWorking, type ColumnWorkings, type Context, pairsOf, rate } from './context';

/** Rows of Costs and times that hold for a style's layers. */
function rows({ run }: CostLine, context: Context, ...units: readonly RateUnit[]): readonly Given[] {
  const rates = ratesOf(context.plan.input.rates);
  const { code } = run.style;
  // The lasted bottom is of leather.
  const scopes = [
    [code, 'leather'],
    ...run.sizes.flatMap(({ bottom }) => bottom.layers.map((layer) => scopesOf(code, layer))),
  ];
  const found = new Set([...scopes, [code]].flatMap((scope) => units.flatMap((unit) => rates.items(unit, scope))));
  return [...found].flatMap((row) => rate(row));
}

/** What the bench takes of each size, weighed by its pairs. */
function averaged(
  { run }: CostLine,
  { plan }: Context,
  unit: string,
  of: (work: Work) => number | undefined,
): { readonly given: readonly Given[]; readonly steps: readonly WorkedStep[]; readonly formula: string } {
  const taken = workOf(run, plan.input);
  const groups = alikeIn(run.sizes, (one) => {
    const work = taken.get(one);
    return (work && of(work)) ?? 0;
  });
  const from = groups.map(({ sizes }, i) =>
    given(
      `p${below(i + 1)}`,
      `Pairs in ${sizesInWords(sizes)}`,
      sizes.reduce((sum, { pairs }) => sum + pairs, 0),
    ),
  );
  const steps = groups.map(({ sizes, value }, i) =>
    step(`v${below(i + 1)}`, `A pair in ${sizesInWords(sizes)}`, undefined, value, unit),
  );
  const sum = groups.map((_, i) => `p${below(i + 1)} · v${below(i + 1)}`).join(' + ');
  return {
    given: [...from, given('P', 'Pairs of the style', run.pairs)],
    steps,
    formula: `(${sum}) / P`,
  };
}

interface Alike {
  readonly sizes: readonly SizeRun[];
  readonly value: number;
}

/** Sizes that follow each other with one value are told of once. */
function alikeIn(sizes: readonly SizeRun[], of: (size: SizeRun) => number): readonly Alike[] {
  const groups: { sizes: SizeRun[]; value: number }[] = [];
  for (const size of sizes) {
    const value = of(size);
    const last = groups.at(-1);
    const same = last && Math.abs(last.value - value) < 1e-9 && last.sizes[0]?.system === size.system;
    if (same) last.sizes.push(size);
    else groups.push({ sizes: [size], value });
  }
  return groups;
}

/** "EU 38", "EU 36 to 43, 15 sizes". */
function sizesInWords(sizes: readonly SizeRun[]): string {
  const [first, last] = [sizes[0], sizes.at(-1)];
  const one = `${first?.system} ${first?.size}`;
  return sizes.length > 1 ? `${one} to ${last?.size}, ${sizes.length} sizes` : one;
}

/** What a pair's minutes are made of, by kinds of work, where all sizes are alike. */
function byKind({ run }: CostLine, { plan: { input } }: Context): readonly WorkedStep[] {
  const [first] = run.sizes;
  const taken = workOf(run, input);
  const all = run.sizes.map((one) => taken.get(one)?.minutes ?? 0);
  if (!first || all.some((one) => Math.abs(one - (all[0] ?? 0)) > 1e-9)) return [];
  const bench = benchOf(input);
  const kinds = new Map<string, { count: number; minutes: number }>();
  const add = (words: string, minutes: number) => {
    const known = kinds.get(words) ?? { count: 0, minutes: 0 };
    if (minutes > 0) kinds.set(words, { count: known.count + 1, minutes: known.minutes + minutes });
  };
  for (const one of timesOfSteps(first.bottom, run.style, bench)) add(WORK_WORDS[one.kind], one.minutes);
  add('work of no step', furtherWork(run.style.code, bench.rates).minutes);
  return [...kinds].map(([words, { count, minutes }]) =>
    told(count === 1 ? `Of a pair: ${words}` : `Of a pair: ${words}, ${count} steps`, minutes, 'min'),
  );
}

const before = (symbol: string, what: string, value: number, unit?: string) =>
  step(symbol, what, undefined, value, unit);

/** What a row of Costs and times that holds for the style makes of what comes before it. */
interface ByRate {
  readonly unit: RateUnit;
  readonly symbolOfRate: string;
  readonly steps: (line: CostLine) => readonly WorkedStep[];
  readonly symbol: string;
  readonly what: string;
  /** Said where there is no such row. */
  readonly without: string;
  readonly formula: string;
}

const byRate =
  ({ unit, symbolOfRate, steps, symbol, what, without, formula }: ByRate): ColumnWorkings<CostLine>[string] =>
  (line, context) => {
    const row = ratesOf(context.plan.input.rates).row(unit, [line.run.style.code]);
    return {
      given: rate(row, symbolOfRate),
      steps: steps(line),
      symbol,
      what: row ? what : without,
      formula: row && formula,
    };
  };

/** Shares spoiled that hold for a sheet of the style or its material, and not for all that it is built from. */
function spoiledBySheet({ run }: CostLine, { plan }: Context): readonly Rate[] {
  const rates = ratesOf(plan.input.rates);
  const { code } = run.style;
  const whole = rates.row('share spoiled', [code]);
  const layers = run.sizes.flatMap(({ bottom }) => bottom.layers);
  const found = new Set(layers.flatMap((layer) => rates.row('share spoiled', scopesOf(code, layer)) ?? []));
  return [...found].filter((row) => row !== whole);
}

const spoilage = byRate({
  unit: 'share spoiled',
  symbolOfRate: 'f',
  steps: ({ stock, adhesiveCost }) => [
    before('S', 'Stock of a pair', stock),
    before('g', 'Adhesive of a pair', adhesiveCost),
  ],
  symbol: 'q',
  what: 'Spoiled, of stock and adhesive',
  without: 'No share spoiled is given',
  formula: '(S + g) · f',
});

function spoilageBySheet(
  { run, stockSpoiled, adhesiveCost }: CostLine,
  { plan }: Context,
  own: readonly Rate[],
): ReturnType<ColumnWorkings<CostLine>[string]> {
  const whole = ratesOf(plan.input.rates).row('share spoiled', [run.style.code]);
  return {
    given: [...own.flatMap((row) => rate(row)), ...rate(whole, 'f')],
    steps: [
      before('Q', 'Spoiled of the stock of a pair, each sheet by the share that holds for it', stockSpoiled),
      before('g', 'Adhesive of a pair', adhesiveCost),
    ],
    symbol: 'q',
    what: 'Spoiled, of stock and adhesive',
    formula: whole ? 'Q + g · f' : 'Q',
  };
}

export const costColumns: ColumnWorkings<CostLine> = {
  Style: ({ run }, context) => ({
    given: [cell(context, 'styles', run.style.row, 'code')],
    what: 'The style, as in Styles',
  }),
  Last: ({ run }, context) => ({
    given: [cell(context, 'styles', run.style.row, 'last')],
    what: 'Its last, as in Styles',
  }),
  'Pairs number': ({ run }, context) => ({
    given: pairsOf(context, run.style.code),
    what: 'Sum of its pairs in Pairage',
  }),
  'Stock ¤ a pair': ({ run, stockCut }, context) => {
    const shares = stockShares(run, context.plan.possible.orders);
    const { money: cut } = stockCut;
    const steps = [
      ...shares.map(({ stock, share, money }, i) =>
        step(
          `m${below(i + 1)}`,
          `${stock.code}: all its sheets’ price, of which the style has ${(100 * share).toFixed(1)} % by net area`,
          undefined,
          money,
        ),
      ),
      ...(cut > 0 ? [before('k', 'What the stock of pairs that are cut cost, under Stock cut in Pairage', cut)] : []),
    ];
    return {
      given: [
        given('P', 'Pairs of the style', run.pairs),
        ...shares.map(({ stock }) => cell(context, 'stock', stock.row, 'price')),
      ],
      steps,
      symbol: 'S',
      what: 'Stock of a pair',
      formula: steps.length > 0 ? `(${steps.map(({ symbol }) => symbol).join(' + ')}) / P` : undefined,
      source: 'sheets needed are shared by net area; sheets without a price count nothing',
    };
  },
  'Adhesive ml a pair': (line, context) => {
    const { given: from, ...rest } = averaged(line, context, 'ml', ({ adhesive }) => adhesive);
    return {
      given: [...from, ...rows(line, context, 'm² a litre', 'coats')],
      ...rest,
      symbol: 'V',
      what: 'Adhesive of a pair, on the average of the sizes',
      source: 'every face that its ticket coats × coats / coverage (common practice)',
    };
  },
  'Paste ml a pair': (line, context) => {
    const rates = ratesOf(context.plan.input.rates);
    const { given: from, ...rest } = averaged(line, context, 'ml', ({ pasted }) => pasteOf(rates, pasted));
    const coverage = rates.row('m² a litre', [PASTE]);
    return {
      // What holds for all adhesive does not stand in.
      given: [...from, ...rate(coverage?.scope === undefined ? undefined : coverage)],
      ...rest,
      symbol: 'W',
      what: 'Paste of its nailed lifts, on the average of the sizes',
      source: 'one coat on each face, apart from the adhesive (common practice)',
    };
  },
  'Adhesive, paste ¤ a pair': ({ run, adhesive = 0, paste = 0 }, { plan }) =>
    adhesivePrice(ratesOf(plan.input.rates), run.style.code, adhesive, paste),
  'Sundries ¤ a pair': (line, context) => {
    const items = ratesOf(context.plan.input.rates).items('money a pair', [line.run.style.code]);
    return {
      given: items.flatMap((item, i) => rate(item, `u${below(i + 1)}`)),
      symbol: 'U',
      what: 'What is counted by the pair, added up',
      formula: items.length > 0 ? items.map((_, i) => `u${below(i + 1)}`).join(' + ') : undefined,
    };
  },
  'Work min a pair': (line, context) => {
    const { given: from, ...rest } = averaged(line, context, 'min', ({ minutes }) => minutes);
    return {
      given: [
        ...from,
        ...rows(line, context, 'minutes a piece', 'minutes a skive', 'minutes a joint', 'minutes a pair'),
      ],
      ...rest,
      steps: [...byKind(line, context), ...rest.steps],
      symbol: 'T',
      what: 'Minutes of a pair, on the average of the sizes: the steps of its ticket, and what is counted by the pair for no kind of step',
    };
  },
  'Work ¤ a pair': byRate({
    unit: 'money an hour',
    symbolOfRate: 'r',
    steps: ({ minutes }) => [before('T', 'Minutes of a pair', minutes, 'min')],
    symbol: 'w',
    what: 'What they cost',
    without: 'No rate of work is given',
    formula: 'T / 60 · r',
  }),
  'Spoilage ¤ a pair': (line, context) => {
    const own = spoiledBySheet(line, context);
    return own.length > 0 ? spoilageBySheet(line, context, own) : spoilage(line, context);
  },
  'Weight g a pair': (line, context) => {
    const { run } = line;
    const density = new Map(context.plan.input.stock.map((stock) => [fold(stock.code), stock]));
    const codes = [...new Set(run.sizes.flatMap(({ bottom }) => bottom.layers.map(({ stock }) => fold(stock))))];
    return {
      given: [
        given(undefined, 'Pairs of the style', run.pairs),
        ...codes.flatMap((code) => {
          const stock = density.get(code);
          return stock
            ? [{ ...cell(context, 'stock', stock.row, 'density'), meaning: `Density of ${stock.code}` }]
            : [];
        }),
      ],
      what: 'Volume of each piece × its density, two feet, on the average of the sizes',
      source: 'derived: area × thickness, less the skived wedge',
    };
  },
  'Cost ¤ a pair': ({ stock, adhesiveCost, sundries, work: labour, spoilage }) => ({
    steps: [
      before('S', 'Stock', stock),
      before('g', 'Adhesive', adhesiveCost),
      before('U', 'Sundries', sundries),
      before('w', 'Work', labour),
      before('q', 'Spoilage', spoilage),
    ],
    symbol: 'C',
    what: 'Cost of a pair',
    formula: 'S + g + U + w + q',
  }),
  'The run ¤': ({ pair, run }, context) => ({
    given: pairsOf(context, run.style.code),
    steps: [before('C', 'Cost of a pair', pair), before('P', 'Pairs of the style', run.pairs)],
    symbol: 'R',
    what: 'Cost of the run',
    formula: 'C · P',
  }),
  'Adhesive l, the run': ({ adhesive, run }, context) => litresOfRun('Adhesive', 'V', adhesive, run, context),
  'Paste l, the run': ({ paste, run }, context) => litresOfRun('Paste', 'W', paste, run, context),
  'Work h left, the run': ({ minutes, run }, context) => ({
    given: pairsOf(context, run.style.code),
    steps: [
      before('T', 'Minutes of a pair', minutes, 'min'),
      before('P', 'Pairs of the style', run.pairs),
      ...(run.toCut < run.pairs
        ? [
            before(
              'K',
              'Cutting out of the pairs that are cut',
              cuttingDone(run, workOf(run, context.plan.input)),
              'min',
            ),
          ]
        : []),
    ],
    symbol: 'H',
    what: 'Hours that the run still takes',
    formula: run.toCut < run.pairs ? '(T · P − K) / 60' : 'T · P / 60',
  }),
  'Bought ¤ a pair': (line, context) => {
    const { style, sizes, pairs } = line.run;
    const choice = makeOrBuy(line);
    const styles = (name: string, symbol: string, value: number) =>
      cell(context, 'styles', style.row, name, symbol, value);
    return {
      given: [
        styles('boughtPrice', 'b', style.boughtPrice ?? 0),
        styles('boughtTooling', 't', style.boughtTooling),
        styles('boughtMinimum', 'k', style.boughtMinimum),
        styles('boughtSizeMinimum', 'q', style.boughtSizeMinimum),
        cell(context, 'styles', style.row, 'boughtFitting'),
        given('n', 'Sizes', sizes.length),
        given('P', 'Pairs of the style', pairs),
      ],
      steps: [
        step('Q', 'Pairs, of each size no fewer than q', undefined, choice?.bySize ?? pairs),
        step('c', 'Cost of a built pair, to compare', undefined, choice?.make ?? line.pair),
        step('m', 'Minutes to glue and fit it, to see', undefined, line.fitting?.minutes ?? 0, 'min'),
        step('f', 'What that costs, with its adhesive', undefined, line.fitting?.cost ?? 0),
        step('U', 'Sundries, the same as of a built pair', undefined, line.sundries),
      ],
      symbol: 'B',
      what: 'A bought pair, glued and fitted, with its share of tooling and of pairs that are left over',
      formula: '(t · n + b · max(Q, k)) / P + f + U',
      source: 'common practice: a bought unit fits one last in one size',
    };
  },
};

/** What a pair takes of a liquid, ml, over the pairs of the run. */
function litresOfRun(
  liquid: string,
  symbol: string,
  ml: number | undefined,
  run: CostLine['run'],
  context: Context,
): ColumnWorking {
  return {
    given: pairsOf(context, run.style.code),
    steps: [before(symbol, `${liquid} of a pair`, ml ?? 0, 'ml'), before('P', 'Pairs of the style', run.pairs)],
    symbol: 'L',
    what: `${liquid} of the run, litres`,
    formula: `${symbol} · P / 1000`,
  };
}
