import { workedExample } from './example-in-html';
import { type Page, plain } from './frame';
import { type DescribedFunction, type Description, pageOf, signature } from './metadata';

/** The page of one function: what it answers, its arguments with the words that they take, how to write it. */
export function functionPage(one: DescribedFunction, { enums = [] }: Description): Page {
  const rows = one.parameters.map(({ name, description, optional, customEnumId }) => {
    const choices = enums.find(({ id }) => id === customEnumId)?.values ?? [];
    const words = choices.map(
      ({ stringValue, tooltip }) => `<li><code>${plain(stringValue)}</code> ${plain(tooltip ?? '')}</li>`,
    );
    return `<tr><th scope="row">${plain(name)}${optional ? '<br><span class="note">may be left out</span>' : ''}</th>
<td>${plain(description)}${words.length > 0 ? `<ul>${words.join('')}</ul>` : ''}</td></tr>`;
  });
  const body = `<p class="lead">${plain(one.description)}</p>
<p><code>=SOLEBENCH.${plain(signature(one))}</code></p>
<p class="note">Where a comma is the decimal mark: <code>=SOLEBENCH.${plain(signature(one, '; '))}</code></p>
<h2 id="arguments">Arguments</h2>
<div class="wide"><table><thead><tr><th scope="col">Argument</th><th scope="col">What to give</th></tr></thead>
<tbody>${rows.join('\n')}</tbody></table></div>
${workedExample(one)}`;
  return { file: pageOf(one.name), title: one.name, body };
}
