import { describe, expect, it } from 'vitest';
import { unstyledHtml } from '../../src/embedded/unstyled-html';

describe('unstyledHtml', () => {
  it('takes style attributes out, however they are quoted, and nothing else', () => {
    expect(unstyledHtml('<td style="color:red" colspan=2>a</td>')).toBe('<td colspan=2>a</td>');
    expect(unstyledHtml("<td STYLE = 'a>b' class='x'>a</td>")).toBe("<td class='x'>a</td>");
    expect(unstyledHtml('<td bgcolor=red style=color:red>a</td>')).toBe('<td bgcolor=red>a</td>');
    expect(unstyledHtml('<td data-copy-id="x" data-style="kept">a</td>')).toBe(
      '<td data-copy-id="x" data-style="kept">a</td>',
    );
  });

  it('takes style blocks out', () => {
    expect(unstyledHtml('<style type="text/css">\ntd { color: red }\n</style><p>a</p>')).toBe('<p>a</p>');
  });

  it('leaves text alone that only looks like an attribute', () => {
    expect(unstyledHtml('<p>set style="none" here, 3 < 4</p>')).toBe('<p>set style="none" here, 3 < 4</p>');
  });
});
