import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core';
import type { GridHost } from '../host/grid/grid-host';

/** Marks each sheet's tab with the square that says whose it is, and puts it into their row: the maker's to fill in above, worked out below. */
export function markTabs(injector: Injector, host: GridHost): void {
  const style = new CSSStyleSheet();
  document.adoptedStyleSheets.push(style);
  const workbooks = injector.get(IUniverInstanceService);
  let marked = '';
  const mark = () => {
    const workbook = workbooks.getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    const rules = (workbook?.getSheets() ?? []).map((sheet) => {
      const kind: unknown = sheet.getConfig().custom?.['kind'];
      if (kind !== 'inputs' && kind !== 'results') return '';
      const tab = `[data-u-comp='slide-tab-item'][data-id='${CSS.escape(sheet.getSheetId())}']`;
      const results = kind === 'results';
      return `${tab} { --mark: ${results ? 'var(--line)' : 'var(--paper)'}; --mark-size: 9px; grid-row: ${results ? 2 : 1}; }`;
    });
    const text = rules.join('\n');
    if (text === marked) return;
    marked = text;
    style.replaceSync(text);
  };
  mark();
  host.onContent(mark);
}
