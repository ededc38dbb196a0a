// Deflates what is kept. Fetched after the page is shown; until then records are kept plain.

import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { bytesOfText, textOfBytes } from './bits';
import { SHARED_WORDS } from './sharedWords';

/** Of a text that has little in common with others: 15 bits a letter. */
export const pack = (json: string): string => textOfBytes(deflateSync(strToU8(json)));

/** Throws on a text that was not packed. */
export const unpack = (text: string): string => strFromU8(inflateSync(bytesOfText(text)));

const dictionary = strToU8(SHARED_WORDS);

/**
 * A record's body, deflated with what all records share: 8 bits a letter. A browser keeps and reads such letters in a byte each,
 * where letters of more bits take two.
 */
export const packBody = (json: string): string => strFromU8(deflateSync(strToU8(json), { dictionary }), true);

/** Throws on a text that is none of {@link packBody}. */
export const unpackBody = (text: string): string =>
  strFromU8(inflateSync(strToU8(text, true), { dictionary }));
