import { type Injector, IUniverInstanceService, UniverInstanceType, type Workbook } from '@univerjs/core';
import type { GridHost } from '../host/grid/grid-host';

/** Marks each sheet's tab with the square that says whose it is: the maker's to fill in, or worked out. */
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
      return `${tab} { --mark: ${kind === 'inputs' ? 'var(--paper)' : 'var(--line)'}; --mark-size: 10px; }`;
    });
    const text = rules.join('\n');
    if (text === marked) return;
    marked = text;
    style.replaceSync(text);
  };
  mark();
  host.onContent(mark);
}
