import { readFileSync } from 'node:fs';
import { type Context, createContext, runInContext } from 'node:vm';

/** A parameter and a function as functions.json describes them. */
export interface Parameter {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly customEnumId?: string;
}
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly Parameter[];
  readonly helpUrl?: string;
  readonly result: { readonly type?: string; readonly dimensionality?: string };
  readonly options?: Readonly<Record<string, boolean>>;
}

/** What the built bundle answers with where it cannot compute: the host's error code and the sentence. */
export class CellError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

export interface Bundle {
  readonly metadata: readonly FunctionMetadata[];
  readonly associated: ReadonlyMap<string, (...args: unknown[]) => unknown>;
  /** Calls a function as a host does: omitted arguments are null, the invocation comes last. */
  call(name: string, ...args: unknown[]): unknown;
}

/**
 * Loads dist/functions.js as it ships, in a context that has nothing but a global CustomFunctions.
 * @param more globals that a host may have besides
 * @param host what a host may have in its CustomFunctions besides
 */
export function loadBundle(more: object = {}, host: object = {}): Bundle {
  return loadInto(createContext({ ...more }), undefined, host);
}

/**
 * A script that is handed what JavaScript itself has by name: in a context, Node looks each such name up anew wherever the
 * script has it, which takes most of the time of a long calculation.
 */
function withBuiltIns(text: string, context: Context): string {
  const global = runInContext('Object.getOwnPropertyNames(globalThis)', context) as readonly string[];
  const names = global.filter((name) => /^[A-Z]/.test(name) && name !== 'CustomFunctions');
  return `(function (${names.join()}) {${text}\n})(${names.map((name) => `globalThis.${name}`).join()});`;
}

/**
 * The same in a context that is there, where it may find other bundles.
 * @param text of the bundle, where it is not as it ships
 */
export function loadInto(
  context: Context,
  text = readFileSync('dist/functions.js', 'utf8'),
  host: object = {},
): Bundle {
  const associated = new Map<string, (...args: unknown[]) => unknown>();
  context.CustomFunctions = {
    ...host,
    associate: (id: string, fn: (...args: unknown[]) => unknown) => associated.set(id, fn),
    Error: CellError,
    ErrorCode: { invalidValue: '#VALUE!', notAvailable: '#N/A' },
  };
  runInContext(withBuiltIns(text, context), context);
  const { functions } = JSON.parse(readFileSync('dist/functions.json', 'utf8')) as { functions: FunctionMetadata[] };
  return {
    metadata: functions,
    associated,
    call(name, ...args) {
      const metadata = functions.find((one) => one.name === name);
      const fn = metadata && associated.get(metadata.id);
      if (!metadata || !fn) throw new Error(`The bundle has no function ${name}.`);
      const passed = metadata.parameters.map((_, i) => args[i] ?? null);
      const result = fn(...passed, { functionName: metadata.id });
      // Arrays of another context are not instances of this one's Array.
      return typeof result === 'object' ? (JSON.parse(JSON.stringify(result)) as unknown) : result;
    },
  };
}

/** What bundles keep in a context, by name: memories of what was made, and maps. */
interface Kept {
  readonly made?: number;
  forget?(): void;
  clear?(): void;
}

/** All that the bundles of a context keep between plans. */
export function keptIn(context: Context): ReadonlyMap<string, Kept> {
  const places = Object.getOwnPropertySymbols(context).filter((one) => String(one).includes('solebench keeps'));
  return new Map(places.flatMap((one) => [...(Reflect.get(context, one) as ReadonlyMap<string, Kept>)]));
}

/** Lets the bundles of a context work out anew whatever they are asked next, as those do that were just loaded. */
export function forgetAllIn(context: Context): void {
  for (const kept of keptIn(context).values()) {
    kept.forget?.();
    kept.clear?.();
  }
}
