import type { Care, Look, StepKind } from '../core/steps/step';
import type { WaitAtNight } from '../core/plan/bench-days/bench-days';
import type { Part } from '../core/bottom/layer';
import type { Verdict } from '../core/plan/checks/check';

/** Names of parts as people read them. */
export const PART_WORDS: Readonly<Record<Part, string>> = {
  insole: 'Insole',
  welt: 'Welt',
  midsole: 'Midsole',
  sole: 'Sole',
  lift: 'Lift',
  platform: 'Platform',
  outsole: 'Outsole',
  topPiece: 'Top piece',
  cover: 'Cover',
};

/** A verdict with its sign: never the sign alone. */
export const VERDICT_WORDS: Readonly<Record<Verdict, string>> = {
  holds: '✓ holds',
  lookAt: '△ look at',
  putRight: '⊠ put right',
};

/** What to look for when a step is done. */
export const LOOK_WORDS: Readonly<Record<Look, string>> = {
  'no gap': 'no gap all round',
  tacky: 'just tacky, no wet places',
  level: 'flat on a board, the height right',
  'to the last': 'no gap under the last, dry',
  flush: 'flush, no step to feel',
  square: 'square to the ground',
  firm: 'firm, both ends held',
  'nail tips': 'no nail tip inside',
  height: 'the heights of this row',
  stand: 'no rocking; toe spring as on the last',
  pair: 'left and right alike',
  'even width': 'even all along, no nick',
  'no spring': 'it keeps its bend',
  'margins flat': 'margins flat, corners without folds',
};

/** Kinds of steps as work that takes time. */
export const WORK_WORDS: Readonly<Record<StepKind, string>> = {
  prepare: 'cutting and preparing',
  skive: 'skiving',
  bend: 'bending',
  cement: 'coating',
  wait: 'waiting',
  join: 'joining',
  press: 'pressing',
  saw: 'sawing',
  rasp: 'rasping',
  cover: 'covering',
  sew: 'sewing',
  fix: 'nailing and fixing',
  trim: 'trimming',
  finish: 'finishing',
  check: 'checking',
};

/** What pairs wait for when the bench closes. */
export const WAIT_WORDS: Readonly<Record<WaitAtNight, string>> = {
  adhesive: 'adhesive to dry or cure',
  drying: 'drying',
  press: 'the press',
  lasts: 'free lasts',
  'days on last': 'its days on the last',
  'its turn': 'its turn at the bench',
};

/** What can hurt somebody in a step, in a few words. */
export const CARE_WORDS: Readonly<Record<Care, string>> = {
  vapour: 'moving air, no flame',
  dust: 'draw dust off, mask',
  blade: 'cut away from the hand',
  heat: 'hot: fumes and burns',
  machine: 'guards on',
  'high build': 'a high build can tip or come loose: have it judged',
};

/** The usual cautions, shown wherever work is planned. They defer to local rules and qualified practice. */
export const CAUTIONS: readonly { readonly about: string; readonly say: string }[] = [
  {
    about: 'Adhesives and solvents',
    say: 'Glue in moving air, away from flame and sparks, and keep vapour off your breath. Follow the safety sheet of the product and local rules.',
  },
  {
    about: 'Dust',
    say: 'Rasping and sanding cork, foam, rubber and leather makes harmful dust, leather dust above all. Draw it off at the tool and wear a fitting mask.',
  },
  {
    about: 'Blades',
    say: 'Cut and skive away from the hand, on a firm ground, with a sharp blade; cover it when it rests.',
  },
  {
    about: 'Machines',
    say: 'Guards stay on; loose sleeves and long hair stay away from sanders, band saws and skiving machines. Be shown by somebody qualified.',
  },
  {
    about: 'High builds',
    say: 'A high heel or platform can tip, loosen or slip. Have stability, heel attachment and slip judged by a qualified person before the shoes are worn or sold; ISO 22650 and ISO 24267 describe tests.',
  },
  {
    about: 'What the numbers are',
    say: 'They are planning aids from your own measures, not a certificate of strength or safety. Local rules and qualified practice come first.',
  },
];

/** The caution in one line, for tickets. */
export const CARE =
  'Glue in moving air, away from flame; mask for dust; cut away from the hand. Follow the product’s safety sheet.';
