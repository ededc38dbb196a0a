// Cautions for tight lacing, shown where the reduction is set. Usual cautions, not medical advice.

import { catalogue } from '../catalogue';

export interface SafetyCaution {
  readonly text: string;
  /** Where the statement comes from. */
  readonly source: string;
}

const PRACTICE = 'common practice, no source';

const SAFETY = catalogue({
  standing:
    'Usual cautions for tight lacing, not medical advice. In any doubt about the wearer’s health, a licensed clinician decides, not this page.',
});

/** What stands above the cautions wherever they are shown. */
export const SAFETY_STANDING = SAFETY.standing;

export const SAFETY_CAUTIONS: readonly SafetyCaution[] = catalogue([
  {
    text: 'Up to 2 in (5 cm) off the natural waist is a usual fashion fit; about 4 in (10 cm) or 10 %, whichever is less, is the usual ceiling for an experienced wearer in a garment made to her measure.',
    source: PRACTICE,
  },
  {
    text: 'Not in pregnancy, after surgery, with trouble of breathing, heart, reflux, nerves or circulation, nor for a growing child, without asking a licensed clinician first.',
    source: PRACTICE,
  },
  {
    text: 'Loosen at once on pain, numbness, tingling, breathlessness or faintness.',
    source: PRACTICE,
  },
  { text: 'Lace gradually, over several wearings. Never sleep in it.', source: PRACTICE },
  { text: 'Cap every bone end, and keep bones clear of the edges.', source: PRACTICE },
  {
    text: 'Over an hour’s sitting a corset of chest and loins lowered the volume of each breath by 24 % and raised the rate of breathing by 19 %.',
    source: 'a measured study of 8 women; its full reference is not known to us',
  },
  {
    text: 'A belt round the abdomen raised the pressure in the stomach by 6.9 mmHg fasting and 9 mmHg after a meal, in people with reflux.',
    source: 'Gastroenterology, 2017',
  },
  {
    text: 'Tight clothing is a recognised cause of meralgia paraesthetica, a numb or burning outer thigh.',
    source: 'general medical knowledge; no one source',
  },
  {
    text: 'A pressure that was reckoned and not measured is never to be called safe.',
    source: PRACTICE,
  },
]);
