import { readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import asc from 'assemblyscript/asc';
import { format, resolveConfig } from 'prettier';

/**
 * Compiles the kernel of the search to WebAssembly and writes it down as text that any bundle takes in:
 * `npm run kernel`. The kernel is ordinary TypeScript; only how it reads and writes memory is put in here.
 */

const FOLDER = 'src/core/cutting/search/kernel';
const TO = 'src/workers/kernel-code.ts';

/** Instead of `memory.ts`: the compiler's own instructions, and what is called from outside. */
const MEMORY = `
export function real(at: i32): f64 { return load<f64>(at); }
export function setReal(at: i32, value: f64): void { store<f64>(at, value); }
export function word(at: i32): i32 { return load<i32>(at); }
export function setWord(at: i32, value: i32): void { store<i32>(at, value); }
export function half(at: i32): i32 { return <i32>load<u16>(at); }
export function setHalf(at: i32, value: i32): void { store<u16>(at, <u16>value); }
export function whole(value: f64): i32 { return <i32>value; }
export function unsigned(value: i32): f64 { return <f64><u32>value; }
@external("calls", "prepare") export declare function prepare(first: i32, second: i32): i32;
@external("calls", "exits") export declare function exits(pair: i32): i32;
`;

const ENTRY = `export { findPlace, weigh } from './find-place';\nexport { loss } from './pair-loss';\nexport { pushApart } from './push-apart';\n`;

/** The kernel's WebAssembly. */
export async function compiledKernel() {
  let code;
  const read = (name) => {
    if (!name.startsWith(`${FOLDER}/`)) return null;
    if (name === `${FOLDER}/entry.ts`) return ENTRY;
    if (name === `${FOLDER}/memory.ts`) return MEMORY;
    try {
      return readFileSync(name, 'utf8');
    } catch {
      return null;
    }
  };
  const { error, stderr } = await asc.main(
    [
      `${FOLDER}/entry.ts`,
      '--outFile',
      'kernel.wasm',
      '-O3',
      '--converge',
      '--noAssert',
      '--runtime',
      'stub',
      '--importMemory',
    ],
    {
      readFile: read,
      writeFile: (name, contents) => {
        if (name === 'kernel.wasm') code = contents;
      },
      listFiles: () => [],
    },
  );
  if (error || !code) throw new Error(`The kernel does not compile: ${error?.message}\n${stderr.toString()}`);
  return code;
}

/** The file that holds it. */
export async function kernelFile() {
  const text = Buffer.from(await compiledKernel()).toString('base64');
  const source = `/** The kernel of the search in WebAssembly, written by \`npm run kernel\` from src/core/cutting/search/kernel. */\nexport const KERNEL =\n  '${text}';\n`;
  return format(source, { ...(await resolveConfig(TO)), parser: 'typescript' });
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) writeFileSync(TO, await kernelFile());
