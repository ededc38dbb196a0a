// Between the two blocks of a garment whose side panel is cut in one: ties from side line to side line, and the words for it.

import { memo } from 'react';
import { type Draft, xAt } from '../../engine';
import { type CanvasLayout, onCanvas } from '../layout/layout';
import { sidePanelOf } from '../layout/panelsOnBlock';

interface JoinedSideProps {
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  readonly words: string;
  /** Height of small text, table mm. */
  readonly textMm: number;
}

export const JoinedSide = memo(function JoinedSide({ draft, layout, words, textMm }: JoinedSideProps) {
  const { blocks, span, levels } = draft;
  if (!sidePanelOf(draft) || !blocks || !span) return null;
  const ends = (y: number): [number, number] => {
    const [front, back] = (['front', 'back'] as const).map(
      (block) => onCanvas(layout, block, { x: xAt(blocks[block].sideSeam, y), y }).x,
    );
    return [front ?? 0, back ?? 0];
  };
  const tied = levels.filter(({ y }) => y > span.top + 2 && y < span.hem - 2);
  // Words stand where ties are farthest apart, so that none crosses them.
  const heights = [...tied.map((level) => level.y), span.hem];
  const gaps = heights.map((foot, i) => ({ foot, head: heights[i - 1] ?? span.top }));
  const { head, foot } = gaps.reduce((widest, gap) =>
    gap.foot - gap.head > widest.foot - widest.head ? gap : widest,
  );
  const y = (head + foot) / 2;
  const [front, back] = ends(y);
  const x = (front + back) / 2;
  return (
    <g className="joined-side">
      {tied.map((level) => {
        const [from, to] = ends(level.y);
        return <line key={level.name} x1={from} x2={to} y1={level.y} y2={level.y} />;
      })}
      <text x={x} y={y} fontSize={textMm} transform={`rotate(-90 ${x} ${y})`} dy="0.35em">
        {words}
      </text>
    </g>
  );
});
