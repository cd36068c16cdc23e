/** A start tag with its attributes, however their values are quoted. */
const startTag = /<[a-z][^\s/>]*(?:\s+[^\s=>"']+(?:\s*=\s*(?:"[^"]*"|'[^']*'|[^\s>"']+))?)*\s*\/?>/gi;
const styleAttribute = /\s+style\s*=\s*(?:"[^"]*"|'[^']*'|[^\s>"']+)/gi;
const styleBlock = /<style\b[^>]*>[\s\S]*?<\/style\s*>/gi;

/**
 * HTML from another program without its styles: the page's content security policy would keep them out and complain of
 * each. What is copied keeps its values and arrives in the look of the cells that it is pasted into.
 */
export function unstyledHtml(html: string): string {
  return html.replace(styleBlock, '').replace(startTag, (tag) => tag.replace(styleAttribute, ''));
}
