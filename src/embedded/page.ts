import { start } from './start';

/** Entry of page.js. */
void start();
