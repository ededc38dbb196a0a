// How a pattern looks in a projector's light: lines bright and as heavy as asked, the grid dim, the ground dark.

import { STROKE_LOOKS } from '../strokeLooks';
import { ON_PAPER, type PageLooks } from './pen';

/** Bright enough to be seen on cloth; pure white glares. */
const LINE_GREY = 0.96;
const GROUND_GREY = 0.07;
const GRID_GREY = 0.34;

/** `lineMm` is the weight of the cut line; other lines keep their proportion to it, and dashes grow with it. */
export function projectorLooks(lineMm: number): PageLooks {
  const times = lineMm / STROKE_LOOKS.cut.widthMm;
  const stretch = Math.max(1, Math.sqrt(times));
  return {
    line: (kind) => {
      if (kind === 'grid') return { widthMm: 0.5, grey: GRID_GREY, dash: [] };
      const { widthMm, grey, dash } = ON_PAPER.line(kind);
      return {
        widthMm: widthMm * times,
        grey: LINE_GREY * (1 - grey),
        dash: dash.map((part) => part * stretch),
      };
    },
    ground: GROUND_GREY,
    text: (grey) => LINE_GREY * (1 - grey),
  };
}
