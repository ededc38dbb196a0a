// That the maker read the cautions for tight lacing, and how far that holds: a tighter garment is acknowledged anew.

import type { Issue, IssueCode } from '../../engine';
import type { SavedDraft } from '../model/book';

/** What of a draft tells whether its cautions were read. */
type Reading = Pick<SavedDraft, 'style' | 'acknowledgedReduction' | 'acknowledgedRibs'>;

const WANTED: readonly IssueCode[] = ['waistReductionHigh', 'ribReductionHigh'];

/** Less than this is no growth. mm */
const SLACK_MM = 0.05;

/** The cautions have to be read and acknowledged before anything is printed. */
export const wantsReading = ({ code }: Issue): boolean => WANTED.includes(code);

/**
 * The cautions that this issue wants read were, and neither waist nor ribs have been drawn in further since. One from
 * before the ribs were spoken of holds for the waist alone. False for an issue that wants nothing read.
 */
export function isRead(issue: Issue, { style, acknowledgedReduction, acknowledgedRibs }: Reading): boolean {
  if (!wantsReading(issue) || acknowledgedReduction === null) return false;
  const reduced = reductions(style);
  if (reduced.waist > acknowledgedReduction + SLACK_MM) return false;
  if (acknowledgedRibs === undefined) return issue.code === 'waistReductionHigh';
  return reduced.ribs <= acknowledgedRibs + SLACK_MM;
}

/** The draft with the cautions marked as read for all that is taken in now, or as not read. */
export function acknowledge({ acknowledgedRibs: _, ...sheet }: SavedDraft, read: boolean): SavedDraft {
  if (!read) return { ...sheet, acknowledgedReduction: null };
  const { waist, ribs } = reductions(sheet.style);
  return { ...sheet, acknowledgedReduction: waist, acknowledgedRibs: ribs };
}

/** How much is taken in at the waist and over the ribs, mm; room is none. */
const reductions = ({ ease }: Reading['style']): { waist: number; ribs: number } => ({
  waist: Math.max(0, -ease.waist),
  ribs: Math.max(0, -ease.underBust),
});
