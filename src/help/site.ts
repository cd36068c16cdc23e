import { framed } from './frame';
import { functionPage } from './function-page';
import { guide } from './guide';
import { list } from './list';
import type { Description } from './metadata';
import { workedByHand } from './worked-by-hand';

/**
 * All pages of the help by their file names.
 * @param description of the functions, as functions.json has it
 * @param office the guide to the office suite, in Markdown
 */
export function helpSite(description: Description, office: string): ReadonlyMap<string, string> {
  const pages = [
    list(description),
    guide(office),
    workedByHand(),
    ...description.functions.map((one) => functionPage(one, description)),
  ];
  return new Map(pages.map((page) => [page.file, framed(page)]));
}
