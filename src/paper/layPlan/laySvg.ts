// The plan of a cloth as an SVG drawing at full size.

import { LAY_PLAN, type LengthUnit } from '../../document';
import type { Point } from '../../engine';
import { escaped, mm } from '../text/markup';
import { MM_PER_POINT, textWidth } from '../text/textWidth';
import { cleaned } from '../text/writable';
import { laidWidth } from './cloth';
import { labelAt } from './labelAt';
import { clothSentence, lengthSentence, placedName } from './layTexts';
import type { LayPlan, Placed } from './plan';

/**
 * The text of an SVG file, 1 unit = 1 mm: the cloth as a box, x along it, and a group for each outline with its cut line and its
 * name. The same plan gives the same text.
 */
export function laySvg(plan: LayPlan, title: string, unit: LengthUnit): string {
  const [length, width] = [Math.max(1, plan.lengthMm), laidWidth(plan.cloth)];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(length)}mm" height="${mm(width)}mm" viewBox="0 0 ${mm(length)} ${mm(width)}">`,
    `<title>${escaped(cleaned(title))}</title>`,
    `<desc>${escaped([LAY_PLAN.svg, clothSentence(plan, unit), lengthSentence(plan, unit)].join(' '))}</desc>`,
    `<path id="cloth" d="M0 0H${mm(length)}V${mm(width)}H0Z" fill="none" stroke="#888888" stroke-width="1"/>`,
    ...plan.placed.map((placed, i) => group(placed, i, plan)),
    '</svg>',
    '',
  ].join('\n');
}

function group(placed: Placed, i: number, plan: LayPlan): string {
  const { at, roomMm } = labelAt(placed.outline);
  const name = placedName(placed, plan);
  const size = Math.min(MOST_MM, roomMm / Math.max(1, textWidth(name, 1 / MM_PER_POINT, false)));
  return [
    `<g id="lay-${i + 1}"><title>${escaped(name)}</title>`,
    `<path d="${pathOf(placed.outline)}" fill="none" stroke="#000000" stroke-width="0.5"/>`,
    `<text x="${mm(at.x)}" y="${mm(at.y + size / 3)}" text-anchor="middle" font-family="Helvetica, Arial, sans-serif" font-size="${mm(size)}">${escaped(name)}</text>`,
    '</g>',
  ].join('');
}

/** The largest letters of a name, mm. */
const MOST_MM = 20;

const pathOf = (outline: readonly Point[]): string =>
  `${outline.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${mm(x)} ${mm(y)}`).join('')}Z`;
