import type { Answer, Task } from '../core/cutting/search/perform';
import { Problem } from '../core/problem';
import { shared } from '../core/shared';
import type { Work } from './crew';

/** What the search's file leaves in a page that has loaded it as a script. */
interface Left {
  perform?: Work<Task, Answer>;
}

/** Where the search's file and those that load it find each other in a page. */
export const leftInPage = (): Left => shared<Left>('search in the page', () => ({}));

/**
 * Works tasks through in the page itself, for where no worker starts: the search's file is loaded as a script of the page
 * when the first of them comes.
 * @param address of the search's file; undefined where the bundle does not know where it lies
 * @throws Problem where it cannot be loaded
 */
export function performInPage(address: string | undefined): Work<Task, Promise<Answer>> {
  return async (task, token, found) => {
    const left = leftInPage();
    if (!left.perform) {
      if (address === undefined || typeof document === 'undefined') throw unavailable(NO_WORKERS);
      await load(address);
    }
    if (!left.perform) throw unavailable(NOT_LOADED);
    return left.perform(task, token, found);
  };
}

const NO_WORKERS = 'this program has no workers to search with. Search in the pane, and put what it finds into Layouts';
const NOT_LOADED = 'its file does not load. Look whether the connection holds, and try again';

const unavailable = (why: string) => new Problem('unavailable', { argument: 'search' }, why);

/** Loads a script; comes back as well where that fails. */
function load(address: string): Promise<void> {
  return new Promise((resolve) => {
    const script = document.createElement('script');
    script.onload = script.onerror = () => resolve();
    script.src = address;
    document.head.append(script);
  });
}
