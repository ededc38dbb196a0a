// The making list in words: sections of lines, the same on the screen, on paper, in the text and in the CSV file.

import { formatLength, LEVEL_WORDS, pieceLabel, type Unit } from '../../document';
import { inches } from '../../engine';
import type { Bone } from './bones';
import { lacingPlaces } from './bones';
import type { EyeletRow } from './eyelets';
import type { Fastening } from './fastenings';
import type { MakingList } from './makingList';
import type { MakingSettings } from './settings';
import { PRACTICE_SENTENCE, SOURCES } from './sources';

export interface MakingLine {
  readonly item: string;
  /** How many; null where it is not counted. */
  readonly count: number | null;
  /** Length of one, mm; null where it has none. */
  readonly lengthMm: number | null;
  readonly note: string;
}

export interface MakingSection {
  readonly kind: 'pieces' | 'bones' | 'eyelets' | 'fastenings' | 'trimmings' | 'cloth';
  readonly heading: string;
  readonly lines: readonly MakingLine[];
  /** The rules and sources of the figures. */
  readonly remark: string;
}

/** The safety advice for tools that goes with every making list. */
export const WORKSHOP_CARE =
  'Steel ends, cutters and hot hole-setters: wear eye protection, file and cap every cut end, keep fingers clear of the punch, and let hot tools cool on a stand.';

/** The sections that have lines; none for a draft without pieces. */
export function makingSections(list: MakingList, settings: MakingSettings, unit: Unit): MakingSection[] {
  if (list.pieces.length === 0) return [];
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return [
    piecesSection(list),
    bonesSection(list, settings, inUnit),
    eyeletsSection(list, settings, unit),
    fasteningsSection(list, unit),
    trimmings(list, settings, unit),
    clothSection(list, settings, unit),
  ].filter(({ lines }) => lines.length > 0);
}

type FormatLength = (mm: number) => string;

const line = (item: string, count: number | null, lengthMm: number | null, note = ''): MakingLine => ({
  item,
  count,
  lengthMm,
  note,
});

// ── pieces ──

function piecesSection({ pieces, layers }: MakingList): MakingSection {
  const kinds = [
    ['fashion', layers.fashion],
    ['strength', layers.strength],
    ['lining', layers.lining],
  ] as const;
  const worn = kinds.filter(([, count]) => count > 0);
  const all = worn.reduce((sum, [, count]) => sum + count, 0);
  return {
    kind: 'pieces',
    heading: 'Cut',
    lines: pieces.map(({ piece, count, onFold, once }) => {
      const layered = once ? worn.slice(0, 1).map(([name]) => [name, 1] as const) : worn;
      const how = layered.map(([name, layer]) => `${count * layer} ${name}`).join(', ');
      const pair = onFold ? 'on the fold' : count === 2 ? 'a pair, one turned over' : '';
      return line(
        pieceLabel(piece),
        count * (once ? Math.min(1, all) : all),
        null,
        [how, pair].filter((each) => each !== '').join('; '),
      );
    }),
    remark: `Layers: ${worn.map(([name, count]) => `${count} ${name}`).join(', ') || 'none'} (${SOURCES.practice}).`,
  };
}

// ── bones ──

function bonesSection(list: MakingList, settings: MakingSettings, inUnit: FormatLength): MakingSection {
  const { bones, busk, casingWidthMm } = list;
  const lines = bones.map((bone) => {
    const stopped = bone.stopped ? `, up to the ${LEVEL_WORDS.overBust} line only` : '';
    const channel = `channel ${inUnit(bone.channelMm)}${stopped}`;
    return line(
      boneName(bone, settings, inUnit),
      bone.count,
      bone.lengthMm,
      bone.lengthMm === null ? `${channel}, too short for a bone by this rule` : channel,
    );
  });
  if (busk)
    lines.unshift(
      line(
        'Busk, centre front',
        1,
        busk.lengthMm,
        `edge ${inUnit(busk.edgeMm)}${busk.lengthMm === null ? ', too short for a busk by this rule' : `, in steps of ${inUnit(settings.buskStep)}`}`,
      ),
    );
  const rule =
    settings.rule === 'betweenBindings'
      ? `${betweenBindings(list, settings, inUnit)} (${SOURCES.bindings})`
      : `Bones are ${inUnit(settings.channelSlack)} shorter than their channel (${SOURCES.channel})`;
  const total = bones.reduce((sum, { count, lengthMm }) => sum + (lengthMm === null ? 0 : count), 0);
  return {
    kind: 'bones',
    heading: 'Bones',
    lines,
    remark: `${total} bones ${inUnit(settings.boneWidth)} wide, in channels sewn ${inUnit(casingWidthMm)} wide. ${rule}, then rounded down to ${inUnit(settings.boneStep)}.`,
  };
}

/** The rule `betweenBindings` in words, also for a garment whose channels do not all end at a binding. */
function betweenBindings(
  { bindingMm, bones }: MakingList,
  { bindingsSlack, bindingDepth }: MakingSettings,
  inUnit: FormatLength,
): string {
  const bound = bindingMm.hem > 0 && !bones.some(({ stopped }) => stopped);
  if (bound)
    return `Bones are ${inUnit(bindingsSlack)} shorter than the distance between the bindings, which cover ${inUnit(bindingDepth)} at each end`;
  const ends = bones.some(({ stopped }) => stopped)
    ? `${inUnit(bindingDepth)} at each end, whether bound, turned or stopped`
    : `${inUnit(bindingDepth)} for the binding above and as much for the turned hem`;
  return `Bones are shorter than their channel by ${ends}, and by ${inUnit(bindingsSlack)} besides`;
}

function boneName({ place }: Bone, settings: MakingSettings, inUnit: FormatLength): string {
  if (place.kind === 'seam') return `Seam ${place.pieces.map(pieceLabel).join(' – ')}`;
  if (place.kind === 'centreFront') return 'Centre front';
  const away = lacingPlaces(settings).find(({ beside }) => beside === place.beside)?.awayMm ?? 0;
  const where = place.beside === 'edge' ? 'between edge and eyelets' : 'beyond the eyelets';
  const { side } = place.piece;
  return `Lacing, ${side ? `${side}, ` : ''}${where}, ${inUnit(away)} from the edge`;
}

// ── eyelets and lace ──

function eyeletsSection(
  { eyelets, laceMm }: MakingList,
  settings: MakingSettings,
  unit: Unit,
): MakingSection {
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const lines = eyelets.flatMap((row) => [
    line(
      row.times === 2 ? 'Eyelets, two rows alike' : 'Eyelets, one row',
      row.times * row.points.length,
      null,
      `${row.points.length} in each row on ${pieceLabel(row.piece)}, ${apart(row, inUnit)}`,
    ),
    line(
      'Eyelet centres',
      null,
      null,
      `from the upper end down: ${row.fromTop.map((mm) => formatLength(mm, unit)).join(', ')} ${unit}`,
    ),
  ]);
  if (laceMm > 0)
    lines.push(
      line(
        'Lace',
        1,
        roundedUp(laceMm, laceStep(unit)),
        [
          ...inYards(roundedUp(laceMm, laceStep(unit)), unit),
          `edges ${inUnit(settings.laceOpening)} apart to put it on`,
        ].join('; '),
      ),
    );
  return {
    kind: 'eyelets',
    heading: 'Lacing',
    lines,
    remark: `Centres ${inUnit(settings.eyeletInset)} from the edge, at most ${inUnit(settings.eyeletSpacing)} apart and ${inUnit(settings.waistSpacing)} within ${inUnit(settings.waistReach)} of the waist; the waist lies midway between two. Apart: ${SOURCES.eyeletSpacing}. From the edge: ${SOURCES.eyeletInset}.`,
  };
}

const apart = ({ apart: { least, most } }: EyeletRow, inUnit: FormatLength): string =>
  inUnit(least) === inUnit(most) ? `${inUnit(most)} apart` : `${inUnit(least)} to ${inUnit(most)} apart`;

const laceStep = (unit: Unit): number => (unit === 'in' ? inches(18) : 500);

// ── zips and hook tape ──

const FASTENED: Readonly<Record<Fastening['place'], string>> = {
  front: 'centre front',
  back: 'centre back',
  side: 'left side seam',
};

function fasteningsSection({ fastenings }: MakingList, unit: Unit): MakingSection {
  const step = unit === 'in' ? inches(1 / 8) : 1;
  return {
    kind: 'fastenings',
    heading: 'Fastening',
    lines: fastenings.map(({ kind, place, edgeMm }) =>
      line(
        `${kind === 'zip' ? 'Zip' : 'Hook tape'}, ${FASTENED[place]}`,
        1,
        roundedUp(edgeMm, step),
        place === 'side' ? 'the length of the seam' : 'the length of the edge',
      ),
    ),
    remark: `From edge to edge of the finished garment; a zip that is sold longer is shortened. ${PRACTICE_SENTENCE}`,
  };
}

// ── binding, tape, casing ──

function trimmings(list: MakingList, settings: MakingSettings, unit: Unit): MakingSection {
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const { bindingMm, shouldered, tapeMm, casingMm } = list;
  const step = unit === 'in' ? inches(1) : 10;
  const some = (item: string, mm: number, note: string): MakingLine[] =>
    mm > 0 ? [line(item, 1, roundedUp(mm, step), note)] : [];
  return {
    kind: 'trimmings',
    heading: 'Binding, tape, casing',
    lines: [
      ...some(
        'Binding',
        bindingMm.both,
        `${shouldered ? 'neckline and armholes' : 'top edge'} ${inUnit(bindingMm.top)}, ${bindingMm.hem > 0 ? `hem ${inUnit(bindingMm.hem)}` : 'none for the turned hem'}, and ${percent(settings.bindingSpare)} to spare`,
      ),
      ...some('Waist tape', tapeMm, `once round the sewn waist, ${inUnit(settings.tapeEnds)} for its ends`),
      ...some('Bone casing', casingMm, `all channels, ${inUnit(settings.casingSpare)} to spare on each`),
    ],
    remark: `${PRACTICE_SENTENCE} Where an edge is faced or turned instead, it takes no binding.`,
  };
}

// ── cloth ──

function clothSection({ cloth }: MakingList, settings: MakingSettings, unit: Unit): MakingSection {
  const step = unit === 'in' ? inches(4.5) : 50;
  return {
    kind: 'cloth',
    heading: 'Cloth for one layer',
    lines: cloth.map(({ widthMm, unit: sold, lay, lengthMm }) => {
      const item = `${formatLength(widthMm, sold, { withUnit: true })} wide`;
      if (lengthMm === null) return line(item, null, null, 'a panel is wider than this cloth');
      const length = roundedUp(lengthMm, step);
      const how = lay === 'folded' ? 'folded lengthwise' : 'open, in one layer';
      return line(item, 1, length, [...inYards(length, unit), how].join('; '));
    }),
    remark: `Panels in rows with their grain along the cloth, selvedges of ${formatLength(settings.selvedge, unit, { withUnit: true })} left, ${percent(settings.clothSpare)} to spare, rounded up to ${unit === 'in' ? '⅛ yard' : '5 cm'}. ${PRACTICE_SENTENCE} Cloth with a direction or a pattern to match takes more.`,
  };
}

/** The length in yards where the unit is inches, because shops then sell by the yard. */
const inYards = (mm: number, unit: Unit): string[] =>
  unit === 'in' ? [`${formatLength(mm / 36, 'in')} yd`] : [];

const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;

const roundedUp = (mm: number, step: number): number => Math.ceil(mm / step - 1e-9) * step;
