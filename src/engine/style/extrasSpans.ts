// The numbers of the pieces beside the panels: their usual values, the spans they are held to, and the check.

import { inches } from '../terms/units';
import type { Extras } from './style';

/** What is usual where a piece is first asked for, mm. Common practice, no source. */
export const USUAL_EXTRAS = {
  modesty: { overlap: inches(2) },
  facing: { width: inches(2) },
  straps: { length: inches(16), width: inches(1) },
} as const satisfies Required<Extras>;

/** What can be cut, mm. */
export const EXTRAS_SPANS = {
  'modesty.overlap': [0, 150],
  'facing.width': [10, 200],
  'straps.length': [50, 1500],
  'straps.width': [5, 150],
} as const;

type NumberCheck = (field: string, value: unknown, least: number, most: number) => void;

/** Checks what came in as `extras`; one that is not asked for is no fault. */
export function checkExtras(given: unknown, number: NumberCheck): void {
  const part = (of: unknown, name: string): unknown =>
    typeof of === 'object' && of !== null ? (of as Readonly<Record<string, unknown>>)[name] : undefined;
  for (const [path, [least, most]] of Object.entries(EXTRAS_SPANS)) {
    const [name, field] = path.split('.') as [string, string];
    const asked = part(given, name);
    if (asked !== undefined) number(`extras.${path}`, part(asked, field), least, most);
  }
}
