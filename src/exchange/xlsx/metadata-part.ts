import { element, part } from './xml-text';

const ARRAYS = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';

/**
 * The part that cells whose tables spill refer to with cm="1": without it the office suite takes such a formula for one that
 * fills a fixed range (the vendor's document MS-XLSX, 2.6.2).
 */
export const metadataPart: string = part(
  element(
    'metadata',
    { xmlns: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main', 'xmlns:xda': ARRAYS },
    element(
      'metadataTypes',
      { count: 1 },
      element('metadataType', {
        name: 'XLDAPR',
        minSupportedVersion: 120000,
        copy: true,
        pasteAll: true,
        pasteValues: true,
        merge: true,
        splitFirst: true,
        rowColShift: true,
        clearFormats: true,
        clearComments: true,
        assign: true,
        coerce: true,
        cellMeta: true,
      }),
    ) +
      element(
        'futureMetadata',
        { name: 'XLDAPR', count: 1 },
        '<bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
          element('xda:dynamicArrayProperties', { fDynamic: true, fCollapsed: false }) +
          '</ext></extLst></bk>',
      ) +
      element('cellMetadata', { count: 1 }, `<bk>${element('rc', { t: 1, v: 0 })}</bk>`),
  ),
);
