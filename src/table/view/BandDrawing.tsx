// The off-shoulder bands, drawn above the panels they are sewn to. They have no wedges: a band is as wide as the top edge is with
// its wedges sewn.

import { memo } from 'react';
import type { Draft, Piece, Point } from '../../engine';
import { BAND_LIFT_MM, bandsOf, type CanvasLayout, onCanvas } from '../layout/layOut';
import { closedPath } from './lines/paths';

interface BandDrawingProps {
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  readonly nameOf: (piece: Piece) => string;
  /** Height of small text, canvas mm. */
  readonly textMm: number;
}

/** The fraction of a band's height at which its name is, where it is wide. */
const NAME_AT = 0.74;

/** A name split after its first word; the band is too narrow for one line. */
const inTwo = (name: string): string[] => {
  const [first = '', ...rest] = name.split(' ');
  return [`${first} `, rest.join(' ')];
};

export const BandDrawing = memo(function BandDrawing({ draft, layout, nameOf, textMm }: BandDrawingProps) {
  return bandsOf(draft).map((band) => {
    const place = ({ x, y }: Point): Point => onCanvas(layout, band.block, { x, y: y - BAND_LIFT_MM });
    const ring = closedPath(band.edges.flatMap(({ points }) => points.slice(0, -1)).map(place));
    const [from, to] = band.grain;
    const middle = place({ x: from.x, y: from.y + NAME_AT * (to.y - from.y) });
    return (
      <g key={band.id} className="band" data-piece={band.id}>
        <path className="panel" d={ring} />
        <path className="edge-line" d={ring} />
        <text className="panel-name" x={middle.x} y={middle.y} fontSize={textMm}>
          {inTwo(nameOf(band)).map((line, i) => (
            <tspan key={line} x={middle.x} dy={i === 0 ? 0 : 1.25 * textMm}>
              {line}
            </tspan>
          ))}
        </text>
      </g>
    );
  });
});
