// Shoulders on a block, a band above a strapless one, or neither; and what clears their way, each as a pure step from one
// style to the next.

import {
  type BlockName,
  type Draft,
  inches,
  type Shoulders,
  type Side,
  type Style,
  USUAL_BAND_ABOVE,
  USUAL_SHOULDERS,
} from '../../engine';
import { dartSpace, setEnds } from './wedges/darts';
import { wedgesOf } from './wedges/wedgeLists';

/** Where the garment ends above the bust: at the top edge, on the shoulders, or with a band above the top edge. */
export const SHOULDER_KINDS = ['strapless', 'shoulders', 'band'] as const;
export type ShoulderKind = (typeof SHOULDER_KINDS)[number];

export function shoulderKind({ shoulders }: Pick<Style, 'shoulders'>): ShoulderKind {
  if (!shoulders) return 'strapless';
  return shoulders.bandAbove === undefined ? 'shoulders' : 'band';
}

/** The style with shoulders or band, or without; numbers it has already stay, others are the usual ones. */
export function setShoulderKind(style: Style, kind: ShoulderKind): Style {
  const { shoulders, ...strapless } = style;
  if (kind === 'strapless') return strapless;
  const { bandAbove = USUAL_BAND_ABOVE, ...others } = shoulders ?? USUAL_SHOULDERS;
  return { ...strapless, shoulders: kind === 'band' ? { ...others, bandAbove } : others };
}

/** One number of the shoulders, by its path within them. */
export type ShoulderNumber =
  | 'drop'
  | 'armholeIn'
  | 'ease'
  | 'rise'
  | 'intake.front'
  | 'intake.back'
  | 'bandAbove';

/** What it is, mm; null where it is left to the draft, or where there is no band. */
export function shoulderNumber({ intake, ...own }: Shoulders, name: ShoulderNumber): number | null {
  if (name === 'intake.front') return intake?.front ?? null;
  if (name === 'intake.back') return intake?.back ?? null;
  return own[name] ?? null;
}

/** Sets one number of the shoulders, mm, or (null) leaves it to the draft; a style that has none stays as it is. */
export function setShoulderNumber(style: Style, name: ShoulderNumber, mm: number | null): Style {
  const { shoulders } = style;
  if (!shoulders) return style;
  if (name === 'intake.front' || name === 'intake.back') {
    const { intake, ...others } = shoulders;
    const set = withNumber(intake ?? {}, name === 'intake.front' ? 'front' : 'back', mm);
    return { ...style, shoulders: Object.keys(set).length > 0 ? { ...others, intake: set } : others };
  }
  if (name === 'bandAbove' && mm === null) return style;
  return { ...style, shoulders: withNumber(shoulders, name, mm) };
}

function withNumber<Of extends object>(of: Of, name: keyof Of, mm: number | null): Of {
  const { [name]: _, ...others } = of;
  return (mm === null ? others : { ...others, [name]: mm }) as Of;
}

/** Whether a wedge or a dart of one half's block runs up to its top edge, so that it can end in the shoulder. */
export const wedgeRunsUp = (style: Style, side: Side, block: BlockName): boolean =>
  wedgesOf(style, side).some((wedge) => wedge.block === block && wedge.station > -1 && !wedge.upper);

/** Nearer the waist than this a hem leaves no room for a dart to end above it (common practice, no source). mm */
const ROOM_BELOW_WAIST = inches(2.5);

/**
 * The wedges that would run up into the armhole made darts below the bust line: closed, or open where the garment ends near
 * the waist. Those are the ones the draft complains of and has on its blocks; their intakes stay.
 */
export function dartsBelowShoulders(style: Style, draft: Draft): Style {
  const astray = new Set(
    draft.issues.flatMap(({ code, at }) => (code === 'shoulderWedges' ? [at.wedge] : [])),
  );
  return [...style.wedges, ...(style.rightWedges ?? [])]
    .filter(({ id }) => astray.has(id))
    .reduce((before, { id, block, lower }) => {
      const space = dartSpace(draft, block, id);
      if (!space) return before;
      const open = !lower && space.hem - space.waist < ROOM_BELOW_WAIST;
      return setEnds(before, id, open ? 'openAtHem' : 'closed', space);
    }, style);
}

/** The top edge measured from the over-bust line, at its level, where shoulders can stand on it. */
export const topFromOverBust = (style: Style): Style => ({ ...style, topFrom: 'overBust', topAbove: 0 });
