// Sizes one over another as an SVG drawing in millimetres, with a group for each size.

import { NESTED, PATTERN, pieceLabel } from '../../document';
import type { NestedInput } from '../nested/nestedInput';
import { drawnNests, nestsOnRoll, type PlacedNest } from '../nested/nestedPanels';
import { escaped, mm } from '../text/markup';
import { isolatedParts } from '../text/readingOrder';
import { cleaned } from '../text/writable';
import { lineGroups, textTag } from './svgTags';

/** Width of the plan: the narrowest usual cloth, 36 in. mm */
const MOST_WIDTH_MM = 914.4;

/**
 * The text of an SVG file, 1 unit = 1 mm. Each size is a group, `size-1` and on in the order of the sizes with its name as its title,
 * and in it each piece a group with one for each kind of line: `size-1.front-1.cut-line`. Grain lines, texts and the numbers on the
 * cut lines stand behind them in the group `shared`. Cut and sew lines are the engine's points moved, to the thousandth of a mm.
 * Same input, same text.
 */
export function nestedSvg(input: NestedInput): string {
  const { nests, widthMm, heightMm } = nestsOnRoll(drawnNests(input), MOST_WIDTH_MM);
  const [width, height] = [Math.max(widthMm, 1), Math.max(heightMm, 1)];
  const [first, last] = [input.sizes[0]?.name ?? '', input.sizes.at(-1)?.name ?? ''];
  const names = [input.savedDraft.name, NESTED.range({ first, last }), input.date]
    .map(cleaned)
    .filter((name) => name !== '');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${mm(width)}mm" height="${mm(height)}mm" viewBox="0 0 ${mm(width)} ${mm(height)}">`,
    `<title>${escaped(isolatedParts(names, ', '))}</title>`,
    `<desc>${escaped(PATTERN.svg)}</desc>`,
    ...input.sizes.map(({ name }, size) => sizeGroup(name, size, nests)),
    `<g id="shared">`,
    ...nests.flatMap(({ nest, shared, texts, numbers }) => [
      `<g id="shared.${escaped(nest.id)}"><title>${escaped(pieceLabel(nest.base.piece))}</title>`,
      ...lineGroups(`shared.${escaped(nest.id)}`, shared),
      [...texts, ...numbers].map(textTag).join(''),
      '</g>',
    ]),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function sizeGroup(name: string, size: number, nests: readonly PlacedNest[]): string {
  const id = `size-${size + 1}`;
  return [
    `<g id="${id}"><title>${escaped(cleaned(name))}</title>`,
    ...nests.flatMap(({ nest, linesOf }) =>
      nest.parts.flatMap((part, i) =>
        part.size === size
          ? [
              `<g id="${id}.${escaped(nest.id)}">`,
              ...lineGroups(`${id}.${escaped(nest.id)}`, linesOf[i] ?? []),
              '</g>',
            ]
          : [],
      ),
    ),
    '</g>',
  ].join('\n');
}
