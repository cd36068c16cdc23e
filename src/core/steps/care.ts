import type { Act, Care, Look, Operation } from './step';

/** What can hurt somebody, by what is done. */
const CARES: Readonly<Partial<Record<Act, Care>>> = {
  cut: 'blade',
  'skive front': 'blade',
  'skive edge': 'blade',
  'skive flap': 'blade',
  'skive margins': 'blade',
  'skive ends': 'blade',
  'cut holdfast': 'blade',
  'trim seam': 'blade',
  'trim margin': 'blade',
  'pare pleats': 'blade',
  'trim lift': 'blade',
  'skive level': 'blade',
  'cut breast': 'blade',
  'trim round': 'blade',
  'open channel': 'blade',
  'close seam': 'blade',
  roughen: 'dust',
  level: 'dust',
  thin: 'dust',
  'rasp to last': 'dust',
  'grind toe': 'dust',
  'rasp edge': 'dust',
  'trim edge': 'dust',
  'sand edge': 'dust',
  degrease: 'vapour',
  prime: 'vapour',
  coat: 'vapour',
  seal: 'vapour',
  warm: 'heat',
  'iron and wax': 'heat',
  saw: 'machine',
  'bore core': 'machine',
};

/** What to look for, by what is done. */
const LOOKS: Readonly<Partial<Record<Act, Look>>> = {
  'skive front': 'even width',
  'skive edge': 'even width',
  'skive margins': 'even width',
  bend: 'no spring',
  coat: 'tacky',
  join: 'no gap',
  press: 'no gap',
  level: 'level',
  thin: 'level',
  'rasp to last': 'to the last',
  'grind toe': 'to the last',
  'try on last': 'to the last',
  saw: 'square',
  'rasp edge': 'square',
  'turn under': 'margins flat',
  'fill cavity': 'flush',
  'pack seat': 'flush',
  'fill margins': 'flush',
  'fit shank': 'firm',
  'nail seat': 'nail tips',
  nail: 'nail tips',
  'nail from inside': 'nail tips',
  'trim edge': 'flush',
  'check height': 'height',
  'check stand': 'stand',
  'try on ground': 'stand',
  'check pair': 'pair',
};

function found<T>(acts: readonly Act[], by: Readonly<Partial<Record<Act, T>>>): readonly T[] {
  return [...new Set(acts.flatMap((act) => by[act] ?? []))];
}

/** @param high whether the heel stands so high that it can tip or come off */
export function caresOf({ acts }: Operation, high: boolean): readonly Care[] {
  const own = found(acts, CARES);
  const shown =
    high && acts.some((act) => act === 'check stand' || act === 'nail from inside' || act === 'try on ground');
  return shown ? [...own, 'high build'] : own;
}

export function looksOf({ acts }: Operation): readonly Look[] {
  return found(acts, LOOKS);
}
