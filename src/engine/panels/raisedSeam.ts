// Where heights as drafted lie on seams and panels that were raised after a fitting.

import type { Panel } from './panel';
import { type Raise, raisedHeight } from './raise';
import type { Seam, SeamEdge } from './seamEdge';

const NONE: Raise = [];

const raiseOf = ({ panel, which, dart }: SeamEdge): Raise =>
  (dart ? dart.raised : panel.raised?.[which]) ?? NONE;

/** Where a height as drafted lies on a seam, mm: mates are raised alike. */
export const heightOn = ({ a }: Seam, y: number): number => raisedHeight(raiseOf(a), y);

/** Where a height as drafted lies on an edge of a panel, mm. */
export const heightBeside = (panel: Panel, which: 'inner' | 'outer', y: number): number =>
  raisedHeight(panel.raised?.[which] ?? NONE, y);
