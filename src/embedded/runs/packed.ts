import type { IWorkbookData } from '@univerjs/core';
import { snapshotVersion } from '../../host/grid/snapshot';
import { withoutSpilled } from '../../host/grid/spilled-resource';

/** First bytes of what is packed (RFC 1952). */
const GZIP = [0x1f, 0x8b] as const;

/** A workbook in few bytes, without what its tables spill; unpacked, it is worked out again. */
export async function packed(workbook: IWorkbookData): Promise<Uint8Array> {
  const json = new Blob([JSON.stringify({ version: snapshotVersion, workbook: withoutSpilled(workbook) })]);
  // Browsers from before 2023 do not pack.
  if (!('CompressionStream' in globalThis)) return bytesOf(json);
  return bytesOf(new Response(json.stream().pipeThrough(new CompressionStream('gzip'))));
}

/** What was packed, as a run's content is kept. @throws Error where it is not whole */
export async function unpacked(bytes: Uint8Array): Promise<unknown> {
  const blob = new Blob([bytes as BlobPart]);
  const isPacked = GZIP.every((byte, at) => bytes[at] === byte);
  const json = isPacked ? new Response(blob.stream().pipeThrough(new DecompressionStream('gzip'))) : blob;
  return JSON.parse(await json.text()) as unknown;
}

async function bytesOf(from: Blob | Response): Promise<Uint8Array> {
  return new Uint8Array(await from.arrayBuffer());
}
