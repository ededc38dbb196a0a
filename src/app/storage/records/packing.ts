// Deflates what is kept. Fetched after the page is shown; until then records are kept plain.

import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { bytesOfText, textOfBytes } from './bits';

export const pack = (json: string): string => textOfBytes(deflateSync(strToU8(json)));

/** Throws on a text that was not packed. */
export const unpack = (text: string): string => strFromU8(inflateSync(bytesOfText(text)));
