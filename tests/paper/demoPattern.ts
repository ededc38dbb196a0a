// The demo client's pattern as the paper tests ask for it.

import { fontFiles } from '../../src/cli/output/fontFiles';
import { DEMO_CLIENT, type SavedDraft } from '../../src/document';
import { draft, type Style } from '../../src/engine';
import { type PaperName, type PatternInput, paperChoice, type WithFace, withFace } from '../../src/paper';

export const DEMO_SHEET = DEMO_CLIENT.drafts[0] as SavedDraft;

/** The face that every print is set in, to be spread into its input. */
export const WITH_FACE: WithFace = await withFace({}, fontFiles);

export type PrintInput = PatternInput & WithFace;

export function demoPattern(paper: PaperName = 'A4', style: Style = DEMO_SHEET.style): PrintInput {
  return {
    draft: draft(DEMO_CLIENT.measurements, style),
    client: DEMO_CLIENT,
    savedDraft: { ...DEMO_SHEET, style },
    date: '24 November 2026',
    paper: paperChoice(paper),
    ...WITH_FACE,
  };
}

/** The same, laid out in a tenth of the time, for tests of something else than how few sheets the panels take. */
export const quickPattern = (paper?: PaperName, style?: Style): PrintInput => ({
  ...demoPattern(paper, style),
  isQuick: true,
});
