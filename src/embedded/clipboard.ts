import { BrowserClipboardService } from '@univerjs/ui';
import { unstyledHtml } from './unstyled-html';

/**
 * The clipboard, kept to the page's content security policy. Puts what is copied into it through the copy event. The newer way cleans the cells' look out of it, and
 * complains, because the page's content security policy allows no style attributes.
 */
export class ClipboardByEvent extends BrowserClipboardService {
  override async write(text: string, html: string, customData: Record<string, string> = {}): Promise<void> {
    let written = false;
    const copy = (event: ClipboardEvent) => {
      if (!event.clipboardData) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      for (const [type, data] of Object.entries({ 'text/plain': text, 'text/html': html, ...customData })) {
        event.clipboardData.setData(type, data);
      }
      written = true;
    };
    addEventListener('copy', copy, { capture: true, once: true });
    try {
      document.execCommand('copy');
    } finally {
      removeEventListener('copy', copy, { capture: true });
    }
    if (!written) await this.writeText(text);
  }

  override async read(): Promise<ClipboardItem[]> {
    const html = 'text/html';
    const items = await super.read();
    return Promise.all(
      items.map(async (item) => {
        if (!item.types.includes(html)) return item;
        const contents = await Promise.all(
          item.types.map(async (type): Promise<[string, Blob]> => {
            const blob = await item.getType(type);
            return [type, type === html ? new Blob([unstyledHtml(await blob.text())], { type }) : blob];
          }),
        );
        return new ClipboardItem(Object.fromEntries(contents));
      }),
    );
  }
}

/** Takes the styles out of what is pasted before the grid reads it. */
export function pasteUnstyled(): void {
  document.addEventListener(
    'paste',
    (event) => {
      const given = event.clipboardData;
      const html = given?.getData('text/html') ?? '';
      const cleaned = unstyledHtml(html);
      if (!given || !event.isTrusted || cleaned === html || isField(event.target)) return;
      const data = new DataTransfer();
      for (const type of given.types) {
        if (type !== 'Files') data.setData(type, type === 'text/html' ? cleaned : given.getData(type));
      }
      for (const file of given.files) data.items.add(file);
      event.preventDefault();
      event.stopImmediatePropagation();
      event.target?.dispatchEvent(
        new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true, composed: true }),
      );
    },
    true,
  );
}

/** A text field takes plain text and needs the event as it is. */
function isField(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}
