import { whatWentWrong } from '../core/what-went-wrong';
import { say, start } from './start';

/** Entry of taskpane.js. */
start().catch((error: unknown) => say(`The pane could not start: ${whatWentWrong(error)}`));
