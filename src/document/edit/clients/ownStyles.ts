// The maker's own styles, kept apart from any client, each as a pure step from one book to the next.

import type { Style, Wedge } from '../../../engine';
import type { Book, OwnStyle } from '../../model/book';
import { freeName, plainName } from './freeName';

/**
 * Keeps a style under a name. One of that name is written over and stays where it stands in the list; any other is
 * added at the end, under `id`.
 *
 * @param on the ISO day
 */
export function keepStyle(book: Book, id: string, name: string, style: Style, on: string): Book {
  const there = styleCalled(book, name);
  const kept: OwnStyle = { id: there?.id ?? id, name, style: byStation(style), on };
  const styles = there ? book.styles.map((each) => (each === there ? kept : each)) : [...book.styles, kept];
  return { ...book, styles };
}

/** A style for whoever is to wear it: its wedges stand at their stations, and not where they were put on one client's draft. */
export function byStation(style: Style): Style {
  const { wedges, rightWedges } = style;
  if (![...wedges, ...(rightWedges ?? [])].some(({ fromCentre }) => fromCentre)) return style;
  const free = (list: readonly Wedge[]): Wedge[] => list.map(({ fromCentre: _, ...wedge }) => wedge);
  return { ...style, wedges: free(wedges), ...(rightWedges ? { rightWedges: free(rightWedges) } : {}) };
}

/** The maker's own style of a name, whatever its capitals; null where there is none. */
export function styleCalled(book: Book, name: string): OwnStyle | null {
  return book.styles.find((each) => plainName(each.name) === plainName(name)) ?? null;
}

/** Adds a style from elsewhere, never in the place of one that is there. */
export function addStyle(book: Book, id: string, name: string, style: Style, on: string): Book {
  const added: OwnStyle = { id, name: freeName(name, namesOf(book.styles)), style, on };
  return { ...book, styles: [...book.styles, added] };
}

/** Gives a style another name; one that another style bears already gets a number behind it. */
export function renameStyle(book: Book, id: string, name: string): Book {
  const free = freeName(name, namesOf(book.styles.filter((each) => each.id !== id)));
  return {
    ...book,
    styles: book.styles.map((each) => (each.id === id ? { ...each, name: free } : each)),
  };
}

/** Takes a style out of the book. Drafts made from it stay as they are. */
export function removeStyle(book: Book, id: string): Book {
  const styles = book.styles.filter((each) => each.id !== id);
  return styles.length === book.styles.length ? book : { ...book, styles };
}

const namesOf = (styles: readonly OwnStyle[]): string[] => styles.map(({ name }) => name);
