import { Inflate } from 'fflate';
import type { Counter } from './limits';
import { Refusal } from './limits';

/** Where a part lies in the archive. */
interface Entry {
  readonly method: number;
  readonly packed: number;
  /** Where its own header begins. */
  readonly at: number;
}

const END = 0x06054b50;
const DIRECTORY = 0x02014b50;
const HEADER = 0x04034b50;
/** Bytes handed to the unpacking at a time, so that a bomb is met soon. */
const STEP = 16 * 1024;
/** Parts below this many bytes may be packed however well. */
const LARGE = 4 * 2 ** 20;

/**
 * The archive (ZIP, ISO/IEC 21320) that a workbook file is. Parts are unpacked one by one as they are asked for, and no
 * further than the limits. Names of parts are only ever compared, never used as paths.
 */
export class Container {
  private readonly entries: ReadonlyMap<string, Entry>;

  /** @throws Refusal where the bytes are no such archive, or a locked one */
  constructor(
    private readonly bytes: Uint8Array,
    readonly counter: Counter,
  ) {
    if (bytes.length > counter.limits.bytes) throw new Refusal('it is too large');
    // The compound file of an older program, or of a workbook with a password.
    if (bytes[0] === 0xd0 && bytes[1] === 0xcf) {
      throw new Refusal('it is of an older kind (.xls) or has a password; save it as .xlsx without one');
    }
    this.entries = directory(bytes, counter);
  }

  get names(): Iterable<string> {
    return this.entries.keys();
  }

  has(name: string): boolean {
    return this.entries.has(key(name));
  }

  /** Unpacks a part bit by bit. @throws Refusal where it is not there, is damaged, or the limits are passed */
  unpack(name: string, take: (bytes: Uint8Array) => void): void {
    const entry = this.entries.get(key(name));
    if (!entry) throw new Refusal(`its part ${shortened(name)} is missing`);
    const packed = this.packed(entry, name);
    let unpacked = 0;
    const count = (bytes: Uint8Array) => {
      this.counter.add('unpacked', 'bytes when unpacked', bytes.length);
      unpacked += bytes.length;
      if (unpacked > LARGE && unpacked > packed.length * this.counter.limits.packing) {
        throw new Refusal(`its part ${shortened(name)} unpacks to far more than it is`);
      }
      take(bytes);
    };
    if (entry.method === 0) return count(packed);
    if (entry.method !== 8) throw new Refusal('it is packed in a way that is not the standard’s');
    inflate(packed, name, count);
  }

  private packed({ at, packed }: Entry, name: string): Uint8Array {
    const view = viewOf(this.bytes);
    if (at + 30 > this.bytes.length || view.getUint32(at, true) !== HEADER) throw damaged(name);
    const from = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
    if (from + packed > this.bytes.length) throw damaged(name);
    return this.bytes.subarray(from, from + packed);
  }
}

function inflate(packed: Uint8Array, name: string, take: (bytes: Uint8Array) => void): void {
  const inflater = new Inflate((bytes) => take(bytes));
  for (let from = 0; from < packed.length || from === 0; from += STEP) {
    try {
      inflater.push(packed.subarray(from, from + STEP), from + STEP >= packed.length);
    } catch (error) {
      // What the taker throws is its own; what the packed bytes cause has a code.
      if (error instanceof Error && 'code' in error) throw damaged(name);
      throw error;
    }
  }
}

/** The archive's list of contents, which stands at its end. */
function directory(bytes: Uint8Array, counter: Counter): Map<string, Entry> {
  const view = viewOf(bytes);
  const end = endOf(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries = new Map<string, Entry>();
  const letters = new TextDecoder();
  for (let entry = 0; entry < count; entry++) {
    counter.add('parts', 'parts');
    if (at + 46 > bytes.length || view.getUint32(at, true) !== DIRECTORY) throw damaged('list of contents');
    const [nameLength, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true)) as [
      number,
      number,
      number,
    ];
    if (view.getUint16(at + 8, true) & 1) throw new Refusal('it has a password; save it without one');
    const name = letters.decode(bytes.subarray(at + 46, at + 46 + nameLength));
    // A part that is there twice is the first, whatever comes later.
    if (!entries.has(key(name))) {
      entries.set(key(name), {
        method: view.getUint16(at + 10, true),
        packed: view.getUint32(at + 20, true),
        at: view.getUint32(at + 42, true),
      });
    }
    at += 46 + nameLength + extra + comment;
  }
  return entries;
}

function endOf(view: DataView): number {
  const furthest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= furthest; at--) if (view.getUint32(at, true) === END) return at;
  throw new Refusal('it is not a workbook (.xlsx)');
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

/** Parts' names differ neither by capitals nor by a stroke at their beginning (ECMA-376 part 2). */
function key(name: string): string {
  return name.replaceAll('\\', '/').replace(/^\/+/, '').toLowerCase();
}

function damaged(name: string): Refusal {
  return new Refusal(`its part ${shortened(name)} is damaged`);
}

function shortened(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}…` : name;
}
