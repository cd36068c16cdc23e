import type { FilesOut } from '../taskpane/files-out';

/**
 * How files get out of the suite's pane. On the Mac nothing that a pane hands over is saved, by its maker's design; elsewhere
 * it depends on the version, and nobody tells whether it was.
 */
export function filesOut(platform: Office.PlatformType | null): FilesOut {
  const page = new URL('index.html', location.href).href;
  return {
    saves: platform === Office.PlatformType.Mac ? 'never' : 'perhaps',
    openPage: () => {
      if (Office.context.requirements.isSetSupported('OpenBrowserWindowApi', '1.1')) {
        Office.context.ui.openBrowserWindow(page);
      } else {
        open(page, '_blank', 'noopener');
      }
    },
  };
}
