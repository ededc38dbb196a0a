// A wedge is called by where it stands, so that its name stays true when it is moved.

import type { Style, Wedge } from '../../engine';

/** So near the bust-point line a wedge is the bust wedge. */
const AT_BUST_POINT = 0.1;

/**
 * The name of a wedge of a style: "Bust wedge", "Side-back dart", … Where several of a block share a name, those
 * farther from the centre are numbered: "Side-front wedge 2".
 */
export function wedgeName(wedge: Wedge, style: Pick<Style, 'wedges'>): string {
  const name = nameAt(wedge);
  const alike = style.wedges
    .filter((other) => other.block === wedge.block && nameAt(other) === name)
    .sort((a, b) => a.station - b.station || (a.id < b.id ? -1 : 1));
  const place = alike.findIndex((other) => other.id === wedge.id);
  return place > 0 ? `${name} ${place + 1}` : name;
}

/** The name of the wedge with an id, and "wedge" where the style has none of that id. */
export function wedgeNameOf(id: string, style: Pick<Style, 'wedges' | 'rightWedges'>): string {
  for (const wedges of [style.wedges, style.rightWedges ?? []]) {
    const wedge = wedges.find((each) => each.id === id);
    if (wedge) return wedgeName(wedge, { wedges });
  }
  return 'wedge';
}

function nameAt({ block, station, upper, lower }: Wedge): string {
  if (station <= -1) return `Centre-${block} wedge`;
  const kind = upper || lower ? 'dart' : 'wedge';
  if (Math.abs(station) < AT_BUST_POINT) return block === 'front' ? `Bust ${kind}` : `Back ${kind}`;
  return station > 0 ? `Side-${block} ${kind}` : `Inner ${block} ${kind}`;
}
