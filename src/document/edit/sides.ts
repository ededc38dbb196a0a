// What differs left to right: how the body does, and wedges that the right half has of its own.

import type { BodySides, Style } from '../../engine';
import type { Client } from '../model/book';

/** Whether the client's sides differ; at first by nothing, for numbers to be filled in. */
export function setDiffering(client: Client, differing: boolean): Client {
  const { sides, ...alike } = client;
  return differing ? { ...alike, sides: sides ?? { leftShare: {}, rightLower: {} } } : alike;
}

/** Sets one number of how the sides differ, or (null) takes it off. */
export function setSide<Part extends keyof BodySides>(
  client: Client,
  part: Part,
  level: keyof BodySides[Part],
  value: number | null,
): Client {
  const sides = client.sides ?? { leftShare: {}, rightLower: {} };
  const { [level]: _, ...others } = sides[part];
  const set = value === null ? others : { ...others, [level]: value };
  return { ...client, sides: { ...sides, [part]: set } };
}

/** Gives the right half wedges of its own, to begin with those of the left; or takes them off. */
export function setRightWedges(style: Style, own: boolean): Style {
  const { rightWedges, ...both } = style;
  if (!own) return both;
  return {
    ...both,
    rightWedges: rightWedges ?? style.wedges.map((wedge) => ({ ...wedge, id: `right-${wedge.id}` })),
  };
}
