// How large this screen draws a mm, as the maker measured it once; kept apart from the book, as it belongs to the device.

import { browserStorage } from './storageLike';

const KEY = 'staywright.screen';

/** What a browser takes for granted: 96 px to the inch. */
export const USUAL_PX_PER_MM = 96 / 25.4;

/** Nothing a maker holds to a screen measures outside this. px per mm */
const [LEAST, MOST] = [1, 20];

/** px per mm; null while it was never measured or cannot be read. */
export function screenScale(window: Window): number | null {
  try {
    const kept = Number(browserStorage(window)?.getItem(KEY) ?? Number.NaN);
    return kept >= LEAST && kept <= MOST ? kept : null;
  } catch {
    return null;
  }
}

/** Keeps the scale; where there is no room it holds for this visit only, and false is given. */
export function keepScreenScale(window: Window, pxPerMm: number): boolean {
  try {
    browserStorage(window)?.setItem(KEY, String(pxPerMm));
    return true;
  } catch {
    return false;
  }
}
