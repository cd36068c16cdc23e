/**
 * The calculation as a library, for programs of one's own: `import { plan } from 'solebench'`. It runs in Node and in
 * browsers alike and asks for nothing outside itself.
 */
export { type Cell, plan, type PlannedTables, type PlanTables, type TableRows } from './plan';
export { layerMix, type LayerMix, type Offer } from '../core/bottom/layer-mix';
export { lapSkive, skiveAngle, skiveWidth } from '../core/bottom/skive';
export { type Place, Problem } from '../core/problem';
