import { whatWentWrong } from '../core/what-went-wrong';
import { type OpenedBook, openWorkbook } from '../exchange/open-workbook';

/** What comes back for a file's bytes. */
export type ReadAnswer = { readonly opened: OpenedBook } | { readonly refused: string };

/** Entry of read-file.js, a worker: reads a workbook file, so that the page goes on meanwhile. */
addEventListener('message', ({ data }: MessageEvent<Uint8Array>) => {
  postMessage(answer(data));
});

function answer(bytes: Uint8Array): ReadAnswer {
  try {
    return { opened: openWorkbook(bytes) };
  } catch (error) {
    return { refused: whatWentWrong(error) };
  }
}
