// A wedge is called by where it stands, so that its name stays true when it is moved.

import type { Style, Wedge } from '../../engine';
import type { WedgePlace } from '../model/change';

/** So near the bust-point line a wedge is the bust wedge. */
const AT_BUST_POINT = 0.1;

/**
 * Where a wedge of a style stands. Where several of a block share a place, those farther from the centre have a higher
 * number. Null where the style has none of that id.
 */
export function wedgePlaceOf(id: string, style: Pick<Style, 'wedges' | 'rightWedges'>): WedgePlace | null {
  for (const wedges of [style.wedges, style.rightWedges ?? []]) {
    const wedge = wedges.find((each) => each.id === id);
    if (wedge) return { ...placeOf(wedge), number: numberOf(wedge, wedges) };
  }
  return null;
}

/** The name of a wedge within a sentence: "bust wedge", "side-back dart", "side-front wedge 2"; "wedge" for null. */
export function wedgePhrase(place: WedgePlace | null): string {
  return place ? named(place, ` ${place.kind}`) : 'wedge';
}

/** The name of the wedge with an id, to begin a line: "Bust wedge"; "wedge" where the style has none of that id. */
export function wedgeNameOf(id: string, style: Pick<Style, 'wedges' | 'rightWedges'>): string {
  const place = wedgePlaceOf(id, style);
  return place ? capital(wedgePhrase(place)) : wedgePhrase(place);
}

/** The name of a wedge in a list of wedges, where only a dart is told to be one: "Bust", "Side-front 2", "Back dart". */
export function wedgeShortNameOf(id: string, style: Pick<Style, 'wedges' | 'rightWedges'>): string {
  const place = wedgePlaceOf(id, style);
  return place ? capital(named(place, place.kind === 'dart' ? ' dart' : '')) : wedgePhrase(place);
}

const named = ({ block, place, number }: WedgePlace, kind: string): string =>
  `${PLACE_WORDS[place][block]}${kind}${number > 1 ? ` ${number}` : ''}`;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const PLACE_WORDS: Readonly<Record<WedgePlace['place'], Readonly<Record<WedgePlace['block'], string>>>> = {
  centre: { front: 'centre-front', back: 'centre-back' },
  inner: { front: 'inner front', back: 'inner back' },
  bustPoint: { front: 'bust', back: 'back' },
  side: { front: 'side-front', back: 'side-back' },
};

function placeOf({ block, station, upper, lower }: Wedge): Omit<WedgePlace, 'number'> {
  if (station <= -1) return { block, place: 'centre', kind: 'wedge' };
  const kind = upper || lower ? 'dart' : 'wedge';
  if (Math.abs(station) < AT_BUST_POINT) return { block, place: 'bustPoint', kind };
  return { block, place: station > 0 ? 'side' : 'inner', kind };
}

function numberOf(wedge: Wedge, wedges: readonly Wedge[]): number {
  const own = placeOf(wedge);
  const alike = wedges
    .filter((other) => {
      const { block, place, kind } = placeOf(other);
      return block === own.block && place === own.place && kind === own.kind;
    })
    .sort((a, b) => a.station - b.station || (a.id < b.id ? -1 : 1));
  return alike.indexOf(wedge) + 1;
}
