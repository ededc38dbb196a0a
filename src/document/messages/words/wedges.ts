// A wedge is called by where it stands, so that its name stays true when it is moved.

import { isDart, type Style, type Wedge } from '../../../engine';
import type { WedgePlace } from '../../model/change';
import { catalogue } from '../catalogue';

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
export const wedgePhrase = (place: WedgePlace | null): string => named(WEDGES.phrase, place);

/** The name of the wedge with an id, to begin a line: "Bust wedge"; "wedge" where the style has none of that id. */
export const wedgeNameOf = (id: string, style: Pick<Style, 'wedges' | 'rightWedges'>): string =>
  named(WEDGES.name, wedgePlaceOf(id, style));

/** The name of a wedge in a list of wedges, where only a dart is told to be one: "Bust", "Side-front 2", "Back dart". */
export const wedgeShortNameOf = (id: string, style: Pick<Style, 'wedges' | 'rightWedges'>): string =>
  named(WEDGES.shortName, wedgePlaceOf(id, style));

type ByPlace = Readonly<
  Record<
    WedgePlace['kind'],
    Readonly<Record<WedgePlace['place'], Readonly<Record<WedgePlace['block'], string>>>>
  >
>;

function named(words: ByPlace, place: WedgePlace | null): string {
  if (!place) return WEDGES.unknown;
  const name = words[place.kind][place.place][place.block];
  return place.number > 1 ? WEDGES.numbered({ name, number: place.number }) : name;
}

function placeOf(wedge: Wedge): Omit<WedgePlace, 'number'> {
  const { block, station } = wedge;
  const kind = isDart(wedge) ? 'dart' : 'wedge';
  if (station <= -1) return { block, place: 'centre', kind };
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

/** A dart by name, to begin a line: the same in a list of wedges. */
const DART_NAMES = {
  centre: { front: 'Centre-front dart', back: 'Centre-back dart' },
  inner: { front: 'Inner front dart', back: 'Inner back dart' },
  bustPoint: { front: 'Bust dart', back: 'Back dart' },
  side: { front: 'Side-front dart', back: 'Side-back dart' },
} as const;

const WEDGES = catalogue({
  /** The name of a wedge that the style does not have. */
  unknown: 'wedge',
  numbered: ({ name, number }: { name: string; number: number }) => `${name} ${number}`,
  phrase: {
    wedge: {
      centre: { front: 'centre-front wedge', back: 'centre-back wedge' },
      inner: { front: 'inner front wedge', back: 'inner back wedge' },
      bustPoint: { front: 'bust wedge', back: 'back wedge' },
      side: { front: 'side-front wedge', back: 'side-back wedge' },
    },
    dart: {
      centre: { front: 'centre-front dart', back: 'centre-back dart' },
      inner: { front: 'inner front dart', back: 'inner back dart' },
      bustPoint: { front: 'bust dart', back: 'back dart' },
      side: { front: 'side-front dart', back: 'side-back dart' },
    },
  },
  name: {
    wedge: {
      centre: { front: 'Centre-front wedge', back: 'Centre-back wedge' },
      inner: { front: 'Inner front wedge', back: 'Inner back wedge' },
      bustPoint: { front: 'Bust wedge', back: 'Back wedge' },
      side: { front: 'Side-front wedge', back: 'Side-back wedge' },
    },
    dart: DART_NAMES,
  },
  shortName: {
    wedge: {
      centre: { front: 'Centre-front', back: 'Centre-back' },
      inner: { front: 'Inner front', back: 'Inner back' },
      bustPoint: { front: 'Bust', back: 'Back' },
      side: { front: 'Side-front', back: 'Side-back' },
    },
    dart: DART_NAMES,
  },
});
