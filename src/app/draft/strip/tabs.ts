// The tabs of the inspector, and which of them has the field that an issue stands at.

import type { Issue } from '../../../engine';

export const TABS = ['wedges', 'garment', 'edges', 'shoulders', 'more'] as const;

export type TabName = (typeof TABS)[number];

/** Beginnings of a field's path in the style, with the tab that has the field; the first that fits counts. */
const TAB_OF_FIELD: readonly (readonly [path: string, tab: TabName])[] = [
  ['topAbove', 'garment'],
  ['hemBelow', 'garment'],
  ['closure', 'garment'],
  ['joinedSide', 'garment'],
  ['topFrom', 'edges'],
  ['topShape', 'edges'],
  ['hemShape', 'edges'],
  ['shoulders', 'shoulders'],
  ['extras', 'more'],
];

/** The tab on which what an issue speaks of is set; null where it is set elsewhere. */
export function tabOfIssue({ at: { field, wedge } }: Issue): TabName | null {
  const found = TAB_OF_FIELD.find(([path]) => field?.startsWith(path));
  return found?.[1] ?? (wedge === undefined ? null : 'wedges');
}
