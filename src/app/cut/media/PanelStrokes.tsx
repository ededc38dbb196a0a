// The lines and texts of a panel, as they are printed.

import { memo } from 'react';
import { pieceLabel } from '../../../document';
import { MM_PER_POINT, type PlacedPanel, type Stroke } from '../../../paper';
import { pathThrough } from '../../../table';

const STROKES: readonly Stroke['kind'][] = ['cut', 'sew', 'fold', 'grain', 'mark', 'bone', 'level', 'leader'];

/** A text smaller than this cannot be read and is left out. */
const LEAST_PX = 7;
/** A panel's name is at least this large. */
const LEAST_NAME_PX = 12;

/** One panel: one path for each kind of line, and its texts. Coordinates in mm. */
export const PanelStrokes = memo(function PanelStrokes({
  panel,
  pxPerMm,
}: {
  readonly panel: PlacedPanel;
  /** Pixels of the screen to a millimetre of the plan; 0 while it is not known. */
  readonly pxPerMm: number;
}) {
  const name = pieceLabel(panel.piece);
  const pxOf = (sizePt: number): number => sizePt * MM_PER_POINT * pxPerMm;
  const isNamed = panel.texts.some(({ text, sizePt }) => text === name && pxOf(sizePt) >= LEAST_NAME_PX);
  const texts = panel.texts.filter(
    ({ text, sizePt }) => pxPerMm === 0 || (pxOf(sizePt) >= LEAST_PX && (isNamed || text !== name)),
  );
  return (
    <g className="printed-panel" data-piece={panel.piece.id}>
      {STROKES.map((kind) => (
        <path
          key={kind}
          className={`stroke-${kind}`}
          d={panel.lines
            .filter((line) => line.kind === kind)
            .map((line) => pathThrough(line.points))
            .join('')}
        />
      ))}
      {texts.map((text) => (
        <text
          key={`${text.text} ${text.start.x} ${text.start.y}`}
          className="panel-text"
          fontSize={text.sizePt * MM_PER_POINT}
          fontWeight={text.bold ? 700 : 400}
          transform={`translate(${text.start.x} ${text.start.y}) rotate(${(text.turnRad * 180) / Math.PI})`}
        >
          {text.text}
        </text>
      ))}
      {pxPerMm === 0 || isNamed ? null : (
        <PanelName panel={panel} name={name} sizeMm={LEAST_NAME_PX / pxPerMm} />
      )}
    </g>
  );
});

/** The height of a name on its panel, from the top: seldom where two sheets meet. */
const NAME_HEIGHT = 0.3;

/** The name in the middle of a panel, a word a line. */
function PanelName({ panel, name, sizeMm }: { panel: PlacedPanel; name: string; sizeMm: number }) {
  const { piece, offset } = panel;
  const at = (of: 'x' | 'y', fraction: number): number => {
    const all = piece.cutLine.map((point) => point[of]);
    const least = Math.min(...all);
    return least + fraction * (Math.max(...all) - least) + offset[of];
  };
  const words = name.split(' ');
  const [x, y] = [at('x', 0.5), at('y', NAME_HEIGHT)];
  return (
    <text className="panel-text panel-name" fontSize={sizeMm} textAnchor="middle">
      {words.map((word, i) => (
        <tspan key={word} x={x} y={y + i * sizeMm * 1.2}>
          {word}
        </tspan>
      ))}
    </text>
  );
}
