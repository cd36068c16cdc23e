import { start } from '../../../src/embedded/start';
import { blank } from '../../../src/workbook/blank';

/** Takes the place of page.js: the same page on blank tables, its parts in a test's reach. */
start(blank).then((page) => Object.assign(window, { workbench: page }), reportError);
