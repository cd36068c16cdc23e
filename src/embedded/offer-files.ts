import type { Injector } from '@univerjs/core';
import { whatWentWrong } from '../core/what-went-wrong';
import type { GridHost } from '../host/grid/grid-host';
import { wholeWorkbook } from '../host/grid/whole-workbook';
import { showNotice } from './notices';
import { readBesidePage } from './read-beside-page';
import type { ReadFile } from './read-file';
import type { RunsHere } from './runs/runs-here';
import { saveAsFile } from './save-as-file';

/** What a workbook file is to browsers. */
const KIND = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
/** Larger files are refused before they are read. */
const LARGEST = 64 * 2 ** 20;

/** The buttons, and the field that lets the maker choose a file. */
export interface FileControls {
  readonly open: HTMLElement;
  readonly save: HTMLElement;
  readonly saveValues: HTMLElement;
  readonly choose: HTMLInputElement;
}

const load = () => import(/* webpackChunkName: "files" */ './workbook-file');

/** What the rest of the page may do with files. */
export interface Files {
  /** Hands the maker the workbook as a file. */
  save(): void;
  /** Lets the maker choose a file to open. */
  choose(): void;
}

/** Lets the maker open workbook files and save the workbook as one. What that takes loads when it is first asked for. */
export function offerFiles(injector: Injector, host: GridHost, runs: RunsHere, controls: FileControls): Files {
  const failed = (error: unknown) => {
    showNotice(`That did not work: ${whatWentWrong(error)}`);
  };
  const save = async (only: boolean) => {
    const { fileOf } = await load();
    const name = `${fileName(host.workbookName)}${only ? ' values' : ''}.xlsx`;
    saveAsFile(name, fileOf(wholeWorkbook(injector), only), KIND);
  };
  const open = async (file: File) => {
    if (file.size > LARGEST) throw new Error(`${file.name} is too large to be a workbook.`);
    if (/\.(csv|tsv|txt)$/i.test(file.name)) return openRows(host, file, failed);
    const putAway = showNotice(`Reading ${file.name}.`);
    let read: ReadFile;
    try {
      const bytes = new Uint8Array(await file.arrayBuffer());
      const name = file.name.replace(/\.xls[xm]$/i, '');
      read = await readBesidePage({ bytes, name, visit: runs.kept?.store.visit });
    } catch (error) {
      showNotice(`${file.name} cannot be read: ${whatWentWrong(error)}.`);
      return;
    } finally {
      putAway();
    }
    const said = [`${file.name} is open, as a run of its own.`, ...read.remarks].join(' ');
    if ('workbook' in read.kept) await runs.inPlace(read.kept.workbook, read.kept.why, read.remarks.join(' '));
    else await runs.goToNew(read.kept, said);
  };
  const saveWhole = () => void save(false).catch(failed);
  const choose = () => controls.choose.click();
  controls.save.addEventListener('click', saveWhole);
  controls.saveValues.addEventListener('click', () => void save(true).catch(failed));
  controls.open.addEventListener('click', choose);
  controls.choose.addEventListener('change', () => {
    const file = controls.choose.files?.[0];
    // The same file may be chosen again.
    controls.choose.value = '';
    if (file) open(file).catch(failed);
  });
  takeDropped((file) => void open(file).catch(failed));
  return { save: saveWhole, choose };
}

/** Reads rows of another program, and asks before they take the place of a table's. */
async function openRows(host: GridHost, file: File, failed: (error: unknown) => void): Promise<void> {
  const [{ readRows }, content] = await Promise.all([load(), file.arrayBuffer()]);
  try {
    const { table, rows, remarks } = await readRows(new Uint8Array(content), host);
    const put = () => {
      host.writeTable(table, rows).catch(failed);
    };
    const question = `${file.name} has ${rows.length} ${rows.length === 1 ? 'row' : 'rows'} for ${table}. They take the place of its rows; undo brings those back.`;
    showNotice([question, ...remarks].join(' '), [{ name: 'Put them in', run: put }]);
  } catch (error) {
    showNotice(`${file.name} cannot be read: ${whatWentWrong(error)}.`);
  }
}

/** A file that is dropped anywhere on the page. Text that is dragged within it goes its own way. */
function takeDropped(take: (file: File) => void): void {
  const hasFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  const stop = (event: DragEvent) => {
    if (!hasFile(event)) return false;
    event.preventDefault();
    event.stopPropagation();
    return true;
  };
  addEventListener('dragover', stop, true);
  addEventListener(
    'drop',
    (event) => {
      const file = stop(event) ? event.dataTransfer?.files[0] : undefined;
      if (file) take(file);
    },
    true,
  );
}

/** A workbook's name without what names of files may not hold. */
function fileName(name: string): string {
  return name.replace(/[\x00-\x1F<>:"/\\|?*]+/g, ' ').trim() || 'Workbook';
}
