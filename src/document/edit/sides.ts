// What differs left to right: how the body does, and wedges that the right half has of its own.

import type { BodySides, Side, Style } from '../../engine';
import type { Book, Client } from '../model/book';
import { changeDraft } from './commands';

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

/**
 * The style as it is worked on with a half on the table: where the right has wedges of its own, they and the left's have
 * changed places. Done twice it is the style again, one and the same.
 */
export function swapSidesOfStyle(style: Style, side: Side): Style {
  if (side === 'left' || !style.rightWedges) return style;
  const known = exchanged.get(style);
  if (known) return known;
  const other = { ...style, wedges: style.rightWedges, rightWedges: style.wedges };
  exchanged.set(style, other);
  exchanged.set(other, style);
  return other;
}

const exchanged = new WeakMap<Style, Style>();

/** The book with the open draft, and what was saved of it, as worked on with a half on the table; done twice, the book again. */
export function swapSides(book: Book, side: Side): Book {
  if (side === 'left') return book;
  const known = turned.get(book);
  if (known) return known;
  const other = changeDraft(book, (savedDraft) => {
    const style = swapSidesOfStyle(savedDraft.style, side);
    const saved = savedDraft.comparison && {
      ...savedDraft.comparison,
      style: swapSidesOfStyle(savedDraft.comparison.style, side),
    };
    return style === savedDraft.style && saved?.style === savedDraft.comparison?.style
      ? savedDraft
      : { ...savedDraft, style, comparison: saved };
  });
  turned.set(book, other);
  turned.set(other, book);
  return other;
}

const turned = new WeakMap<Book, Book>();
