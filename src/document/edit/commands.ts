// What a maker can do to the book, each as a pure step from one book or style to the next.

import {
  type BlockName,
  balancedWedge,
  type EdgeNode,
  type EdgeNodeName,
  type LevelName,
  MOST_WEDGES,
  type PerLevel,
  type Side,
  type Style,
  type Wedge,
  withPoints,
} from '../../engine';
import { type Book, type Client, openClient, openDraftOf, type SavedDraft } from '../model/book';
import { followSeams } from './wedges/followSeams';
import { changeEveryWedge, changeWedge, changeWedgesOf, wedgesOf } from './wedges/wedgeLists';

/** The book with the open client changed. */
export function changeClient(book: Book, change: (client: Client) => Client): Book {
  const open = openClient(book);
  const changed = change(open);
  if (changed === open) return book;
  return { ...book, clients: book.clients.map((client) => (client === open ? changed : client)) };
}

/** The book with the open draft of the open client changed. */
export function changeDraft(book: Book, change: (savedDraft: SavedDraft) => SavedDraft): Book {
  return changeClient(book, (client) => {
    const open = openDraftOf(client);
    const changed = change(open);
    if (changed === open) return client;
    return {
      ...client,
      drafts: client.drafts.map((savedDraft) => (savedDraft === open ? changed : savedDraft)),
    };
  });
}

/** The book with the style of the open draft changed; the draft's alterations stay with the wedges of their seams. */
export function changeStyle(book: Book, change: (style: Style) => Style): Book {
  return changeDraft(book, (savedDraft) => {
    const style = change(savedDraft.style);
    if (style === savedDraft.style) return savedDraft;
    return { ...savedDraft, style, fittings: followSeams(savedDraft.fittings, savedDraft.style, style) };
  });
}

/** The style with a zip in the side seam, or without. */
export function setSideZip(style: Style, zipped: boolean): Style {
  const { sideZip: _, ...closure } = style.closure;
  return { ...style, closure: zipped ? { ...closure, sideZip: true } : closure };
}

/** The style with its hem turned up, or bound or faced. */
export function setTurnedHem({ turnedHem: _, ...style }: Style, turned: boolean): Style {
  return turned ? { ...style, turnedHem: true } : style;
}

/**
 * Adds a balanced wedge to one half, or to both where they share their wedges; a block that has all it may have stays as it
 * is. The new wedge is the last in the half's list.
 */
export function addWedge(style: Style, side: Side, block: BlockName, station: number): Style {
  const ids = new Set([...style.wedges, ...(style.rightWedges ?? [])].map((wedge) => wedge.id));
  if (wedgesOf(style, side).filter((wedge) => wedge.block === block).length >= MOST_WEDGES) return style;
  let number = 1;
  while (ids.has(`${block}-added-${number}`)) number += 1;
  const added = balancedWedge(`${block}-added-${number}`, block, station, 2);
  return changeWedgesOf(style, side, (wedges) => [...wedges, added]);
}

/** Moves the whole axis to one station; bends at single levels keep their distance from it. On the centre line a dart has no points. */
export function setStation(style: Style, id: string, station: number): Style {
  return changeWedge(style, id, ({ fromCentre: _, ...wedge }) => {
    const shift = station - wedge.station;
    const stationAt = Object.fromEntries(
      Object.entries(wedge.stationAt).map(([level, own]) => [level, Math.min(1, Math.max(-1, own + shift))]),
    );
    return withPoints({ ...wedge, station, stationAt }, wedge);
  });
}

/** Bends the axis: its station at one level only. */
export function setStationAt(style: Style, id: string, level: LevelName, station: number): Style {
  return changeWedge(style, id, ({ fromCentre: _, ...wedge }) => ({
    ...wedge,
    stationAt: { ...wedge.stationAt, [level]: station },
  }));
}

/**
 * Sets an intake, mm; one below nothing adds cloth, as a gore does. A balanced wedge becomes one sized by hand, keeping `current`, what balancing gave it at the
 * other levels.
 */
export function setIntake(
  style: Style,
  id: string,
  level: LevelName,
  intake: number,
  current: Partial<PerLevel>,
): Style {
  return changeWedge(style, id, (wedge) => ({
    ...wedge,
    sizing: 'manual',
    intake: { ...(wedge.sizing === 'balanced' ? current : wedge.intake), [level]: intake },
  }));
}

/** Sets one place of the top edge or the hem. */
export function setEdgeNode(
  style: Style,
  edge: 'topShape' | 'hemShape',
  name: EdgeNodeName,
  node: EdgeNode,
): Style {
  return { ...style, [edge]: { ...style[edge], [name]: node } };
}

/** Gives a wedge a fullness of the cup, or (null) takes it away. */
export function setCup(style: Style, id: string, cup: Wedge['cup'] | null): Style {
  return changeWedge(style, id, ({ cup: _, ...wedge }) => (cup ? { ...wedge, cup } : wedge));
}

/** Locks a wedge at what it takes now (`current`, mm per level), or hands it back to balancing. */
export function setSizing(
  style: Style,
  id: string,
  sizing: Wedge['sizing'],
  current: Partial<PerLevel>,
): Style {
  return changeWedge(style, id, (wedge) => ({
    ...wedge,
    sizing,
    intake: sizing === 'manual' && wedge.sizing === 'balanced' ? current : wedge.intake,
  }));
}

/** Hands every wedge to balancing, those of the right's own too. */
export function balanceAll(style: Style): Style {
  return changeEveryWedge(style, (wedge) => ({ ...wedge, sizing: 'balanced' }));
}
