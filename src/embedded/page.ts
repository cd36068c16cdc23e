import { whatWentWrong } from '../core/what-went-wrong';
import { showNotice } from './notices';
import { start } from './start';

/** Entry of page.js. */
start().catch((error: unknown) => {
  // loading.js tells of it as long as its notice stands in the page.
  if (document.getElementById('loading')) reportError(error);
  else showNotice(`The page has a fault: ${whatWentWrong(error)}`);
});
