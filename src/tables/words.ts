import type { Material } from '../core/stock/stock';
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

/** How a face of a material is made ready for adhesive (common practice). */
export const PREPARE_WORDS: Readonly<Record<Material, string>> = {
  cork: 'dust off; thin first coat, then a second',
  foam: 'roughen, prime, coat',
  leather: 'roughen the grain; thin first coat, then a second',
  rubber: 'roughen, wash or prime, coat',
  board: 'roughen, coat',
  fabric: 'coat thinly',
  steel: 'degrease, coat',
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
