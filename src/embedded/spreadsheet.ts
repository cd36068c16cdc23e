import {
  type Injector,
  type IWorkbookData,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  mergeLocales,
  type PluginCtor,
  ThemeService,
  Univer,
  UniverInstanceType,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { ICanvasColorService } from '@univerjs/engine-render';
import { UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import sheetsWords from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsDataValidationPreset } from '@univerjs/preset-sheets-data-validation';
import listWords from '@univerjs/preset-sheets-data-validation/locales/en-US';
import { CalculationMode } from '@univerjs/sheets-formula';
import { defaultTheme } from '@univerjs/themes';
import { IClipboardInterfaceService, UniverUIPlugin } from '@univerjs/ui';
import { beginCalculationsSoon } from '../host/grid/calculation-start';
import { colours } from '../host/grid/look';
import { daysAsPasted, daysAsTyped } from '../host/grid/days-as-typed';
import { noteDependenciesOnce } from '../host/grid/dependencies-once';
import { lookOfExamples } from '../host/grid/example-look';
import { emptyRestOfExamples } from '../host/grid/example-rest';
import { keepRoomForFilling } from '../host/grid/fill-room';
import { fillSums } from '../host/grid/fill-sums';
import { numbersAsTyped } from '../host/grid/numbers-as-typed';
import { pasteIntoTables } from '../host/grid/paste-into-tables';
import { keepRoomBelow } from '../host/grid/paste-room';
import { noteRowsAtOnce } from '../host/grid/row-index';
import { ruleRowsBelow, ruleRowsPasted } from '../host/grid/rows-below';
import { fitSpilledRows } from '../host/grid/spilled-heights';
import { keepSpilledValues } from '../host/grid/spilled-values';
import { WorkAhead } from '../host/grid/work-ahead';
import { lookAfterSpills } from '../host/grid/spilled-look';
import { ClipboardByEvent } from './clipboard';
import { prepareCellsOnce } from './cells-prepared-once';
import { tellDeletedAnswers } from './deleted-answers';
import { forgetTabsLeft } from './enter-after-tab';
import { showWithoutDelay } from './first-render';
import { gridWords } from './grid-words';
import { letListsFollow } from './list-references';
import { tellWhatListsTake } from './list-words';
import { PaletteColours, PalettePlugin } from './palette';
import { redrawWhatChanges } from './redraw-changes';
import { redrawInTasks } from './redraw-tasks';
import { showNotice } from './notices';
import { leaveBeforeRemoval, passOverRemovedSheets } from './removed-sheets';
import { revealInSight } from './reveal-in-sight';
import { readSelectionAnew } from './selection-read-anew';
import { widenSelectionOutline } from './selection-outline';
import { letShapesGo } from './shapes-let-go';
import { wordsWhileFollowing } from './words-while-following';

/** The grid with one workbook in it. */
export interface Spreadsheet {
  readonly injector: Injector;
  /** The grid's own programming interface. */
  readonly api: FUniver;
  /** Settles once the grid is on the page. */
  readonly shown: Promise<void>;
  /** What is done whenever something has changed, before it is worked out. */
  readonly ahead: WorkAhead;
  /** Takes over the page's colours after they changed. */
  recolour(dark: boolean): void;
}

/** The look's accent in place of the grid's blue, from light to dark. */
const accents = {
  50: '#EDF5F7',
  100: '#DCEDF0',
  200: '#BCDCE2',
  300: '#8FC3CD',
  400: '#4C97A6',
  500: '#1F7486',
  600: colours.accent,
  700: '#004A59',
  800: '#003C48',
  900: '#002E38',
};

/** The look's greys in place of the grid's, which takes the light ones by day and the dark ones by night. */
const greys = {
  50: '#F5F8F8',
  100: colours.tint,
  200: colours.desk,
  300: colours.line,
  400: colours.edge,
  500: colours.edge,
  600: '#364044',
  700: '#1F2629',
  800: colours.ink,
  900: colours.ink,
};

/**
 * Fills an element with the grid.
 * @param container the element's id
 * @param data the workbook that it begins with
 * @param failed is told where the grid could not do what it was to do later
 * @param withAll whether nothing is worked out until every formula is to be
 */
export function createSpreadsheet(
  container: string,
  data: IWorkbookData,
  failed: (error: unknown) => void,
  withAll: boolean,
): Spreadsheet {
  widenSelectionOutline();
  letListsFollow();
  keepRoomForFilling(showNotice);
  tellWhatListsTake();
  forgetTabsLeft();
  noteRowsAtOnce();
  redrawInTasks();
  letShapesGo();
  redrawWhatChanges();
  const words = gridWords(sheetsWords);
  const univer = new Univer({
    theme: { ...defaultTheme, primary: accents, gray: greys },
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(words, gridWords(listWords), wordsWhileFollowing(words)) },
    logLevel: LogLevel.WARN,
  });
  addPlugins(univer, container);
  const api = FUniver.newAPI(univer);
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, data);
  const injector = univer.__getInjector();
  showWithoutDelay(injector, data.id, failed);
  keepSpilledValues(injector);
  prepareCellsOnce(injector);
  const ahead = new WorkAhead();
  beginCalculationsSoon(injector, failed, withAll, ahead);
  noteDependenciesOnce(injector);
  lookAfterSpills(injector);
  fitSpilledRows(injector);
  lookOfExamples(injector);
  emptyRestOfExamples(injector);
  ruleRowsBelow(injector);
  fillSums(injector);
  daysAsTyped(injector);
  numbersAsTyped(injector);
  passOverRemovedSheets(injector);
  tellDeletedAnswers(injector, showNotice);
  leaveBeforeRemoval(injector);
  readSelectionAnew(injector);
  revealInSight(injector);
  const header = { headerStyle: { fontColor: colours.ink2, backgroundColor: colours.tint, borderColor: colours.line } };
  const shown = injector
    .get(LifecycleService)
    .onStage(LifecycleStages.Rendered)
    .then(() => {
      api.customizeColumnHeader(header);
      api.customizeRowHeader(header);
      daysAsPasted(injector);
      keepRoomBelow(injector, showNotice);
      pasteIntoTables(injector);
      ruleRowsPasted(injector);
    });
  return {
    injector,
    api,
    shown,
    ahead,
    recolour(dark) {
      const palette = injector.get(ICanvasColorService);
      if (palette instanceof PaletteColours) palette.read(document.body);
      injector.get(ThemeService).setDarkMode(dark);
    },
  };
}

/** The grid's own parts, with ours in the place of what copies and of what paints. */
function addPlugins(univer: Univer, container: string): void {
  const presets = [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      footer: { statisticBar: true, menus: false, zoomSlider: true },
      // The page begins the calculation itself, once the custom functions are there.
      formula: { initialFormulaComputing: CalculationMode.NO_CALCULATION },
      disableAutoFocus: true,
    }),
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false, showSearchOnDropdown: false }),
  ];
  for (const entry of presets.flatMap(({ plugins }) => plugins)) {
    const [plugin, config] = Array.isArray(entry) ? entry : [entry];
    const own = plugin === UniverUIPlugin && {
      override: [[IClipboardInterfaceService, { useClass: ClipboardByEvent }]],
    };
    univer.registerPlugin(plugin as PluginCtor, (own ? { ...config, ...own } : config) as never);
  }
  univer.registerPlugin(PalettePlugin as PluginCtor);
}
