// How large a drawing of the plan is on the screen.

import type { RefObject } from 'react';
import { useSize } from '../../components/useSize';

/** A scale is rounded to this, so that the texts of a plan do not change while a window is pulled wider. */
const STEP = 0.02;

/** Pixels to a millimetre of a drawing that shows a box of this size, mm; 0 while it is not known. */
export function usePxPerMm(
  drawing: RefObject<SVGSVGElement | null>,
  widthMm: number,
  heightMm: number,
): number {
  const { width, height } = useSize(drawing);
  return Math.floor(Math.min(width / widthMm, height / heightMm) / STEP) * STEP || 0;
}
