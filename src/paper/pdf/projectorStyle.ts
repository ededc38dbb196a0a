// Styles of a projected pattern: bright lines of a chosen width, a dim grid and a dark background.

import { STROKE_STYLES } from '../panel/strokeStyles';
import { PAPER_STYLE, type PageStyle } from './file/pageStyle';

/** Grey of lines: bright enough to be seen on cloth, and less than white, which glares. */
const LINE_GREY = 0.96;
const BACKGROUND_GREY = 0.07;
const GRID_GREY = 0.34;

/** The page style for a cut line of `lineMm`; other lines keep their proportion to it, and dashes grow with it. */
export function projectorStyle(lineMm: number): PageStyle {
  const times = lineMm / STROKE_STYLES.cut.widthMm;
  const stretch = Math.max(1, Math.sqrt(times));
  return {
    line: (kind) => {
      if (kind === 'grid') return { widthMm: 0.5, grey: GRID_GREY, dash: [] };
      const { widthMm, grey, dash } = PAPER_STYLE.line(kind);
      return {
        widthMm: widthMm * times,
        grey: LINE_GREY * (1 - grey),
        dash: dash.map((part) => part * stretch),
      };
    },
    background: BACKGROUND_GREY,
    text: (grey) => LINE_GREY * (1 - grey),
  };
}
