import type { IWorkbookData } from '@univerjs/core';
import { createStore, del, get, promisifyRequest, set, type UseStore } from 'idb-keyval';
import { snapshotVersion } from '../host/grid/snapshot';
import { withTodaysFormulas } from '../host/grid/todays-formulas';

/** What is kept in the browser between two visits. */
interface Saved {
  readonly version: number;
  readonly workbook: IWorkbookData;
}

/** What was found of the last visit. */
export type Found =
  | { readonly kind: 'none' }
  | { readonly kind: 'workbook'; readonly workbook: IWorkbookData }
  /** It cannot be opened and has been put aside. */
  | { readonly kind: 'damaged'; readonly kept: unknown }
  /** The browser keeps nothing, as in a private window. */
  | { readonly kind: 'unable' };

const key = 'workbook';
const aside = 'damaged workbook';
/** Workbooks that others took the place of. */
const before = 'replaced workbooks';
/** Stands while a saved workbook is being opened. If it still does at the next visit, opening it ended the page. */
const opening = 'opening';
/** Name under which a page that is being left puts its workbook in the storage that writes at once. */
const leaving = 'solebench leaving';

/** The maker's workbook as this browser keeps it between visits. */
export class SavedWorkbook {
  private readonly store: UseStore;

  constructor(database = 'solebench') {
    this.store = createStore(database, 'workbooks');
  }

  /** What the last visit left. A workbook that cannot be opened is put aside, so that it never stands in the way. */
  async find(): Promise<Found> {
    try {
      await this.takeIn();
      const saved = await get<unknown>(key, this.store);
      if (saved === undefined) return { kind: 'none' };
      const failedBefore = (await get<unknown>(opening, this.store)) !== undefined;
      const workbook = failedBefore ? undefined : workbookIn(saved);
      if (!workbook) {
        await this.putAside(saved);
        return { kind: 'damaged', kept: saved };
      }
      await set(opening, true, this.store);
      return { kind: 'workbook', workbook };
    } catch {
      return { kind: 'unable' };
    }
  }

  /** Says that what was found is open and works. */
  async opened(): Promise<void> {
    await del(opening, this.store);
  }

  async save(workbook: IWorkbookData): Promise<void> {
    const saved: Saved = { version: snapshotVersion, workbook };
    await this.store('readwrite', (store) => {
      store.put(saved, key);
      // Without waiting for an answer: the page may be on its way out.
      store.transaction.commit();
      return promisifyRequest(store.transaction);
    });
    localStorage.removeItem(leaving);
  }

  /**
   * Keeps the workbook of a page on its way out, before this returns: what the database is given then is sometimes lost.
   * A workbook too large for this storage has the database alone.
   */
  saveLeaving(workbook: IWorkbookData): void {
    const saved: Saved = { version: snapshotVersion, workbook };
    try {
      localStorage.setItem(leaving, JSON.stringify(saved));
    } catch {
      localStorage.removeItem(leaving);
    }
  }

  /** Workbooks that others took the place of, as far as they can be opened; none where the browser keeps nothing. */
  async replaced(): Promise<readonly IWorkbookData[]> {
    const all = await get<unknown>(before, this.store).catch(() => undefined);
    return Array.isArray(all) ? all.flatMap((one) => workbookIn(one) ?? []) : [];
  }

  /** Keeps these in their place; none is lost where that fails. */
  async keepReplaced(workbooks: readonly IWorkbookData[]): Promise<void> {
    await set(
      before,
      workbooks.map((workbook): Saved => ({ version: snapshotVersion, workbook })),
      this.store,
    );
  }

  /** Moves what the page before left on its way out to where workbooks are kept. */
  private async takeIn(): Promise<void> {
    const left = localStorage.getItem(leaving);
    if (left === null) return;
    await set(key, parsed(left), this.store);
    localStorage.removeItem(leaving);
  }

  /** Keeps what cannot be opened where nothing overwrites it but the next such one. */
  async putAside(saved: unknown): Promise<void> {
    await set(aside, saved, this.store);
    await del(key, this.store);
    await del(opening, this.store);
  }
}

/** A text that is not whole stays as it is, for {@link workbookIn} to refuse. */
function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return json;
  }
}

/**
 * The workbook in what was saved, its formulas with today's names of functions; undefined where its version or its shape
 * is not ours.
 */
export function workbookIn(saved: unknown): IWorkbookData | undefined {
  if (!isRecord(saved) || saved['version'] !== snapshotVersion) return undefined;
  const workbook = saved['workbook'];
  if (!isRecord(workbook) || typeof workbook['id'] !== 'string' || typeof workbook['name'] !== 'string')
    return undefined;
  const { sheets, sheetOrder, styles } = workbook;
  if (!isRecord(sheets) || !isRecord(styles) || !Array.isArray(sheetOrder) || sheetOrder.length === 0) return undefined;
  const whole = sheetOrder.every((id) => typeof id === 'string' && isSheet(sheets[id]));
  return whole ? withTodaysFormulas(workbook as unknown as IWorkbookData) : undefined;
}

function isSheet(sheet: unknown): boolean {
  if (!isRecord(sheet) || typeof sheet['name'] !== 'string' || !isRecord(sheet['cellData'])) return false;
  return Object.values(sheet['cellData']).every((row) => isRecord(row) && Object.values(row).every(isRecord));
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
