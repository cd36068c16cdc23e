import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { CORPUS } from './workbooks';

/** Writes the files in `libreoffice` anew: npx tsx tests/exchange/xlsx/corpus/make-libreoffice.ts (needs soffice). */
const FROM: Readonly<Record<string, string>> = {
  looks: 'lettering, grounds, borders and formats, hucre',
  formulas: 'formulas, arrays and names, texts in the cells, SheetJS',
  rules: 'rules, conditional formats and names, hucre',
  sheets: 'widths, heights, panes, merged and hidden, hucre',
};

const folder = mkdtempSync(join(tmpdir(), 'solebench-corpus-'));
for (const [name, source] of Object.entries(FROM)) {
  const foreign = CORPUS.find((one) => one.name === source);
  if (!foreign) throw new Error(`There is no workbook "${source}".`);
  writeFileSync(join(folder, `${name}.xlsx`), await foreign.bytes());
}
const names = Object.keys(FROM).map((name) => join(folder, `${name}.xlsx`));
const out = 'tests/exchange/xlsx/corpus/libreoffice';
const words = ['--headless', `-env:UserInstallation=file://${folder}/profile`, '--convert-to', 'xlsx', '--outdir', out];
const { status } = spawnSync('soffice', [...words, ...names], { stdio: 'inherit' });
rmSync(folder, { recursive: true, force: true });
process.exitCode = status ?? 1;
