// The drawing of one half block: its lines, and over them what stands on it in the size of the screen.

import { memo } from 'react';
import { useRested } from '../gestures/useRested';
import { BlockLines, type BlockLinesProps } from './BlockLines';
import { BlockMarks, type BlockMarksProps } from './BlockMarks';

interface BlockDrawingProps extends BlockLinesProps, BlockMarksProps {
  /** It may follow when the pull rests: a wedge of the other block is pulled, which moves this one by parts of a mm. */
  readonly mayLag: boolean;
}

export const BlockDrawing = memo(function BlockDrawing(props: BlockDrawingProps) {
  const { name, layout, selected, mayLag, nameOf, textMm, level, written } = props;
  const draft = useRested(props.draft, mayLag);
  const marks = { nameOf, textMm, level, written };
  return (
    <g className={`block block-${name}`}>
      <BlockLines name={name} draft={draft} layout={layout} selected={selected} />
      <BlockMarks name={name} draft={draft} layout={layout} {...marks} />
    </g>
  );
});
