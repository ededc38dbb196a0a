// The demo client's pattern as the paper tests ask for it.

import { DEMO_CLIENT, type SavedDraft } from '../../src/document';
import { draft, type Style } from '../../src/engine';
import { type PaperName, type PatternInput, paperChoice } from '../../src/paper';

export const DEMO_SHEET = DEMO_CLIENT.drafts[0] as SavedDraft;

export function demoPattern(paper: PaperName = 'A4', style: Style = DEMO_SHEET.style): PatternInput {
  return {
    draft: draft(DEMO_CLIENT.measurements, style),
    client: DEMO_CLIENT,
    savedDraft: { ...DEMO_SHEET, style },
    date: '24 November 2026',
    paper: paperChoice(paper),
  };
}
