// The sign of a side panel cut in one, between the two blocks: lines from side line to side line, and a text.

import { memo } from 'react';
import { type BlockName, type Draft, xAt } from '../../../engine';
import { type CanvasLayout, onCanvas } from '../../layout/layOut';
import { sidePanelOf } from '../../layout/panelsOnBlock';

interface JoinedSideProps {
  readonly draft: Draft;
  readonly layout: CanvasLayout;
  readonly text: string;
  /** Height of small text, canvas mm. */
  readonly textMm: number;
}

export const JoinedSide = memo(function JoinedSide({ draft, layout, text, textMm }: JoinedSideProps) {
  const { blocks, span, levels } = draft;
  if (!sidePanelOf(draft) || !blocks || !span) return null;
  const ends = (y: number): [number, number] => {
    const sideX = (block: BlockName): number =>
      onCanvas(layout, block, { x: xAt(blocks[block].sideSeam, y), y }).x;
    return [sideX('front'), sideX('back')];
  };
  const joined = levels.filter(({ y }) => y > span.top + 2 && y < span.hem - 2);
  // The text is where the lines are farthest apart, so that none crosses it.
  const heights = [...joined.map((level) => level.y), span.hem];
  const gaps = heights.map((foot, i) => ({ foot, head: heights[i - 1] ?? span.top }));
  const { head, foot } = gaps.reduce((widest, gap) =>
    gap.foot - gap.head > widest.foot - widest.head ? gap : widest,
  );
  const y = (head + foot) / 2;
  const [front, back] = ends(y);
  const x = (front + back) / 2;
  return (
    <g className="joined-side">
      {joined.map((level) => {
        const [from, to] = ends(level.y);
        return <line key={level.name} x1={from} x2={to} y1={level.y} y2={level.y} />;
      })}
      <text x={x} y={y} fontSize={textMm} transform={`rotate(-90 ${x} ${y})`} dy="0.35em">
        {text}
      </text>
    </g>
  );
});
