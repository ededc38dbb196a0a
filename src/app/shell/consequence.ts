// What a kept change did to the garment, in words short enough to be said aloud.

import {
  type Book,
  formatLength,
  LEVEL_WORDS,
  openClient,
  openDraftOf,
  pieceLabel,
  SHELL,
} from '../../document';
import { type Draft, openWidth } from '../../engine';
import { draftOnce } from '../store/storeContext';

/** More than this many places are not listened to; the ledger has them all. */
const MOST_SAID = 3;

/**
 * "waist laced 24½ in": each girth that changed; where none did, each panel that did, at the waist. Empty where the
 * change shows in neither, or where another draft came into view.
 */
export function consequence(before: Book, after: Book): string {
  const [was, is] = [openClient(before), openClient(after)];
  const [oldSheet, newDraft] = [openDraftOf(was), openDraftOf(is)];
  if (was.id !== is.id || oldSheet.id !== newDraft.id) return '';
  if (
    was.measurements === is.measurements &&
    was.sides === is.sides &&
    oldSheet.style === newDraft.style &&
    oldSheet.fittings === newDraft.fittings
  )
    return '';
  const drafts: [Draft, Draft] = [draftOnce(was, oldSheet), draftOnce(is, newDraft)];
  const gap = openWidth(newDraft.style.closure);
  const write = (mm: number): string => formatLength(mm, is.unit, { withUnit: true });
  const [old, now] = drafts.map(({ proof }) => proof.ledger);
  const girths = (now ?? []).flatMap(({ level, sewnGirth }) => {
    const then = old?.find((row) => row.level === level)?.sewnGirth ?? null;
    if (
      sewnGirth === null ||
      same(then === null ? null : then + openWidth(oldSheet.style.closure), sewnGirth + gap)
    )
      return [];
    const say = gap > 0 ? SHELL.consequence.laced : SHELL.consequence.sewn;
    return [say({ level: LEVEL_WORDS[level], length: write(sewnGirth + gap) })];
  });
  const told = girths.length > 0 ? girths : panelsAtWaist(drafts, write);
  const refused = drafts[1].issues.some((issue) => issue.severity === 'error')
    ? [SHELL.consequence.cannotBeCut]
    : [];
  return SHELL.consequence.all({ consequences: [...told.slice(0, MOST_SAID), ...refused] });
}

function panelsAtWaist([before, after]: readonly [Draft, Draft], write: (mm: number) => string): string[] {
  const [old, now] = [before, after].map(
    ({ proof }) => proof.ledger.find((row) => row.level === 'waist')?.widths,
  );
  return after.pieces.flatMap((piece) => {
    const width = now?.[piece.id];
    if (width === undefined || same(old?.[piece.id] ?? null, width)) return [];
    return [SHELL.consequence.panel({ panel: pieceLabel(piece), length: write(width) })];
  });
}

/** Less than this nobody hears of. mm */
const HEARD_MM = 0.5;

const same = (a: number | null, b: number): boolean => a !== null && Math.abs(a - b) < HEARD_MM;
