// The texts of the garment as worn, in the Fit step.

import {
  type BlockName,
  inches,
  type LevelName,
  type OtherWay,
  type PieceIdentity,
  type Side,
  type WornPlace,
} from '../../../../engine';
import type { Unit } from '../../../model/book';
import { formatLength } from '../../../units/formatLength';
import { catalogue, listed } from '../../catalogue';
import { LEVEL_TITLES, LEVEL_WORDS } from '../../words/levels';
import { pieceLabel } from '../../words/pieces';

type Part = WornPlace['part'];
type Band = Extract<WornPlace, { band: unknown }>['band'];

const whole = (value: number): string => value.toFixed(0).replace('-', '−');
const tenth = (value: number): string => value.toFixed(1).replace('-', '−');
/** A small length in mm in the unit of the client's tape: in parts of an inch, finer under 1/8; beside centimetres in whole or tenths of mm. */
const away = (mm: number, unit: Unit, millimetres: (value: number) => string): string =>
  unit === 'in'
    ? formatLength(mm, 'in', { withUnit: true, parts: Math.abs(mm) < FINER_BELOW_MM ? 32 : 16 })
    : `${millimetres(mm)} mm`;
const FINER_BELOW_MM = inches(1 / 8);

const signed = (value: number): string => `${value > 0 ? '+' : ''}${tenth(value)}`;

const BANDS: Readonly<Record<Band, string>> = {
  aboveBust: 'above the bust',
  bustToUnderBust: 'from bust to under-bust',
  underBustToWaist: 'from under-bust to waist',
  belowWaist: 'below the waist',
};
const PARTS: Readonly<Record<Part, string>> = { front: 'front', side: 'side', back: 'back' };

/** Where what cures a place is set: the wedges of a block, or the side seam. */
const curedAt = (block: BlockName | null, level: LevelName): string =>
  block === null
    ? `the side seam at the ${LEVEL_WORDS[level]}`
    : `the ${block} wedges at the ${LEVEL_WORDS[level]}`;

export const WORN = catalogue({
  title: 'As worn',
  busy: 'Sewing …',
  old: 'This is the draft of a moment ago; the new one is being sewn.',
  failed: 'The garment could not be sewn here. Change something or reload the page to try again.',
  noWorker: 'This browser cannot sew the garment beside the page: it has no workers.',
  noDrawing: 'This browser cannot draw the garment; the figures stand beside it.',
  still: 'Drawn without WebGL, so it turns more slowly.',
  leftOut: ({ pieces }: { pieces: readonly PieceIdentity[] }) =>
    [
      `Not sewn on here: ${listed(pieces.map(pieceLabel))}.`,
      ...(pieces.some(({ kind }) => kind !== 'modesty')
        ? ['Bands, sleeves and straps hang from arms and shoulders, and this body has none.']
        : []),
      ...(pieces.some(({ kind }) => kind === 'modesty')
        ? ['A modesty panel lies loose behind the lacing.']
        : []),
    ].join(' '),
  other: ({ way: { apart, band, part }, unit }: { way: OtherWay; unit: Unit }) =>
    `On this body the garment can come to rest in two ways. Shown is the one that takes less energy. In the other the cloth lies up to ${away(apart, unit, whole)} away from here, most ${BANDS[band]}, ${PARTS[part]}.`,

  picture: ({ caption }: { caption: string | null }) =>
    `${caption === null ? 'The garment on the body' : `The garment on the body, ${caption}`}. Arrow keys turn it, + and − bring it nearer and farther.`,
  views: { label: 'Seen from', front: 'Front', side: 'Side', back: 'Back' },
  nearer: 'Nearer',
  farther: 'Farther',
  save: 'Save picture',
  file: 'as worn.png',

  shading: {
    label: 'Colour by',
    standOff: 'Stand-off',
    warp: 'Stretch lengthwise',
    weft: 'Stretch crosswise',
    cloth: 'Cloth',
  },
  legend: {
    standOff: ({ unit }: { unit: Unit }) =>
      `Stand-off in ${unit === 'in' ? 'inches' : 'mm'}: how far the cloth is from the body. Each line is a limit; point at the cloth for its values. Pull to turn; pinch or Ctrl and wheel to zoom.`,
    warp: 'Stretch along the grain in %: below 0 the cloth is slack. Each line is a limit; point at the cloth for its values. Pull to turn; pinch or Ctrl and wheel to zoom.',
    weft: 'Stretch across the grain in %: below 0 the cloth is slack. Each line is a limit; point at the cloth for its values. Pull to turn; pinch or Ctrl and wheel to zoom.',
    unit: { standOff: { in: 'in', cm: 'mm' }, warp: '%', weft: '%' },
    number: ({ value }: { value: number }) => String(value).replace('-', '−'),
    length: ({ mm, unit }: { mm: number; unit: Unit }) =>
      unit === 'in' ? formatLength(mm, 'in', { parts: 32 }) : String(mm),
  },
  seen: ({
    piece,
    standOff,
    warp,
    weft,
    unit,
  }: {
    piece: PieceIdentity;
    standOff: number;
    warp: number;
    weft: number;
    unit: Unit;
  }) =>
    `${pieceLabel(piece)}: ${standOff > 0 ? `stands off ${away(standOff, unit, tenth)}` : 'lies on the body'}, ${signed(warp)} % along the grain, ${signed(weft)} % across.`,

  worst: {
    title: 'Look at first',
    none: 'Nothing stands off, pulls or gapes more than one would see.',
    goToWedge: ({ wedge, level }: { wedge: string; level: LevelName }) =>
      `Go to the ${wedge} at the ${LEVEL_WORDS[level]}`,
    goToSideSeam: ({ level }: { level: LevelName }) => `Alter the side seam at the ${LEVEL_WORDS[level]}`,
    goToTape: 'Go to the heights',
    side: ({ side, text }: { side: Side; text: string }) => `${side === 'left' ? 'Left' : 'Right'}: ${text}`,
    seen: (place: WornPlace, unit: Unit): string => {
      const { amount, part, level } = place;
      switch (place.kind) {
        case 'standsOff':
          return `Stands off ${away(amount, unit, whole)} ${BANDS[place.band]}, ${PARTS[part]}.`;
        case 'pulls':
          return `Pulls by ${tenth(amount)} % ${BANDS[place.band]}, ${PARTS[part]}.`;
        case 'gapes':
          return `The ${place.edge === 'top' ? 'top edge' : 'hem'} gapes ${away(amount, unit, whole)}, ${PARTS[part]}.`;
        case 'rides':
          return `The ${LEVEL_WORDS[level]} marks come to lie ${away(Math.abs(amount), unit, whole)} too ${amount > 0 ? 'high' : 'low'}, ${PARTS[part]}.`;
      }
    },
    cure: ({ kind, block, level }: WornPlace): string => {
      const where = curedAt(block, level);
      switch (kind) {
        case 'standsOff':
        case 'gapes':
          return `What usually cures it: take in ${where}.`;
        case 'pulls':
          return `What usually cures it: let out ${where}.`;
        case 'rides':
          return 'What usually cures it: look at the heights measured from the neck, then at the girths below and above.';
      }
    },
  },

  small: {
    old: 'Sewing it anew …',
    close: 'Close',
  },

  compare: {
    label: 'Beside',
    none: 'nothing',
    now: 'As drafted now',
    unaltered: 'Without the fittings’ alterations',
    saved: ({ name, day }: { name: string | null; day: string }) =>
      name === null ? `As saved ${day}` : `${name}, saved ${day}`,
    nothing:
      'To see it beside another: save the draft to compare on Draft, or alter it after a fitting, or give the client a second draft.',
  },

  table: {
    title: 'By region and edge',
    where: 'Where',
    whole: 'all of it',
    was: ({ text }: { text: string }) => `(${text})`,
    beside: 'In brackets: the garment beside it.',
    standOff: 'Stands off',
    stretch: 'Stretch',
    region: ({ band, part }: { band: Band; part: Part }) => `${PARTS[part]}, ${BANDS[band]}`,
    edge: ({ edge, part }: { edge: 'top' | 'hem'; part: Part }) =>
      `${edge === 'top' ? 'Top edge' : 'Hem'}, ${PARTS[part]}`,
    mark: ({ level, part }: { level: LevelName; part: Part }) =>
      `${LEVEL_TITLES[level]} marks, ${PARTS[part]}`,
    half: ({ side }: { side: Side }) => (side === 'left' ? 'Left half' : 'Right half'),
    away: ({ value, unit }: { value: number; unit: Unit }) => away(value, unit, tenth),
    percent: ({ value }: { value: number }) => `${tenth(value)} %`,
    rise: ({ value, unit }: { value: number; unit: Unit }) =>
      Math.abs(value) < 0.5
        ? 'at its level'
        : `${away(Math.abs(value), unit, tenth)} ${value > 0 ? 'high' : 'low'}`,
    apex: ({ value, unit }: { value: number; unit: Unit }) =>
      `The bust seam passes the bust point at ${away(value, unit, tenth)}.`,
  },

  caution:
    'No pressure is shown, and no lacing is called safe. How tightly one may be laced is for the wearer and a licensed clinician to say: loosen at once on pain, numbness, tingling, breathlessness or faintness.',

  assumed: {
    title: 'What is assumed',
    lines: ({
      hollow,
      isMeasured,
      unit,
    }: {
      hollow: number;
      isMeasured: boolean;
      unit: Unit;
    }): readonly string[] => [
      'The panels are sewn with their darts and facings, boned, laced with their gap and at rest on a body of these girths.',
      'It compares drafts and shows places. It promises no fit; a mock-up tells more.',
      `The girths and heights are those measured. The shape between them is usual for a body, not this client’s; the waist lies ${formatLength(hollow, unit, { withUnit: true })} in front of upper back and seat${isMeasured ? ', as measured' : ', an estimate: the hollow of the back can be measured'}.`,
      'Cloth is firm cotton, bones are flat steel along every seam, and a waist tape keeps the garment at the waist. How far the body yields is an estimate.',
    ],
  },
});
