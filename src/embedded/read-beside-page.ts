import type { OpenedBook } from '../exchange/open-workbook';
import type { ReadAnswer } from './read-file';

/**
 * Reads a workbook file in a worker, whose file lies beside the page's own.
 * @throws Error whose message says why it cannot be read
 */
export function readBesidePage(bytes: Uint8Array): Promise<OpenedBook> {
  return new Promise<OpenedBook>((resolve, reject) => {
    const worker = new Worker('read-file.js');
    worker.addEventListener('message', ({ data }: MessageEvent<ReadAnswer>) => {
      worker.terminate();
      if ('opened' in data) resolve(data.opened);
      else reject(new Error(data.refused));
    });
    worker.addEventListener('error', ({ message }) => {
      worker.terminate();
      reject(new Error(message || 'the part of the page that reads files did not load'));
    });
    worker.postMessage(bytes, [bytes.buffer]);
  });
}
