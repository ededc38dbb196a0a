// Reads the tables of a font file: TrueType, or WOFF 1.0 (W3C Recommendation, 2012).

/** Tables by their four-letter names. */
export type FontTables = ReadonlyMap<string, DataView>;

const TRUE_TYPE = 0x00010000;
const WOFF = 0x774f4646;

/**
 * Reads the directory of a font file and unpacks its tables.
 *
 * @throws Error on a file of another kind; the fonts are shipped with the program
 */
export async function fontTables(file: Uint8Array): Promise<FontTables> {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const kind = view.getUint32(0);
  if (kind !== TRUE_TYPE && kind !== WOFF) throw new Error('not a TrueType or WOFF file');
  const [count, first, entry] = kind === WOFF ? [view.getUint16(12), 44, 20] : [view.getUint16(4), 12, 16];
  const tables = new Map<string, DataView>();
  for (let i = 0; i < count; i += 1) {
    const at = first + i * entry;
    const name = String.fromCharCode(...file.subarray(at, at + 4));
    const offset = view.getUint32(kind === WOFF ? at + 4 : at + 8);
    const length = view.getUint32(kind === WOFF ? at + 8 : at + 12);
    const whole = kind === WOFF ? view.getUint32(at + 12) : length;
    const packed = file.subarray(offset, offset + length);
    const table = length < whole ? await unpacked(packed) : packed;
    tables.set(name, new DataView(table.buffer, table.byteOffset, table.byteLength));
  }
  return tables;
}

async function unpacked(bytes: Uint8Array): Promise<Uint8Array> {
  const stream = new Blob([new Uint8Array(bytes)]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
