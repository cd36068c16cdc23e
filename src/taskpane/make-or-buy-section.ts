import { html, nothing, type TemplateResult } from 'lit';
import { makeOrBuyInWords } from '../tables/make-or-buy-in-words';
import { button } from './button';
import type { Watched } from './watched';

/**
 * Of each style of which finished units could be bought, whether it is cheaper built or bought.
 * @param toCost leads to what its bought pair comes to in the sheet Cost
 */
export function makeOrBuySection(
  { results, money }: Pick<Watched, 'results' | 'money'>,
  toCost: (style: string) => void,
): TemplateResult | typeof nothing {
  const { costs = [], checks = [] } = results ?? {};
  // Where some of what building costs is missing, there is no such check.
  const known = new Set(checks.flatMap(({ kind, subject }) => (kind === 'makeOrBuy' ? [subject] : [])));
  const told = costs.flatMap((line) => {
    const { code } = line.run.style;
    const sentence = makeOrBuyInWords(line, known.has(code), money);
    return sentence === undefined ? [] : [{ code, sentence }];
  });
  if (told.length === 0) return nothing;
  return html`<section class="section" aria-labelledby="make-or-buy">
    <header><h2 id="make-or-buy">Build or buy</h2></header>
    ${told.map(
      ({ code, sentence }) =>
        html`<p>
          ${sentence} ${button('Show in Cost', () => toCost(code), { kind: 'link', label: `Show in Cost, ${code}` })}
        </p>`,
    )}
    <p class="caption">
      Bought pairs count glued and fitted, with tooling and what is left over; they fit one last only.
    </p>
  </section>`;
}
