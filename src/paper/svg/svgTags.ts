// Tags of an SVG drawing: groups of lines by kind, and texts.

import type { Point } from '../../engine';
import { STROKE_STYLES } from '../panel/strokeStyles';
import type { PlacedText, Stroke, StrokeKind } from '../panel/strokes';
import { escaped, mm } from '../text/markup';
import { isolated } from '../text/readingOrder';
import { MM_PER_POINT, textWidth } from '../text/textWidth';
import { isWritable } from '../text/writable';

const LAYERS: readonly { readonly kind: StrokeKind; readonly name: string }[] = [
  { kind: 'cut', name: 'cut-line' },
  { kind: 'fold', name: 'fold-line' },
  { kind: 'sew', name: 'sew-line' },
  { kind: 'grain', name: 'grain' },
  { kind: 'mark', name: 'marks' },
  { kind: 'bone', name: 'bones' },
  { kind: 'level', name: 'levels' },
  { kind: 'leader', name: 'leaders' },
];

/** A group for each kind of line that there is: `front-1.cut-line`, …; `id` is escaped. Lines of a kind share a dash. */
export const lineGroups = (id: string, lines: readonly Stroke[]): string[] =>
  LAYERS.flatMap(({ kind, name }) => {
    const own = lines.filter((line) => line.kind === kind);
    const paths = own.map(({ points }) => pathTag(points));
    return own[0] ? [`<g id="${id}.${name}" ${strokeAttributes(own[0])}>${paths.join('')}</g>`] : [];
  });

function strokeAttributes({ kind, dash = STROKE_STYLES[kind].dash }: Stroke): string {
  const { widthMm, grey } = STROKE_STYLES[kind];
  const tone = Math.round(grey * 255)
    .toString(16)
    .padStart(2, '0');
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  return `fill="none" stroke="#${tone.repeat(3)}" stroke-width="${widthMm}"${dashes}`;
}

function pathTag(points: readonly Point[]): string {
  const [first, last] = [points[0], points.at(-1)];
  const isClosed = points.length > 3 && first?.x === last?.x && first?.y === last?.y;
  const drawn = isClosed ? points.slice(0, -1) : points;
  const steps = drawn.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`);
  return `<path d="${steps.join('')}${isClosed ? 'Z' : ''}"/>`;
}

/** A text whose width is known keeps it in any font, so that it stays clear of the lines. */
export function textTag({ text, start, turnRad, sizePt, bold, onLine }: PlacedText): string {
  const width = [...text].every(isWritable) ? textWidth(text, sizePt, bold) : null;
  const fit = width === null ? '' : ` textLength="${mm(width)}" lengthAdjust="spacingAndGlyphs"`;
  const turn = turnRad === 0 ? '' : ` rotate(${mm((turnRad * 180) / Math.PI)})`;
  const weight = bold ? ' font-weight="bold"' : '';
  // A line under a text is covered by a rim of white around its letters.
  const rim = onLine ? ' stroke="#ffffff" stroke-width="0.8" paint-order="stroke"' : '';
  return `<text transform="translate(${mm(start.x)} ${mm(start.y)})${turn}" font-family="Helvetica, Arial, sans-serif" font-size="${mm(sizePt * MM_PER_POINT)}"${weight}${fit}${rim}>${escaped(isolated(text))}</text>`;
}
