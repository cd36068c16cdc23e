import { start } from './start';

/** Entry of taskpane.js. */
void start();
