import type { FileToRead, ReadAnswer, ReadFile } from './read-file';

/**
 * Reads a workbook file in a worker, whose file lies beside the page's own.
 * @throws Error whose message says why it cannot be read
 */
export function readBesidePage(file: FileToRead): Promise<ReadFile> {
  return new Promise<ReadFile>((resolve, reject) => {
    const worker = new Worker('read-file.js');
    worker.addEventListener('message', ({ data }: MessageEvent<ReadAnswer>) => {
      worker.terminate();
      if ('refused' in data) reject(new Error(data.refused));
      else resolve(data);
    });
    worker.addEventListener('error', ({ message }) => {
      worker.terminate();
      reject(new Error(message || 'the part of the page that reads files did not load'));
    });
    worker.postMessage(file, [file.bytes.buffer]);
  });
}
