import { UNIT_SYSTEMS, type UnitSystem } from '../tables/figures';

/** Where the maker's choice is kept, in this browser. */
const KEPT = 'solebench-units';

/** The units that the maker chose before; metric where nothing was chosen or nothing is kept. */
export function keptUnits(): UnitSystem {
  try {
    const found = localStorage.getItem(KEPT);
    return UNIT_SYSTEMS.find((one) => one === found) ?? 'metric';
  } catch {
    return 'metric';
  }
}

/** Keeps the choice for the next visit; a browser that keeps nothing still has it until the pane is closed. */
export function keepUnits(system: UnitSystem): void {
  try {
    localStorage.setItem(KEPT, system);
  } catch {
    return;
  }
}
