// The demo client's pattern as the paper tests ask for it.

import { DEMO_CLIENT, type Sheet } from '../../src/document';
import { draft, type Style } from '../../src/engine';
import { type PaperName, type PatternInput, paperChoice } from '../../src/paper';

export const DEMO_SHEET = DEMO_CLIENT.sheets[0] as Sheet;

export function demoPattern(paper: PaperName = 'A4', style: Style = DEMO_SHEET.style): PatternInput {
  return {
    draft: draft(DEMO_CLIENT.measurements, style),
    client: DEMO_CLIENT,
    sheet: { ...DEMO_SHEET, style },
    date: '24 November 2026',
    paper: paperChoice(paper),
  };
}
