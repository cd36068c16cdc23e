/**
 * Evaluates a working's formula with school arithmetic: + − · / ( ) ⌈ ⌉ ⌊ ⌋ ², max, min, tan, atan, cos, sin in degrees, π.
 * An evaluator of its own, so that a formula that is shown can be held against what core computes.
 */
export function evaluate(formula: string, values: ReadonlyMap<string, number>): number {
  const tokens = formula.match(/\d+(?:\.\d+)?|[A-Za-z]{2,}|[A-Za-zα-ω][₀-₉ₐ-ₜ]*|[+−·/()⌈⌉⌊⌋²,π]/gu) ?? [];
  if (tokens.join('') !== formula.replace(/\s/g, ''))
    throw new Error(`The formula ${formula} has signs that are not known.`);
  let at = 0;
  const take = (wanted?: string) => {
    const token = tokens[at++];
    if (wanted !== undefined && token !== wanted) throw new Error(`The formula ${formula} lacks ${wanted}.`);
    return token;
  };
  const sum = (): number => {
    let value = product();
    for (;;) {
      if (tokens[at] === '+') value += (take(), product());
      else if (tokens[at] === '−') value -= (take(), product());
      else return value;
    }
  };
  const product = (): number => {
    let value = power();
    for (;;) {
      if (tokens[at] === '·') value *= (take(), power());
      else if (tokens[at] === '/') value /= (take(), power());
      else return value;
    }
  };
  const power = (): number => {
    const value = atom();
    if (tokens[at] !== '²') return value;
    take();
    return value ** 2;
  };
  const list = (): number[] => {
    take('(');
    const all = [sum()];
    while (tokens[at] === ',') all.push((take(), sum()));
    take(')');
    return all;
  };
  const degree = Math.PI / 180;
  const functions: Readonly<Record<string, (...values: number[]) => number>> = {
    max: Math.max,
    min: Math.min,
    tan: (x) => Math.tan(x * degree),
    cos: (x) => Math.cos(x * degree),
    sin: (x) => Math.sin(x * degree),
    atan: (x) => Math.atan(x) / degree,
  };
  const atom = (): number => {
    const token = take() ?? '';
    if (/^\d/.test(token)) return Number(token);
    if (token === 'π') return Math.PI;
    if (token === '−') return -atom();
    if (token === '(') {
      const value = sum();
      take(')');
      return value;
    }
    if (token === '⌈' || token === '⌊') {
      const value = sum();
      take(token === '⌈' ? '⌉' : '⌋');
      // What is whole on paper may come out a hair beside it in binary.
      return token === '⌈' ? Math.ceil(value - 1e-9) : Math.floor(value + 1e-9);
    }
    const apply = functions[token];
    if (apply) return apply(...list());
    const value = values.get(token);
    if (value === undefined) throw new Error(`The formula ${formula} names ${token}, which nothing gives.`);
    return value;
  };
  const value = sum();
  if (at < tokens.length) throw new Error(`The formula ${formula} does not end where it should.`);
  return value;
}
