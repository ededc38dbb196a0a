// Unpacks a WOFF file into the TrueType file it was made of: WOFF 1.0 (W3C Recommendation, 2012).

import { inflateSync } from 'node:zlib';

const WOFF = 0x774f4646;

/** @throws Error on a file of another kind; the fonts are installed with the program */
export function unpackWoff(file: Uint8Array): Uint8Array {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (view.getUint32(0) !== WOFF) throw new Error('not a WOFF file');
  const count = view.getUint16(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = 44 + 20 * i;
    const [tag, offset, packed, length, sum] = [0, 4, 8, 12, 16].map((each) => view.getUint32(at + each)) as [
      number,
      number,
      number,
      number,
      number,
    ];
    const bytes = file.subarray(offset, offset + packed);
    return { tag, sum, length, bytes: packed < length ? new Uint8Array(inflateSync(bytes)) : bytes };
  });
  const padded = (length: number): number => (length + 3) & ~3;
  const whole = tables.reduce((sum, { length }) => sum + padded(length), 12 + 16 * count);
  const unpacked = new Uint8Array(whole);
  const out = new DataView(unpacked.buffer);
  out.setUint32(0, view.getUint32(4));
  out.setUint16(4, count);
  let offset = 12 + 16 * count;
  for (const [i, { tag, sum, length, bytes }] of tables.entries()) {
    const at = 12 + 16 * i;
    for (const [j, value] of [tag, sum, offset, length].entries()) out.setUint32(at + 4 * j, value);
    unpacked.set(bytes, offset);
    offset += padded(length);
  }
  return unpacked;
}
