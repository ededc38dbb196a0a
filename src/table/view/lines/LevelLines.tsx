// The level lines through both blocks, each with its name and its height at the left end; one far below the hem is dotted.

import { memo } from 'react';
import type { Level, LevelName } from '../../../engine';
import { type CanvasLayout, lineHeight } from '../../layout/layOut';

interface LevelLinesProps {
  readonly levels: readonly Level[];
  readonly layout: CanvasLayout;
  /** Left end and length of the lines, canvas mm. */
  readonly left: number;
  readonly width: number;
  /** One px in canvas mm. */
  readonly px: number;
  readonly selectedLevel: LevelName;
  readonly nameOf: (level: LevelName) => string;
  /** What is written below a name; empty for nothing. */
  readonly noteOf: (level: Level, isBeyond: boolean) => string;
}

/** From the left end of a line to its name, and from the line to what is written above and below it. px */
const INDENT_PX = 12;
const ABOVE_PX = 5;
const BELOW_PX = 15;

export const LevelLines = memo(Lines, isDrawnAlike);

/** Most pulls leave all levels where they are. */
function isDrawnAlike(before: LevelLinesProps, after: LevelLinesProps): boolean {
  const { levels: a, ...restBefore } = before;
  const { levels: b, ...restAfter } = after;
  return (
    a.length === b.length &&
    a.every(({ name, y }, i) => name === b[i]?.name && y === b[i].y) &&
    (Object.keys(restAfter) as (keyof typeof restAfter)[]).every((key) => restBefore[key] === restAfter[key])
  );
}

function Lines(props: LevelLinesProps) {
  const { levels, layout, left, width, px, selectedLevel, nameOf, noteOf } = props;
  return (
    <g className="level-lines">
      {levels.map((level) => {
        const y = lineHeight(layout, level.name, level.y);
        const isBeyond = layout.beyond[level.name] !== undefined;
        const note = noteOf(level, isBeyond);
        return (
          <g key={level.name}>
            <line
              className={`level level-${level.name}${isBeyond ? ' beyond' : ''}${level.name === selectedLevel ? ' in-hand' : ''}`}
              x1={left}
              x2={left + width}
              y1={y}
              y2={y}
            />
            <text className="level-name" x={left + INDENT_PX * px} y={y - ABOVE_PX * px} fontSize={13 * px}>
              {nameOf(level.name)}
            </text>
            {note === '' ? null : (
              <text className="level-note" x={left + INDENT_PX * px} y={y + BELOW_PX * px} fontSize={13 * px}>
                {note}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
