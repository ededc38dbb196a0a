// The client book as it is kept: plain data, checked by `bookSchema` wherever it is read from text.

import type { BodySides, MeasurementName, Measurements, Style } from '../../engine';
import type { Fitting } from './fittings';
import type { KeptLay } from './lays';
import type { KeptPrint } from './prints';

/** The version this build writes. A book of a lower one is migrated, of a higher one put aside. */
export const BOOK_VERSION = 12;

/** The unit a maker reads and types in; everything is kept in mm. */
export type Unit = 'in' | 'cm';

/**
 * Rules of drafting that came after version 6: of the bust dart, of wedges above the bust; after version 7: of necklines, side
 * lines and seams by hand of shouldered drafts, of a bust smaller than the girths above and below it; after version 9: of darts
 * within a panel; after version 10: of the armhole of off-shoulder bands;
 * after version 11: of a top edge that is measured from the under-bust where the draft goes without that level.
 */
export const LATER_RULES = [
  'bustDart',
  'aboveBust',
  'neckAndSide',
  'smallBust',
  'slimDarts',
  'bandArmhole',
  'topLine',
] as const;
type LaterRule = (typeof LATER_RULES)[number];

/** One draft of a client: a style with a name. */
export interface SavedDraft {
  readonly id: string;
  readonly name: string;
  readonly style: Style;
  /** The waist reduction, mm, for which the maker has read the caution; null while she has not. */
  readonly acknowledgedReduction: number | null;
  /** The reduction over the ribs at that time, mm; left out where they were not spoken of then. */
  readonly acknowledgedRibs?: number;
  /**
   * Rules of drafting that came after it was kept draw it otherwise, and the maker has not been told so yet: all that have come
   * since version 5, or those of the later ones that do.
   */
  readonly redrafted?: true | readonly LaterRule[];
  /** The draft as it was when the maker saved it to compare with; null while she has not. */
  readonly comparison: ComparisonDraft | null;
  /** What was seen when it was tried on, in the order in which it was written down. */
  readonly fittings: readonly Fitting[];
  readonly notes: DraftNotes;
  /** The last lay plan of each layer that has one; left out where none was made. */
  readonly lays?: readonly KeptLay[];
}

/** What a garment is to be, and how it is worn, in the maker's own words; empty where nothing was written. */
export interface DraftNotes {
  readonly cloth: string;
  /** What it is made for, and when. */
  readonly event: string;
  /** The shoes it is worn with. */
  readonly heel: string;
  /** What was worn under it when the tape was taken. */
  readonly bra: string;
}

/** A draft kept as it was. `on` is an ISO day. */
export interface ComparisonDraft {
  readonly on: string;
  /** What the maker calls it; left out where it has no name. */
  readonly name?: string;
  readonly measurements: Measurements;
  readonly sides?: BodySides;
  readonly style: Style;
  /** Left out where there were none. */
  readonly fittings?: readonly Fitting[];
}

/** One day's numbers of the tape. `on` is an ISO day; null where it was not written down. */
interface TapeSet {
  readonly on: string | null;
  readonly measurements: Measurements;
}

export interface Client {
  readonly id: string;
  readonly name: string;
  readonly unit: Unit;
  /** The numbers in use: the last set, as corrected since. */
  readonly measurements: Measurements;
  /** The ISO day they were taken; null where it was not written down. */
  readonly takenOn: string | null;
  /** Sets taken before, oldest first. */
  readonly earlier: readonly TapeSet[];
  /** Readings of a measurement in the set in use, mm, where it was taken more than once. */
  readonly readings: Partial<Readonly<Record<MeasurementName, readonly number[]>>>;
  /** Measurements in use that were not taken but estimated from others; said wherever they are used. */
  readonly estimated: readonly MeasurementName[];
  /** How she differs left to right; left out where both sides are drafted alike. */
  readonly sides?: BodySides;
  /** Out of the way in the list of clients. */
  readonly archived: boolean;
  /** ISO instant at which she was last opened; null for never. */
  readonly lastUsed: string | null;
  readonly drafts: readonly SavedDraft[];
  readonly openDraft: string;
  /** What was printed for her, oldest first. */
  readonly prints: readonly KeptPrint[];
  /** ISO instant of her last change; left out where that is not known. */
  readonly changed?: string;
  /** She came with the page, to try things out on, and has not been given another name. */
  readonly invented?: true;
}

/** What the list of clients shows of one. */
export interface ClientEntry
  extends Pick<Client, 'id' | 'name' | 'archived' | 'lastUsed'>,
    Partial<Pick<Client, 'changed'>> {
  readonly draftNames: readonly string[];
}

/** A client that was not opened since the page was: what the list shows of her, and her record as it is kept. */
export interface UnopenedClient extends ClientEntry {
  readonly record: string;
}

/** A style that the maker kept under a name of her own, for whoever is to wear it. `on` is the ISO day. */
export interface OwnStyle {
  readonly id: string;
  readonly name: string;
  readonly on: string;
  readonly style: Style;
}

export interface Book {
  readonly version: typeof BOOK_VERSION;
  /** In the order in which they were kept. */
  readonly styles: readonly OwnStyle[];
  /** Those that were opened since the page was; at least one. */
  readonly clients: readonly Client[];
  /** All others, by id; left out where there are none. */
  readonly unopened?: readonly UnopenedClient[];
  readonly openClient: string;
}

/** The open client; the first one where the book names one it does not hold. */
export function openClient(book: Book): Client {
  return book.clients.find((client) => client.id === book.openClient) ?? (book.clients[0] as Client);
}

/** The open draft of a client; the first one where it names one it does not hold. */
export function openDraftOf(client: Client): SavedDraft {
  return (
    client.drafts.find((savedDraft) => savedDraft.id === client.openDraft) ?? (client.drafts[0] as SavedDraft)
  );
}
