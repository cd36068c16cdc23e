import { standIn } from './custom-functions/stand-in';

/** Entry of runtime.js: loads before the functions bundle, which finds its host under this global name. */
Object.assign(globalThis, { CustomFunctions: standIn() });
