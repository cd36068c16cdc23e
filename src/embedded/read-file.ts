import type { IWorkbookData } from '@univerjs/core';
import { whatWentWrong } from '../core/what-went-wrong';
import { openWorkbook } from '../exchange/open-workbook';
import { gridOfBook } from '../host/grid/grid-of-book';
import { keptInWords } from '../host/grid/kept-values';
import { mergedInWords } from '../host/grid/merged-in-tables';
import { runName } from '../host/grid/as-entered';
import { beside } from './runs/names';
import type { Run } from './runs/run';
import { RunStore } from './runs/run-store';

/** A file that is to be read. */
export interface FileToRead {
  readonly bytes: Uint8Array;
  readonly name: string;
  /** The visit that keeps it as a run; undefined where the browser keeps nothing. */
  readonly visit: string | undefined;
}

/** A file that was read: kept as a run of its own, else as the grid opens it. */
export interface ReadFile {
  /** What of it is not in the page, or was brought up to date. */
  readonly remarks: readonly string[];
  readonly kept: Run | { readonly workbook: IWorkbookData; readonly why: string };
}

export type ReadAnswer = ReadFile | { readonly refused: string };

/** Entry of read-file.js, a worker: reads a workbook file and keeps it as a run, so that the page goes on meanwhile. */
addEventListener('message', ({ data }: MessageEvent<FileToRead>) => {
  read(data)
    .catch((error: unknown): ReadAnswer => ({ refused: whatWentWrong(error) }))
    .then((answer) => postMessage(answer))
    .catch(reportError);
});

async function read({ bytes, name, visit }: FileToRead): Promise<ReadAnswer> {
  const { book, left, changed } = openWorkbook(bytes);
  const workbook = gridOfBook(book, name, 'workbook');
  const remarks = [
    ...changed,
    ...mergedInWords(book),
    ...[...left, ...keptInWords(book)].map((what) => `Not in the page: ${what}.`),
  ];
  if (visit === undefined) return { remarks, kept: { workbook, why: 'This browser keeps no runs.' } };
  try {
    const store = await RunStore.open(undefined, visit);
    const taken = (await store.list()).runs.map((run) => run.name);
    const called = beside(workbook, name, taken);
    const why = `A run here is called “${runName(workbook)}” already: this one is called “${runName(called)}”, as its file is.`;
    return { remarks: called === workbook ? remarks : [why, ...remarks], kept: await store.make(called) };
  } catch (error) {
    return { remarks, kept: { workbook, why: `This browser could not keep another run (${whatWentWrong(error)}).` } };
  }
}
