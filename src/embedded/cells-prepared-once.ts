import { type ICellDataForSheetInterceptor, type Injector, type Nullable, Worksheet } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { type IViewportInfo, sheetHeaderViewportKeys, Spreadsheet, SpreadsheetSkeleton } from '@univerjs/engine-render';

type Cell = Nullable<ICellDataForSheetInterceptor>;

/** What the grid keeps to itself of getting cells ready to be drawn. */
interface Skeleton {
  readonly worksheet: Worksheet;
  updateVisibleRange(viewport?: IViewportInfo): boolean;
  setStylesCache(viewport?: IViewportInfo): unknown;
  _setStylesCacheForOneCell(row: number, column: number, options?: Options): void;
}

interface Options {
  readonly cacheItem?: { readonly bg: boolean; readonly border: boolean };
  readonly mergeRange?: unknown;
}

/** More columns than a sheet has. */
const COLUMNS = 2 ** 20;

/** Cells as they are to be shown, while a sheet is drawn: nothing changes meanwhile. */
let read: { readonly of: Worksheet; readonly cells: Map<number, Cell> } | undefined;
/** Cells that are ready, while they are being made so. */
let ready: Set<number> | undefined;
/** Whether what is asked for is not going to be drawn. */
let nothingDrawn = false;

/**
 * Has the grid get a cell ready once when it draws a sheet. By itself it makes out what a cell shows up to seven times each
 * time, and all cells as well where only the selection above them has moved, and once more for each strip of headings.
 * @throws Error where the grid draws otherwise than the version that this was written for
 */
export function prepareCellsOnce(injector: Pick<Injector, 'get'>): void {
  const sheets = Spreadsheet.prototype;
  const skeletons = SpreadsheetSkeleton.prototype as unknown as Skeleton;
  const { render } = sheets;
  const { setStylesCache, updateVisibleRange, _setStylesCacheForOneCell } = skeletons;
  if ([render, setStylesCache, updateVisibleRange, _setStylesCacheForOneCell].some((one) => typeof one !== 'function'))
    throw new Error('The grid draws otherwise than it did.');
  readOnce();
  sheets.render = function (context, viewport) {
    const worksheet = this.getSkeleton()?.worksheet;
    read = worksheet && { of: worksheet, cells: new Map() };
    nothingDrawn = isAsDrawn(this, viewport);
    try {
      return render.call(this, context, viewport);
    } finally {
      [read, nothingDrawn] = [undefined, false];
    }
  };
  skeletons.setStylesCache = function (viewport) {
    if (nothingDrawn) return this.updateVisibleRange(viewport) ? this : undefined;
    ready = new Set();
    try {
      return setStylesCache.call(this, viewport);
    } finally {
      ready = undefined;
    }
  };
  const formulas = injector.get(FormulaDataModel);
  skeletons._setStylesCacheForOneCell = function (row, column, options) {
    const at = row * COLUMNS + column;
    // What is asked for without ground and lines is lettering that reaches over from beside: it has come with them, or there is none.
    if (options?.cacheItem?.bg === false && (ready?.has(at) || isBlank(this.worksheet, row, column, formulas))) return;
    _setStylesCacheForOneCell.call(this, row, column, options);
    ready?.add(at);
  };
}

/** Makes out once what a cell is to show, as long as one sheet is drawn. */
function readOnce(): void {
  const { getCell } = Worksheet.prototype;
  Worksheet.prototype.getCell = function (row, column) {
    if (read?.of !== this) return getCell.call(this, row, column);
    const at = row * COLUMNS + column;
    let cell = read.cells.get(at);
    if (cell === undefined && !read.cells.has(at)) read.cells.set(at, (cell = getCell.call(this, row, column)));
    return cell;
  };
}

/** Whether a cell holds nothing and no table has spilled into it. */
function isBlank(worksheet: Worksheet, row: number, column: number, formulas: FormulaDataModel): boolean {
  if (worksheet.getCellRaw(row, column)) return false;
  const spilled = formulas.getArrayFormulaCellData()[worksheet.getUnitId()]?.[worksheet.getSheetId()];
  return !spilled?.[row]?.[column];
}

/** Whether all that a part of the sheet shows has been drawn already. Beside headings no cells are drawn. */
function isAsDrawn(sheet: Spreadsheet, viewport: IViewportInfo): boolean {
  if (sheetHeaderViewportKeys.includes(viewport.viewportKey as (typeof sheetHeaderViewportKeys)[number])) return true;
  if (!viewport.cacheCanvas || !sheet.visible) return false;
  const changed = viewport.isDirty || viewport.isForceDirty || sheet.isDirty() || sheet.isForceDirty();
  const { diffX, diffY, diffBounds, diffCacheBounds } = viewport;
  return !changed && diffX === 0 && diffY === 0 && diffBounds.length === 0 && diffCacheBounds.length === 0;
}
