// What takes a fault away where one step of the style does: the press that mends it, and what that press is called.

import {
  type Change,
  dartsBelowShoulders,
  MEND,
  setJoinedSide,
  setSideZip,
  topFromOverBust,
} from '../../../document';
import type { Draft, Issue, Style } from '../../../engine';

export interface Cure {
  /** What the press is called that takes away so many faults of its code. */
  readonly label: (found: { readonly count: number }) => string;
  readonly change: Change;
  readonly set: (style: Style, draft: Draft) => Style;
}

export const CURES: Partial<Readonly<Record<Issue['code'], Cure>>> = {
  shoulderNeedsTop: {
    label: () => MEND.cures.measureFromOverBust,
    change: { code: 'topLineSet' },
    set: topFromOverBust,
  },
  shoulderNeedsSideSeam: {
    label: () => MEND.cures.keepSideSeam,
    change: { code: 'sidePanelSet', joined: false },
    set: (style) => setJoinedSide(style, false),
  },
  sideZipNeedsSeam: {
    label: () => MEND.cures.keepSideSeam,
    change: { code: 'sidePanelSet', joined: false },
    set: (style) => setJoinedSide(style, false),
  },
  sidePanelAtCentre: {
    label: () => MEND.cures.keepSideSeam,
    change: { code: 'sidePanelSet', joined: false },
    set: (style) => setJoinedSide(style, false),
  },
  shoulderWedges: {
    label: MEND.cures.makeDarts,
    change: { code: 'dartsBelowShoulders' },
    set: dartsBelowShoulders,
  },
  noOpening: {
    label: () => MEND.cures.openSide,
    change: { code: 'sideZipSet', zipped: true },
    set: (style) => setSideZip(setJoinedSide(style, false), true),
  },
};
