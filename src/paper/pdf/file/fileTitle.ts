// The title in a file's properties, in any script. Viewers show it in their title bar.

import { cleaned } from '../../text/writable';

/** Titles that are written as they are. */
const PLAIN = /^[ -~]*$/;

export interface FileTitle {
  /** The text to write while the file is made; as long as its replacement. */
  readonly written: string;
  /** Replaces what was written by the title. */
  readonly finish: (file: Uint8Array) => Uint8Array;
}

/**
 * A title of ASCII is written as it is. Any other becomes a hexadecimal string of UTF-16, big-endian with a byte order mark (ISO
 * 32000-1, 7.3.4.3 and 7.9.2.2), because a string in brackets would lose a byte that is a carriage return. It is as long as what
 * it replaces, so that the file's byte offsets stay valid.
 */
export function fileTitle(title: string): FileTitle {
  const text = cleaned(title);
  if (PLAIN.test(text)) return { written: text, finish: (file) => file };
  const units = Array.from({ length: text.length }, (_, i) => text.charCodeAt(i));
  const digits = `FEFF${units.map((unit) => unit.toString(16).padStart(4, '0').toUpperCase()).join('')}`;
  const written = digits.replace(/./g, (digit, i: number) => (i % 2 === 0 ? 'T' : digit));
  return {
    written,
    finish: (file) => {
      const at = indexOfBytes(bytesOf(`(${written})`), file);
      if (at < 0) return file;
      const finished = file.slice();
      finished.set(bytesOf(`<${digits}>`), at);
      return finished;
    },
  };
}

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));

/** The last index of bytes in a file, because the properties are near its end; −1 where they are not in it. */
function indexOfBytes(sought: Uint8Array, file: Uint8Array): number {
  for (let at = file.length - sought.length; at >= 0; at -= 1)
    if (sought.every((byte, i) => file[at + i] === byte)) return at;
  return -1;
}
