// Reads the tables of a TrueType file, and the characters that it has. Tables as in ISO/IEC 14496-22.

/** Tables by their four-letter names. */
export type FontTables = ReadonlyMap<string, DataView>;

const TRUE_TYPE = 0x00010000;

/**
 * Reads the directory of a font file.
 *
 * @throws Error on a file of another kind; the fonts are shipped with the program
 */
export function fontTables(file: Uint8Array): FontTables {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (view.getUint32(0) !== TRUE_TYPE) throw new Error('not a TrueType file');
  const tables = new Map<string, DataView>();
  for (let i = 0; i < view.getUint16(4); i += 1) {
    const at = 12 + i * 16;
    const name = String.fromCharCode(...file.subarray(at, at + 4));
    const table = file.subarray(view.getUint32(at + 8), view.getUint32(at + 8) + view.getUint32(at + 12));
    tables.set(name, new DataView(table.buffer, table.byteOffset, table.byteLength));
  }
  return tables;
}

/** Makes a function that gives the offset of a glyph's outline in bytes; the outline ends at the offset of the next one. */
export function glyphOffsets(head: DataView, loca: DataView): (glyphId: number) => number {
  const long = head.getInt16(50) === 1;
  return (glyphId) => (long ? loca.getUint32(glyphId * 4) : loca.getUint16(glyphId * 2) * 2);
}

/** Makes a function that gives the glyph number of a character from a cmap table of format 4 or 12; 0 where the font has none. */
export function glyphIndex(tables: FontTables): (codePoint: number) => number {
  const cmap = tables.get('cmap');
  if (!cmap) return () => 0;
  let [small, large]: [DataView | null, DataView | null] = [null, null];
  for (let i = 0; i < cmap.getUint16(2); i += 1) {
    const at = cmap.getUint32(4 + i * 8 + 4);
    const view = new DataView(cmap.buffer, cmap.byteOffset + at);
    if (view.getUint16(0) === 4) small ??= view;
    if (view.getUint16(0) === 12) large ??= view;
  }
  return (codePoint) => (large ? inGroups(large, codePoint) : small ? inSegments(small, codePoint) : 0);
}

function inGroups(view: DataView, codePoint: number): number {
  const count = view.getUint32(12);
  for (let i = 0; i < count; i += 1) {
    const at = 16 + i * 12;
    const start = view.getUint32(at);
    if (codePoint >= start && codePoint <= view.getUint32(at + 4))
      return view.getUint32(at + 8) + codePoint - start;
  }
  return 0;
}

function inSegments(view: DataView, codePoint: number): number {
  const twice = view.getUint16(6);
  for (let i = 0; i < twice; i += 2) {
    if (codePoint > view.getUint16(14 + i)) continue;
    const start = view.getUint16(16 + twice + i);
    if (codePoint < start) return 0;
    const delta = view.getUint16(16 + 2 * twice + i);
    const offsetAt = 16 + 3 * twice + i;
    const offset = view.getUint16(offsetAt);
    if (offset === 0) return (codePoint + delta) & 0xffff;
    const glyphId = view.getUint16(offsetAt + offset + (codePoint - start) * 2);
    return glyphId === 0 ? 0 : (glyphId + delta) & 0xffff;
  }
  return 0;
}
