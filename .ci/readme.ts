import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/**
 * Writes the function table of README from functions.json, which is made from the docstrings. With --check it only says
 * whether README is up to date.
 */

interface Parameter {
  readonly name: string;
  readonly optional?: boolean;
}
interface Described {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly Parameter[];
}

const path = (relative: string) => fileURLToPath(new URL(relative, import.meta.url));
const START = '<!-- functions: written by .ci/readme.ts -->';
const END = '<!-- end of functions -->';

/** README with the function table put in anew. */
export function withFunctionTable(readme: string, functions: readonly Described[]): string {
  const [start, end] = [readme.indexOf(START), readme.indexOf(END)];
  if (start < 0 || end < start)
    throw new Error('README.md has lost the marks between which the function table stands.');
  const rows = [...functions]
    .sort((a, b) => a.name.localeCompare(b.name))
    .map(({ name, description, parameters }) => {
      const list = parameters.map((one) => (one.optional ? `[${one.name}]` : one.name)).join(', ');
      return `| \`${name}(${list})\` | ${description.replaceAll('|', '\\|')} |`;
    });
  const table = ['| function | what it answers |', '| --- | --- |', ...rows].join('\n');
  return `${readme.slice(0, start)}${START}\n${table}\n${readme.slice(end)}`;
}

function main(): void {
  const { functions } = JSON.parse(readFileSync(path('../dist/functions.json'), 'utf8')) as {
    functions: readonly Described[];
  };
  const file = path('../README.md');
  const readme = readFileSync(file, 'utf8');
  const written = withFunctionTable(readme, functions);
  if (!process.argv.includes('--check')) writeFileSync(file, written);
  else if (written !== readme) {
    console.error('The function table of README.md is out of date. Run "npm run readme".');
    process.exit(1);
  }
}

main();
