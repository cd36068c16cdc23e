import { contentSecurityPolicy } from './content-security';

/** Where the office suite's own script comes from: nobody else may serve it. */
const officeScripts = 'https://appsforoffice.microsoft.com';

/**
 * What the pane's page may load: its own files, the office suite's script, and pictures. It says nothing of who may frame
 * it, because the suite on the web does so from addresses that its maker does not list.
 */
const officePolicy = [
  "default-src 'none'",
  `script-src 'self' ${officeScripts}`,
  "style-src 'self'",
  "img-src 'self' data: blob: https:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The list of functions, with a version in its name or without. */
export const LIST_OF_FUNCTIONS = /^functions(-[\d.]+)?\.json$/;

/** What the worker may load: the solver beside it, whose WebAssembly is compiled from its own file. */
const workerPolicy = ["default-src 'none'", "script-src 'self' 'wasm-unsafe-eval'", "connect-src 'self'"].join('; ');

function policyOf(name: string): string {
  if (name === 'search.js') return workerPolicy;
  return name === 'taskpane.html' ? officePolicy : contentSecurityPolicy;
}

/**
 * The headers that any server of the built files is to send. X-Frame-Options is never among them: the office suite on
 * the web shows the pane in a frame.
 * @param name of the file, without its folder
 */
export function responseHeaders(name: string): Readonly<Record<string, string>> {
  return {
    'Content-Security-Policy': policyOf(name),
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
    // The suite's own pages read the list of functions.
    ...(LIST_OF_FUNCTIONS.test(name) && { 'Access-Control-Allow-Origin': '*' }),
    // The suite keeps icons itself, and shows none that forbid it.
    ...(!name.endsWith('.png') && { 'Cache-Control': 'no-cache' }),
  };
}
