import { start } from '../../../src/embedded/start';
import { demo } from '../../../src/workbook/demo';
import { type Edit, withEdit } from './edit';

/** Takes the place of page.js: the page freshly opened on a demo in which one cell holds something else. */
const { edit } = globalThis as unknown as { readonly edit: Edit };
start(withEdit(demo, edit)).then((page) => Object.assign(window, { workbench: page }), reportError);
