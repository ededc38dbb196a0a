// A draft as a drawing to be looked at and kept: front and mirrored back as they lie on the table, to the thousandth of a mm.

import type { BlockName, Draft, Piece, Point } from '../../src/engine';
import { ringOf } from '../support/judges/outline';

/** Between the two side seams, round everything, and between the panels and a band above them. mm */
const ROOM = { between: 50, around: 40, underBand: 30 } as const;

const LOOKS = [
  'path{fill:none;stroke:#000;stroke-width:.8}',
  '.cut{stroke:#999;stroke-width:.4}',
  '.level{stroke:#9bd;stroke-width:.4}',
  '.grain{stroke-dasharray:6 3;stroke-width:.4}',
  '.mark{stroke-width:1.2}',
  '.dart{stroke-dasharray:3 2}',
].join('');

/**
 * The text of an SVG file in mm, a line of it a path: levels of each block, then each panel's edges, cut line, marks, darts
 * and grain, a shoulder band lifted off the panels it lies above. Numbers are the engine's own; the back is turned over by its group.
 */
export function drawDraft(title: string, { levels, pieces, extras }: Draft): string {
  const bands = extras.filter(({ kind }) => kind === 'band');
  const xs = (block: BlockName): number[] =>
    pieces.filter((piece) => piece.block === block).flatMap((piece) => ringOf(piece).map(({ x }) => x));
  const ys = [
    ...pieces.flatMap((piece) => piece.cutLine.map(({ y }) => y)),
    ...bands.flatMap((band) => band.cutLine.map(({ y }) => y - ROOM.underBand)),
  ];
  const [front, back] = [Math.max(...xs('front')), Math.max(...xs('back'))];
  const width = front + ROOM.between + back;
  const [top, foot] = [Math.min(...ys), Math.max(...ys)];
  const box = [-ROOM.around, top - ROOM.around / 2, width + 2 * ROOM.around, foot - top + ROOM.around];
  const drawBlock = (block: BlockName, reach: number): string[] => [
    ...levels
      .filter(({ y }) => y > top && y < foot)
      .map(({ name, y }) =>
        path(`level ${name}`, [
          { x: 0, y },
          { x: reach, y },
        ]),
      ),
    ...pieces.filter((piece) => piece.block === block).flatMap(panel),
    ...bands
      .filter((band) => band.block === block)
      .flatMap((band) => [`<g transform="translate(0 ${-ROOM.underBand})">`, ...panel(band), '</g>']),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box.map(thousandths).join(' ')}">`,
    `<title>${title}</title>`,
    `<style>${LOOKS}</style>`,
    '<g>',
    ...drawBlock('front', front),
    '</g>',
    `<g transform="translate(${thousandths(width)} 0) scale(-1 1)">`,
    ...drawBlock('back', back),
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

function panel(piece: Piece): string[] {
  return [
    path(`cut ${piece.id}`, piece.cutLine, 'Z'),
    ...piece.edges.map(({ role, points }) => path(`${role} ${piece.id}`, points)),
    ...piece.marks.map(({ at: { x, y } }) =>
      path(`mark ${piece.id}`, [
        { x: x - 2, y },
        { x: x + 2, y },
      ]),
    ),
    ...piece.darts
      .filter(({ open }) => !open)
      .flatMap(({ inner, outer }) => [inner, outer].map((leg) => path(`dart ${piece.id}`, leg))),
    path(`grain ${piece.id}`, piece.grain),
  ];
}

const path = (name: string, points: readonly Point[], close = ''): string =>
  `<path class="${name}" d="M${points.map(({ x, y }) => `${thousandths(x)} ${thousandths(y)}`).join(' ')}${close}"/>`;

const thousandths = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);
