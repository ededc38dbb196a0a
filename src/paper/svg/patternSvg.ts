// The pattern as an SVG drawing in millimetres, in named groups: one a panel, in it one a kind of line.

import { pieceLabel } from '../../document';
import type { Point } from '../../engine';
import { DO_NOT_CUT, hasFaults } from '../faults';
import type { InkText, Stroke } from '../ink';
import type { PlacedPanel, PlanInput } from '../placePanels';
import { planPanels } from '../planPanels';
import { STROKE_LOOKS } from '../strokeLooks';
import { MM_PER_POINT, textWidth } from '../text/textWidth';
import { cleaned, isWritable } from '../text/writable';
import { escaped, mm } from './markup';

/** Rows no wider than the narrowest cloth in the shops, 36 in. mm */
const MOST_WIDTH_MM = 914.4;

/** Room for the warning over a draft that must not be cut. mm */
const WARNING_MM = 12;

/**
 * The text of an SVG file, 1 unit = 1 mm. Each panel is a group whose id is the piece's, with a group a layer: cut-line,
 * fold-line, sew-line, grain, marks, leaders, text (`front-1.cut-line`, …); layers without ink are left out. Cut and sew line
 * are the engine's points moved, to the thousandth of a mm. Same input, same text.
 */
export function patternSvg(input: PlanInput): string {
  const { panels, widthMm, heightMm } = planPanels(input, MOST_WIDTH_MM);
  const top = hasFaults(input) ? WARNING_MM : 0;
  const [width, height] = [Math.max(widthMm, 1), Math.max(heightMm, 1) + top];
  const names = [input.client.name, input.sheet.name, input.date].map(cleaned).filter((name) => name !== '');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 ${mm(-top)} ${mm(width)} ${mm(height)}">`,
    `<title>${escaped(names.join(', '))}</title>`,
    '<desc>Sewing pattern at full size: 1 unit is 1 mm.</desc>',
    ...(top > 0 ? [`<g id="warning">${textTag(warning(top))}</g>`] : []),
    ...panels.map(panelGroup),
    '</svg>',
    '',
  ].join('\n');
}

const warning = (top: number): InkText => ({
  text: DO_NOT_CUT,
  start: { x: 2, y: 7 - top },
  turnRad: 0,
  sizePt: 14,
  bold: true,
});

const LAYERS: readonly { readonly stroke: Stroke; readonly name: string }[] = [
  { stroke: 'cut', name: 'cut-line' },
  { stroke: 'fold', name: 'fold-line' },
  { stroke: 'sew', name: 'sew-line' },
  { stroke: 'grain', name: 'grain' },
  { stroke: 'mark', name: 'marks' },
  { stroke: 'leader', name: 'leaders' },
];

function panelGroup({ piece, lines, texts }: PlacedPanel): string {
  const id = escaped(piece.id);
  const layers = LAYERS.flatMap(({ stroke, name }) => {
    const paths = lines.filter((line) => line.stroke === stroke).map(({ points }) => pathTag(points));
    return paths.length > 0 ? [`<g id="${id}.${name}" ${lookOf(stroke)}>${paths.join('')}</g>`] : [];
  });
  const written = texts.length > 0 ? [`<g id="${id}.text">${texts.map(textTag).join('')}</g>`] : [];
  return [`<g id="${id}"><title>${escaped(pieceLabel(piece))}</title>`, ...layers, ...written, '</g>'].join(
    '\n',
  );
}

function lookOf(stroke: Stroke): string {
  const { widthMm, grey, dash } = STROKE_LOOKS[stroke];
  const tone = Math.round(grey * 255)
    .toString(16)
    .padStart(2, '0');
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  return `fill="none" stroke="#${tone.repeat(3)}" stroke-width="${widthMm}"${dashes}`;
}

function pathTag(points: readonly Point[]): string {
  const [first, last] = [points[0], points.at(-1)];
  const closed = points.length > 3 && first?.x === last?.x && first?.y === last?.y;
  const drawn = closed ? points.slice(0, -1) : points;
  const steps = drawn.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`);
  return `<path d="${steps.join('')}${closed ? 'Z' : ''}"/>`;
}

/** Whatever font the reader has, words whose width is known keep it, so that they stay clear of the lines. */
function textTag({ text, start, turnRad, sizePt, bold }: InkText): string {
  const width = [...text].every(isWritable) ? textWidth(text, sizePt, bold) : null;
  const fit = width === null ? '' : ` textLength="${mm(width)}" lengthAdjust="spacingAndGlyphs"`;
  const turn = turnRad === 0 ? '' : ` rotate(${mm((turnRad * 180) / Math.PI)})`;
  const weight = bold ? ' font-weight="bold"' : '';
  return `<text transform="translate(${mm(start.x)} ${mm(start.y)})${turn}" font-family="Helvetica, Arial, sans-serif" font-size="${mm(sizePt * MM_PER_POINT)}"${weight}${fit}>${escaped(text)}</text>`;
}
