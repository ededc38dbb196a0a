// The pattern as an SVG drawing in millimetres, with a group for each panel and, in it, one for each kind of line.

import { PATTERN, pieceLabel } from '../../document';
import type { PlacedPanel } from '../layout/placePanels';
import type { PlanInput } from '../layout/planInput';
import { planPanels } from '../layout/planPanels';
import type { PlacedText } from '../panel/strokes';
import { DO_NOT_CUT, hasErrors } from '../remarks/errors';
import { estimatedRemark } from '../remarks/estimates';
import { escaped, mm } from '../text/markup';
import { isolatedParts } from '../text/readingOrder';
import { MM_PER_POINT, wrapped } from '../text/textWidth';
import { cleaned, settable } from '../text/writable';
import { lineGroups, textTag } from './svgTags';

/** Width of the plan: the narrowest usual cloth, 36 in. mm */
const MOST_WIDTH_MM = 914.4;

/**
 * The text of an SVG file, 1 unit = 1 mm. Each panel is a group whose id is the piece's, with a group for each layer: cut-line,
 * fold-line, sew-line, grain, marks, leaders, text (`front-1.cut-line`, …); empty layers are left out. Cut and sew line are the
 * engine's points moved, to the thousandth of a mm. Same input, same text.
 */
export function patternSvg(input: PlanInput): string {
  // A picture is looked at, so no panel is turned upside down.
  const { panels, widthMm, heightMm } = planPanels({ ...input, nap: true }, MOST_WIDTH_MM);
  const { heads, top } = headsOver(input, Math.max(widthMm, LEAST_HEAD_MM));
  const wide = heads.length > 0 ? LEAST_HEAD_MM : 1;
  const [width, height] = [Math.max(widthMm, wide), Math.max(heightMm, 1) + top];
  const names = [input.client.name, input.savedDraft.name, input.date]
    .map(cleaned)
    .filter((name) => name !== '');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 ${mm(-top)} ${mm(width)} ${mm(height)}">`,
    `<title>${escaped(isolatedParts(names, ', '))}</title>`,
    `<desc>${escaped(PATTERN.svg)}</desc>`,
    ...heads.map(({ id, lines }) => `<g id="${id}">${lines.map(textTag).join('')}</g>`),
    ...panels.map(panelGroup),
    '</svg>',
    '',
  ].join('\n');
}

/** Least width of a drawing with remarks above it. mm */
const LEAST_HEAD_MM = 120;

/** The remarks above the panels, at negative y, and their height: not to cut a draft with errors, and estimated measurements. */
function headsOver(
  input: PlanInput,
  widthMm: number,
): { heads: readonly { id: string; lines: readonly PlacedText[] }[]; top: number } {
  const estimated = estimatedRemark(input.client);
  const remarks = [
    ...(hasErrors(input) ? [{ id: 'warning', text: DO_NOT_CUT, sizePt: 14 }] : []),
    ...(estimated === null ? [] : [{ id: 'estimated', text: settable(estimated), sizePt: 11 }]),
  ];
  const heads: { id: string; lines: PlacedText[] }[] = [];
  let y = 0;
  for (const { id, text, sizePt } of remarks) {
    const lines = wrapped(text, sizePt, true, widthMm - 4).map((line): PlacedText => {
      y += 1.4 * sizePt * MM_PER_POINT;
      return { text: line, start: { x: 2, y }, turnRad: 0, sizePt, bold: true };
    });
    heads.push({ id, lines });
  }
  const top = y > 0 ? y + FOOT_MM : 0;
  const lifted = ({ start, ...line }: PlacedText): PlacedText => ({
    ...line,
    start: { x: start.x, y: start.y - top },
  });
  return { heads: heads.map(({ id, lines }) => ({ id, lines: lines.map(lifted) })), top };
}

/** Gap between the remarks and the panels. mm */
const FOOT_MM = 4;

function panelGroup({ piece, lines, texts }: PlacedPanel): string {
  const id = escaped(piece.id);
  const written = texts.length > 0 ? [`<g id="${id}.text">${texts.map(textTag).join('')}</g>`] : [];
  return [
    `<g id="${id}"><title>${escaped(pieceLabel(piece))}</title>`,
    ...lineGroups(id, lines),
    ...written,
    '</g>',
  ].join('\n');
}
