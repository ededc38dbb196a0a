// A garment sketched from in front and from behind, to know a style by; the words beside it say what it is.

import { useMemo } from 'react';
import type { Draft, Style } from '../../engine';
import { type RoundBody, roundBody, type SeenPanel } from '../layout/roundBody';
import { closedPath, pathThrough } from './lines/paths';

interface GarmentSketchProps {
  readonly draft: Draft;
  readonly closure: Style['closure'];
  /** What the sketch has room for, so that several are to one scale; as large as the garment where left out. */
  readonly frame?: SketchFrame;
}

/** Heights below the neck, and the widest half of a garment seen from in front, mm. */
export interface SketchFrame {
  readonly top: number;
  readonly foot: number;
  readonly half: number;
}

/** Round the drawing, and between its two views. mm */
const ROOM_MM = 6;
const APART_MM = 26;

export function GarmentSketch({ draft, closure, frame }: GarmentSketchProps) {
  const halves = useMemo(() => {
    const { halves } = draft;
    const right = roundBody(halves?.right ?? draft, closure);
    return [right, halves ? roundBody(halves.left, closure) : right] as const;
  }, [draft, closure]);
  const points = halves.flatMap(({ front, back }) => [...front, ...back].flatMap(({ outline }) => outline));
  if (points.length === 0) return null;
  const { top, foot, half } = frame ?? {
    top: Math.min(...points.map(({ y }) => y)),
    foot: Math.max(...points.map(({ y }) => y)),
    half: Math.max(...points.map(({ x }) => x)),
  };
  const middles = { front: half + ROOM_MM, back: 3 * half + APART_MM + ROOM_MM };
  const waist = draft.levels.find(({ name }) => name === 'waist')?.y;
  const width = 4 * half + APART_MM + 2 * ROOM_MM;
  return (
    <svg
      className="garment-sketch"
      viewBox={`0 ${top - ROOM_MM} ${width} ${foot - top + 2 * ROOM_MM}`}
      aria-hidden="true"
    >
      {waist === undefined ? null : <path className="waist" d={`M0 ${waist}H${width}`} />}
      {(['front', 'back'] as const).map((view) => (
        <g key={view} transform={`translate(${middles[view]} 0)`}>
          {/* Seen from behind, her left is at the left. */}
          <Half panels={seen(halves[view === 'front' ? 1 : 0], view)} />
          <g transform="scale(-1 1)">
            <Half panels={seen(halves[view === 'front' ? 0 : 1], view)} />
          </g>
        </g>
      ))}
    </svg>
  );
}

const seen = (half: RoundBody, view: 'front' | 'back'): readonly SeenPanel[] => half[view];

function Half({ panels }: { panels: readonly SeenPanel[] }) {
  return panels.map(({ piece, outline, darts }) => (
    <g key={piece.id} className={`block-${piece.block}`}>
      <path className="panel" d={closedPath(outline)} />
      {darts.map((dart, i) => (
        <path key={piece.darts[i]?.wedge} className="dart" d={pathThrough(dart)} />
      ))}
    </g>
  ));
}
