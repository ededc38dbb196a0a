// The making list in words: sections of lines, the same on the screen, on paper, in the text and in the CSV file.

import { formatLength, LEVEL_WORDS, MAKING_LIST, pieceLabel, type Unit } from '../../document';
import { inches } from '../../engine';
import type { Bone } from './bones';
import { lacingPlaces, leastEyeletInset } from './bones';
import { type EyeletRow, waistOn } from './eyelets';
import { layersOfPiece } from './layers';
import type { MakingList } from './makingList';
import type { MakingSettings } from './settings';
import { waistSection } from './waistSeam';

export interface MakingLine {
  readonly item: string;
  /** How many; null where it is not counted. */
  readonly count: number | null;
  /** Length of one, mm; null where it has none. */
  readonly lengthMm: number | null;
  readonly note: string;
}

export interface MakingSection {
  readonly kind: 'pieces' | 'bones' | 'eyelets' | 'fastenings' | 'trimmings' | 'waistSeam' | 'cloth';
  readonly heading: string;
  readonly lines: readonly MakingLine[];
  /** What its figures go by. */
  readonly remark: string;
  /** What is to be seen to before the list is followed; empty where there is nothing. */
  readonly care: string;
}

/** The safety advice for tools that goes with every making list. */
export const WORKSHOP_CARE = MAKING_LIST.care;

/** Where the figures come from, said once with every making list. */
export const MAKING_SOURCES = MAKING_LIST.sources;

/** The sections that have lines; none for a draft without pieces. */
export function makingSections(list: MakingList, settings: MakingSettings, unit: Unit): MakingSection[] {
  if (list.pieces.length === 0) return [];
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  return [
    piecesSection(list, settings),
    bonesSection(list, settings, inUnit),
    eyeletsSection(list, settings, unit),
    fasteningsSection(list, unit),
    trimmings(list, settings, unit),
    waistSection(list.waistSeam, unit),
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

function piecesSection({ pieces, layers }: MakingList, settings: MakingSettings): MakingSection {
  const texts = MAKING_LIST.pieces;
  const all = layers.reduce((sum, { count }) => sum + count, 0);
  return {
    kind: 'pieces',
    heading: texts.heading,
    lines: pieces.map(({ piece, count, onFold, once }) => {
      const layered = layersOfPiece(piece, settings);
      const how = texts.layers({ layers: layered.map((each) => ({ ...each, count: count * each.count })) });
      const pair = onFold ? texts.onFold : count === 2 ? texts.pair : '';
      return line(
        pieceLabel(piece),
        count * (once ? Math.min(1, all) : all),
        null,
        [how, pair].filter((each) => each !== '').join('; '),
      );
    }),
    remark: texts.remark({ layers }),
    care: '',
  };
}

// ── bones ──

function bonesSection(list: MakingList, settings: MakingSettings, inUnit: FormatLength): MakingSection {
  const texts = MAKING_LIST.bones;
  const { bones, busk, casingWidthMm } = list;
  const lines = bones.map((bone) => {
    const long = inUnit(bone.channelMm);
    const channel = bone.stopped
      ? texts.channelStopped({ channel: long, level: LEVEL_WORDS.overBust })
      : texts.channel({ channel: long });
    return line(
      boneName(bone, settings, inUnit),
      bone.count,
      bone.lengthMm,
      bone.lengthMm === null ? texts.tooShort({ channel }) : channel,
    );
  });
  if (busk)
    lines.unshift(
      line(
        texts.busk,
        1,
        busk.lengthMm,
        busk.lengthMm === null
          ? texts.buskTooShort({ edge: inUnit(busk.edgeMm) })
          : texts.buskEdge({ edge: inUnit(busk.edgeMm), step: inUnit(settings.buskStep) }),
      ),
    );
  const rule =
    settings.rule === 'betweenBindings'
      ? betweenBindings(list, settings, inUnit)
      : texts.rules.channel({ slack: inUnit(settings.channelSlack) });
  const total = bones.reduce((sum, { count, lengthMm }) => sum + (lengthMm === null ? 0 : count), 0);
  return {
    kind: 'bones',
    heading: texts.heading,
    lines,
    care: '',
    remark: texts.remark({
      rule,
      total,
      boneWidth: inUnit(settings.boneWidth),
      casingWidth: inUnit(casingWidthMm),
      step: inUnit(settings.boneStep),
    }),
  };
}

/** The rule `betweenBindings` in words, also for a garment whose channels do not all end at a binding. */
function betweenBindings(
  { bindingMm, bones }: MakingList,
  { bindingsSlack, bindingDepth }: MakingSettings,
  inUnit: FormatLength,
): string {
  const values = { slack: inUnit(bindingsSlack), depth: inUnit(bindingDepth) };
  const { rules } = MAKING_LIST.bones;
  if (bones.some(({ stopped }) => stopped)) return rules.stopped(values);
  return bindingMm.hem > 0 ? rules.bound(values) : rules.turned(values);
}

function boneName({ place }: Bone, settings: MakingSettings, inUnit: FormatLength): string {
  const texts = MAKING_LIST.bones;
  if (place.kind === 'seam') return texts.onSeam({ pieces: place.pieces.map(pieceLabel) });
  if (place.kind === 'centreFront') return texts.centreFront;
  const away = lacingPlaces(settings).find(({ beside }) => beside === place.beside)?.awayMm ?? 0;
  return texts.byEyelets[place.beside]({ side: place.piece.side, away: inUnit(away) });
}

// ── eyelets and lace ──

function eyeletsSection(
  { eyelets, laceMm, laceOpeningMm }: MakingList,
  settings: MakingSettings,
  unit: Unit,
): MakingSection {
  const texts = MAKING_LIST.eyelets;
  const leastInset = leastEyeletInset(settings);
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const lines = eyelets.flatMap((row) => [
    line(
      texts.rows({ count: row.times }),
      row.times * row.points.length,
      null,
      texts.inEachRow({
        count: row.points.length,
        piece: pieceLabel(row.piece),
        apart: apart(row, inUnit),
      }),
    ),
    line(
      texts.centres,
      null,
      null,
      texts.fromTop({ lengths: row.fromTop.map((mm) => formatLength(mm, unit)), unit }),
    ),
  ]);
  if (laceMm > 0)
    lines.push(
      line(
        texts.lace,
        1,
        roundedUp(laceMm, laceStep(unit)),
        [
          ...inYards(roundedUp(laceMm, laceStep(unit)), unit),
          texts.opening({ opening: inUnit(laceOpeningMm) }),
        ].join('; '),
      ),
    );
  return {
    kind: 'eyelets',
    heading: texts.heading,
    lines,
    care: settings.eyeletInset < leastInset - 1e-6 ? texts.onBone({ least: inUnit(leastInset) }) : '',
    remark: texts.remark({
      inset: inUnit(settings.eyeletInset),
      spacing: inUnit(settings.eyeletSpacing),
      waistSpacing: inUnit(settings.waistSpacing),
      waistReach: inUnit(settings.waistReach),
      flange: inUnit(settings.eyeletFlange),
      waist: waistOn(eyelets),
    }),
  };
}

const apart = ({ apart: { least, most } }: EyeletRow, inUnit: FormatLength): string =>
  inUnit(least) === inUnit(most)
    ? MAKING_LIST.eyelets.apart({ apart: inUnit(most) })
    : MAKING_LIST.eyelets.apartFromTo({ least: inUnit(least), most: inUnit(most) });

const laceStep = (unit: Unit): number => (unit === 'in' ? inches(18) : 500);

// ── zips and hook tape ──

function fasteningsSection({ fastenings }: MakingList, unit: Unit): MakingSection {
  const texts = MAKING_LIST.fastenings;
  const step = unit === 'in' ? inches(1 / 8) : 1;
  return {
    kind: 'fastenings',
    heading: texts.heading,
    lines: fastenings.map(({ kind, place, edgeMm }) =>
      line(texts[kind][place], 1, roundedUp(edgeMm, step), place === 'side' ? texts.ofSeam : texts.ofEdge),
    ),
    remark: texts.remark,
    care: '',
  };
}

// ── binding, tape, casing ──

function trimmings(list: MakingList, settings: MakingSettings, unit: Unit): MakingSection {
  const inUnit = (mm: number): string => formatLength(mm, unit, { withUnit: true });
  const texts = MAKING_LIST.trimmings;
  const { bindingMm, shouldered, tapeMm, casingMm, trimmed } = list;
  const step = unit === 'in' ? inches(1) : 10;
  const some = (item: string, mm: number, note: string): MakingLine[] =>
    mm > 0 ? [line(item, 1, roundedUp(mm, step), note)] : [];
  return {
    kind: 'trimmings',
    heading: texts.heading,
    lines: [
      ...some(
        texts.binding,
        bindingMm.both,
        texts.bindingOf({
          shouldered,
          top: inUnit(bindingMm.top),
          hem: bindingMm.hem > 0 ? inUnit(bindingMm.hem) : null,
          spare: percent(settings.bindingSpare),
        }),
      ),
      ...some(texts.tape, tapeMm, texts.tapeOf({ ends: inUnit(settings.tapeEnds) })),
      ...some(texts.casing, casingMm, texts.casingOf({ spare: inUnit(settings.casingSpare) })),
    ],
    care:
      trimmed.length > 0
        ? texts.trim({
            edges: trimmed.map(({ edge, allowanceMm }) => ({ edge, allowance: inUnit(allowanceMm) })),
          })
        : '',
    remark: texts.remark,
  };
}

// ── cloth ──

function clothSection({ cloth }: MakingList, settings: MakingSettings, unit: Unit): MakingSection {
  const texts = MAKING_LIST.cloth;
  const step = unit === 'in' ? inches(4.5) : 50;
  return {
    kind: 'cloth',
    heading: texts.heading,
    lines: cloth.map(({ widthMm, unit: sold, lay, lengthMm }) => {
      const item = texts.wide({ width: formatLength(widthMm, sold, { withUnit: true }) });
      if (lengthMm === null) return line(item, null, null, texts.tooNarrow);
      const length = roundedUp(lengthMm, step);
      return line(item, 1, length, [...inYards(length, unit), texts.lay[lay]].join('; '));
    }),
    care: '',
    remark: texts.remark({
      selvedge: formatLength(settings.selvedge, unit, { withUnit: true }),
      spare: percent(settings.clothSpare),
      unit,
    }),
  };
}

/** The length in yards where the unit is inches, because shops then sell by the yard. */
const inYards = (mm: number, unit: Unit): string[] =>
  unit === 'in' ? [MAKING_LIST.yards({ yards: formatLength(mm / 36, 'in') })] : [];

const percent = (share: number): string => MAKING_LIST.percent({ percent: Math.round(share * 1000) / 10 });

const roundedUp = (mm: number, step: number): number => Math.ceil(mm / step - 1e-9) * step;
