import { start } from '../../../src/embedded/start';
import { plan } from './plan';

/** Takes the place of page.js: the same page on a workbook for tests, its parts in a test's reach. */
start(plan).then((page) => Object.assign(window, { workbench: page }), reportError);
