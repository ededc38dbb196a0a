// What the maker's printers make of a square, kept beside the book under a key of its own: it belongs to the room, not to
// a client. The same rules as for the book: what cannot be read is put aside, never written over.

import * as z from 'zod/mini';
import { PRINTER_FAULTS } from '../../document';
import { listQuarantined, type QuarantinedText, quarantine } from './aside/quarantine';
import { type SaveFault, saveFaultOf } from './device/saveStatus';
import type { StorageLike } from './device/storageLike';

/** Where the printers lie. */
export const PRINTERS_KEY = 'staywright.printers';
const PRINTERS_VERSION = 1;

/** A printer and how many times larger a print for it is drawn along the paper's short and long side. */
export interface Printer {
  readonly name: string;
  readonly across: number;
  readonly down: number;
}

const printersSchema = z.object({
  version: z.literal(PRINTERS_VERSION),
  printers: z.array(z.object({ name: z.string(), across: z.number(), down: z.number() })),
});

/** `guarding`: what is kept there can be neither read nor put aside, so it is not written over. */
type PrinterFault = SaveFault | 'guarding';

interface ReadPrinters {
  readonly printers: readonly Printer[];
  /** What there is to say of the look into the storage; null when nothing. */
  readonly fault: SaveFault | 'unreadable' | null;
}

export interface PrinterStorage {
  readonly read: () => ReadPrinters;
  /** Keeps a printer under its name, beside those that other tabs have kept. Null when it is kept. */
  readonly keep: (printer: Printer) => PrinterFault | null;
  readonly forget: (name: string) => PrinterFault | null;
}

export interface PrinterStorageOptions {
  /** Null where the browser has none. */
  readonly storage: StorageLike | null;
  readonly now: () => Date;
}

export function createPrinterStorage({ storage, now }: PrinterStorageOptions): PrinterStorage {
  const read = (): ReadPrinters => {
    if (!storage) return { printers: [], fault: 'absent' };
    try {
      const text = storage.getItem(PRINTERS_KEY);
      const printers = text === null ? [] : parsed(text);
      return printers ? { printers, fault: null } : { printers: [], fault: 'unreadable' };
    } catch (error) {
      return { printers: [], fault: saveFaultOf(error) };
    }
  };

  const change = (next: (printers: readonly Printer[]) => readonly Printer[]): PrinterFault | null => {
    if (!storage) return 'absent';
    const { printers, fault } = read();
    if (fault === 'unreadable' && !isQuarantined(storage)) return 'guarding';
    try {
      storage.setItem(PRINTERS_KEY, JSON.stringify({ version: PRINTERS_VERSION, printers: next(printers) }));
      return null;
    } catch (error) {
      return saveFaultOf(error);
    }
  };

  /** Whether what lies unread under the key lies whole under another one too, put there now if it must be. */
  const isQuarantined = (store: StorageLike): boolean => {
    try {
      const text = store.getItem(PRINTERS_KEY) ?? '';
      const there = listQuarantined(store).some(
        (quarantinedText: QuarantinedText) => quarantinedText.text === text,
      );
      return there || quarantine(store, text, now()) !== null;
    } catch {
      return false;
    }
  };

  return {
    read,
    keep: (printer) =>
      change((printers) => [...printers.filter(({ name }) => name !== printer.name), printer]),
    forget: (name) => change((printers) => printers.filter((each) => each.name !== name)),
  };
}

function parsed(text: string): readonly Printer[] | null {
  try {
    const read = z.safeParse(printersSchema, JSON.parse(text));
    return read.success ? read.data.printers : null;
  } catch {
    return null;
  }
}

export const printerFaultSentence = (fault: PrinterFault | 'unreadable'): string => PRINTER_FAULTS[fault];
