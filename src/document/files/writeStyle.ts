// Writes a style as a file that the headless drafter reads: every field, in mm, with the wedges at their stations. The kind of a
// wedge is not written, because it follows from the wedge's points and station.

import type { Style, Wedge } from '../../engine';
import { byStation } from '../edit/clients/ownStyles';

/**
 * The text of a style file: JSON with lengths in mm.
 *
 * @param name of the style, as it is read back
 */
export function writeStyle(name: string, asked: Style): string {
  const style = byStation(asked);
  const { rightWedges } = style;
  const written = {
    name,
    unit: 'mm',
    ...style,
    wedges: style.wedges.map(withoutKind),
    ...(rightWedges ? { rightWedges: rightWedges.map(withoutKind) } : {}),
  };
  return `${JSON.stringify(written, null, 1)}\n`;
}

const withoutKind = ({ kind: _, ...wedge }: Wedge): Omit<Wedge, 'kind'> => wedge;
