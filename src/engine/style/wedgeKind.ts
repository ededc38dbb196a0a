// Where a wedge ends decides its kind; its kind decides which points it has.

import type { DartPoint, Wedge, WedgeKind } from './wedgeFields';

/** Which point of a dart: towards the top edge, or towards the hem. */
export type DartEnd = 'upper' | 'lower';

/** The points that a wedge of a kind has. */
export const POINTS_OF: Readonly<Record<WedgeKind, readonly DartEnd[]>> = {
  through: [],
  openAtHem: ['upper'],
  openAtTop: ['lower'],
  closed: ['upper', 'lower'],
};

/** Whether a wedge ends within a panel. */
export const isDart = ({ kind }: Pick<Wedge, 'kind'>): boolean => kind !== 'through';

type Points<Point = DartPoint> = { readonly [End in DartEnd]?: Point | undefined };

/** What every kind of wedge has. */
type WedgeOwn = Omit<Wedge, 'kind' | DartEnd>;

/** The kind of a wedge that has these points. On the centre line a wedge shapes that line and runs through. */
export function kindFrom(station: number, { upper, lower }: Points<unknown>): WedgeKind {
  if (station <= -1) return 'through';
  if (upper) return lower ? 'closed' : 'openAtHem';
  return lower ? 'openAtTop' : 'through';
}

/** A wedge with these points, and none else; on the centre line it has none. */
export function withPoints(wedge: WedgeOwn | Wedge, { upper, lower }: Points): Wedge {
  const { kind: _, upper: __, lower: ___, ...own } = wedge as Wedge;
  const kind = kindFrom(own.station, { upper, lower });
  return {
    ...own,
    kind,
    ...(upper && POINTS_OF[kind].includes('upper') ? { upper } : {}),
    ...(lower && POINTS_OF[kind].includes('lower') ? { lower } : {}),
  } as Wedge;
}
