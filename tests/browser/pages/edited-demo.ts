import { start } from '../../../src/embedded/start';
import { demo } from '../../../src/workbook/demo';
import { type Edit, withEdit } from './edit';

/** Takes the place of page.js: the page freshly opened on a demo in which some cells hold something else. */
const { edits } = globalThis as unknown as { readonly edits: readonly Edit[] };
start(edits.reduce(withEdit, demo)).then((page) => Object.assign(window, { workbench: page }), reportError);
