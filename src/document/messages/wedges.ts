// A wedge is called by where it stands, so that its name stays true when it is moved.

import type { Style, Wedge } from '../../engine';
import { catalogue } from './catalogue';

/** Each name as it begins a line, as it stands within a sentence, and short, in a list of wedges. */
const NAMES = catalogue({
  centreFrontWedge: { name: 'Centre-front wedge', within: 'centre-front wedge', short: 'Centre-front' },
  centreBackWedge: { name: 'Centre-back wedge', within: 'centre-back wedge', short: 'Centre-back' },
  bustWedge: { name: 'Bust wedge', within: 'bust wedge', short: 'Bust' },
  bustDart: { name: 'Bust dart', within: 'bust dart', short: 'Bust dart' },
  backWedge: { name: 'Back wedge', within: 'back wedge', short: 'Back' },
  backDart: { name: 'Back dart', within: 'back dart', short: 'Back dart' },
  sideFrontWedge: { name: 'Side-front wedge', within: 'side-front wedge', short: 'Side-front' },
  sideFrontDart: { name: 'Side-front dart', within: 'side-front dart', short: 'Side-front dart' },
  sideBackWedge: { name: 'Side-back wedge', within: 'side-back wedge', short: 'Side-back' },
  sideBackDart: { name: 'Side-back dart', within: 'side-back dart', short: 'Side-back dart' },
  innerFrontWedge: { name: 'Inner front wedge', within: 'inner front wedge', short: 'Inner front' },
  innerFrontDart: { name: 'Inner front dart', within: 'inner front dart', short: 'Inner front dart' },
  innerBackWedge: { name: 'Inner back wedge', within: 'inner back wedge', short: 'Inner back' },
  innerBackDart: { name: 'Inner back dart', within: 'inner back dart', short: 'Inner back dart' },
  /** No wedge of the style. */
  unknown: { name: 'wedge', within: 'wedge', short: 'wedge' },
});

const { numbered } = catalogue({
  numbered: ({ name, number }: { name: string; number: number }) => `${name} ${number}`,
});

type NameCode = keyof typeof NAMES;
type NameForm = keyof (typeof NAMES)[NameCode];
type WedgeLists = Pick<Style, 'wedges' | 'rightWedges'>;

/** So near the bust-point line a wedge is the bust wedge. */
const AT_BUST_POINT = 0.1;

/**
 * The name of a wedge of a style: "Bust wedge", "Side-back dart", … Where several of a block share a name, those
 * farther from the centre are numbered: "Side-front wedge 2".
 */
export const wedgeName = (wedge: Wedge, style: Pick<Style, 'wedges'>): string =>
  nameInForm(wedge, style, 'name');

/** The name of the wedge with an id, and "wedge" where the style has none of that id. */
export const wedgeNameOf = (id: string, style: WedgeLists): string => nameOfId(id, style, 'name');

/** The same within a sentence: "side-front wedge 2". */
export const wedgeWithin = (id: string, style: WedgeLists): string => nameOfId(id, style, 'within');

/** The same where it is plain that wedges are spoken of: "Side-front 2"; a dart says that it is one. */
export const wedgeShortName = (id: string, style: WedgeLists): string => nameOfId(id, style, 'short');

function nameOfId(id: string, style: WedgeLists, form: NameForm): string {
  for (const wedges of [style.wedges, style.rightWedges ?? []]) {
    const wedge = wedges.find((each) => each.id === id);
    if (wedge) return nameInForm(wedge, { wedges }, form);
  }
  return NAMES.unknown[form];
}

function nameInForm(wedge: Wedge, style: Pick<Style, 'wedges'>, form: NameForm): string {
  const code = nameCode(wedge);
  const alike = style.wedges
    .filter((other) => other.block === wedge.block && nameCode(other) === code)
    .sort((a, b) => a.station - b.station || (a.id < b.id ? -1 : 1));
  const place = alike.findIndex((other) => other.id === wedge.id);
  const name = NAMES[code][form];
  return place > 0 ? numbered({ name, number: place + 1 }) : name;
}

function nameCode({ block, station, upper, lower }: Wedge): NameCode {
  const front = block === 'front';
  if (station <= -1) return front ? 'centreFrontWedge' : 'centreBackWedge';
  const kind = upper || lower ? 'Dart' : 'Wedge';
  if (Math.abs(station) < AT_BUST_POINT) return front ? `bust${kind}` : `back${kind}`;
  if (station > 0) return front ? `sideFront${kind}` : `sideBack${kind}`;
  return front ? `innerFront${kind}` : `innerBack${kind}`;
}
