// A page of jspdf to draw on: lines of given kinds, and texts in any script.

import type { jsPDF } from 'jspdf';
import type { Point } from '../../../engine';
import type { PlacedText } from '../../panel/strokes';
import { fractionsAlike } from '../../text/fractions';
import { isExact, settable, writable } from '../../text/writable';
import { drawGlyphs, type OutlineTools } from './drawGlyphs';
import { drawRuns } from './drawRuns';
import { type LineKind, PAPER_STYLE, type PageStyle } from './pageStyle';

export interface PdfCanvas {
  /** Draws a polyline in page mm; `from` is the length along its dashes at which it starts, `dash` replaces its kind's. */
  line(kind: LineKind, points: readonly Point[], from?: number, dash?: readonly number[]): void;
  /** Writes text in page mm; black unless a grey from 0 to 1 is given. */
  text(placed: PlacedText, grey?: number): void;
  /** Covers a box of the page with the background. */
  blank(left: number, top: number, width: number, height: number): void;
  /** Covers a ring, whose first point is not repeated, with the background. */
  cover(points: readonly Point[]): void;
  /** Runs `draw` clipped to a box of the page. */
  within(left: number, top: number, width: number, height: number, draw: () => void): void;
}

/** A canvas for the current page. `outlines` draw texts that the page's encoding lacks letters of; without them such texts lose letters. */
export function pdfCanvas(
  page: jsPDF,
  { line: styleOf, background, text: toned }: PageStyle = PAPER_STYLE,
  outlines: OutlineTools | null = null,
): PdfCanvas {
  let currentKind: LineKind | null = null;
  const startLine = (kind: LineKind): void => {
    if (currentKind === kind) return;
    currentKind = kind;
    page.setLineWidth(styleOf(kind).widthMm);
    page.setDrawColor(Math.round(styleOf(kind).grey * 255));
  };
  return {
    line(kind, points, from = 0, dash = styleOf(kind).dash) {
      const [first, ...rest] = points;
      if (!first || rest.length === 0) return;
      startLine(kind);
      const period = dash.reduce((sum, part) => sum + part, 0);
      page.setLineDashPattern([...dash], period > 0 ? from % period : 0);
      page.moveTo(first.x, first.y);
      for (const { x, y } of rest) page.lineTo(x, y);
      page.stroke();
    },
    text(placed, grey = 0) {
      const { text } = placed;
      if (outlines && !isExact(text)) {
        const tone = Math.round(toned(grey) * 255);
        page.setFillColor(tone, tone, tone);
        // Outlines have no built fractions.
        drawGlyphs(page, { ...placed, text: fractionsAlike(settable(text)) }, outlines);
        return;
      }
      if (writable(text).text === '') return;
      page.setTextColor(Math.round(toned(grey) * 255));
      drawRuns(page, { ...placed, text: settable(text) });
    },
    blank(left, top, width, height) {
      const grey = Math.round(background * 255);
      page.setFillColor(grey, grey, grey);
      page.rect(left, top, width, height, 'F');
    },
    cover([first, ...rest]) {
      if (!first) return;
      const grey = Math.round(background * 255);
      page.setFillColor(grey, grey, grey);
      page.moveTo(first.x, first.y);
      for (const { x, y } of rest) page.lineTo(x, y);
      page.fill();
    },
    within(left, top, width, height, draw) {
      page.saveGraphicsState();
      page.rect(left, top, width, height, null);
      page.clip();
      page.discardPath();
      currentKind = null;
      draw();
      page.restoreGraphicsState();
      currentKind = null;
    },
  };
}
