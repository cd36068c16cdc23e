import { framed } from './frame';
import { functionPage } from './function-page';
import { guide, pageOfMarkdown } from './guide';
import { list } from './list';
import type { Description } from './metadata';
import { privacy } from './privacy';
import { tablesPage } from './tables';
import { volunteer } from './volunteer';
import { workedByHand } from './worked-by-hand';

/**
 * All pages of the help by their file names.
 * @param description of the functions, as functions.json has it
 * @param written what is written by hand, in Markdown: the guide to the office suite, and of runs and files
 */
export function helpSite(
  description: Description,
  written: { readonly office: string; readonly runs: string },
): ReadonlyMap<string, string> {
  const pages = [
    tablesPage(),
    list(description),
    guide(written.office),
    pageOfMarkdown('runs.html', written.runs),
    volunteer(),
    workedByHand(),
    privacy(),
    ...description.functions.map((one) => functionPage(one, description)),
  ];
  return new Map(pages.map((page) => [page.file, framed(page)]));
}
