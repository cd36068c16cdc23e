import type { Batch } from '../../core/plan/batches';
import { figure, type ResultTable, words } from '../result';
import { GENERAL } from '../schema';

/** How often the lasts are used, and when each order is done. */
export const batchesTable: ResultTable<Batch> = {
  name: 'Batches',
  meaning: 'How often the lasts of each size are used, in the order of the days due, and when each order is done',
  columns: [
    words('Last', ({ last }) => last),
    figure('Size', ({ size }) => size, { format: GENERAL }),
    words('Style', ({ style }) => style),
    words('Customer', ({ customer }) => customer, { width: 130 }),
    figure('Due', ({ due }) => due, { format: 'd mmm yyyy', width: 84 }),
    figure('Pairs', ({ pairs }) => pairs, { unit: 'number', format: '0' }),
    figure('On hand', ({ onHand }) => onHand, { unit: 'pairs', format: '0' }),
    figure('From batch', ({ from }) => from, { format: '0' }),
    figure('To batch', ({ to }) => to, { format: '0' }),
    figure('Work', ({ minutes }) => (minutes === undefined ? undefined : minutes / 60), { unit: 'h', format: '0.0' }),
    figure('Bench', ({ benchDays }) => benchDays, { unit: 'days', format: '0.0' }),
    figure('Making', ({ makingDays }) => makingDays, { unit: 'days', format: '0.0' }),
    figure('Done', ({ days }) => days, { unit: 'days', format: '0.0' }),
    figure('Done', ({ done }) => done, { unit: 'on', format: 'd mmm yyyy', width: 84 }),
  ],
};
