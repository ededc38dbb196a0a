// How a record's body is written: in the present form and in that of the layout before.

import { readFileSync } from 'node:fs';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { packBody, unpackBody } from '../../../src/app/storage/records/packing';
import { readClientRecord } from '../../../src/app/storage/records/readRecord';
import { clientRecord, LAYOUT, splitRecord } from '../../../src/app/storage/records/record';
import { SHARED_WORDS } from '../../../src/app/storage/records/sharedWords';
import { sumOf } from '../../../src/app/storage/records/sum';
import { DEMO_CLIENT, MIGRATIONS, NAMED_STYLES } from '../../../src/document';

/** A record as it was written by a build of the layout. */
const recordOf = (layout: number): string =>
  JSON.parse(readFileSync(`tests/app/storage/fixtures/record-layout-${layout}.json`, 'utf8')).text;

/** What of a record its sum covers, changed, under a sum that is right for it. */
function changed(record: string, change: (rest: string) => string): string {
  const rest = change(record.slice(record.indexOf(' ') + 1));
  return `${sumOf(rest)} ${rest}`;
}

describe('a record', () => {
  it.each([2, 3])('of layout %i is read', (layout) => {
    const text = recordOf(layout);
    expect(splitRecord(text)?.head.layout).toBe(layout);
    const read = readClientRecord(text, MIGRATIONS);
    expect(read).toMatchObject({ kind: 'read', value: { name: 'Client 1' } });
    if (read.kind !== 'read') return;
    expect(read.value.drafts.map(({ name }) => name)).toEqual([
      'Draft 1 of 1',
      'Draft 2 of 1',
      'Draft 3 of 1',
    ]);
    expect(read.value.measurements.waist).toBeCloseTo(851.41, 2);
  });

  it('of layout 2 is of layout 3 once it is written again, and reads as before', () => {
    const before = readClientRecord(recordOf(2), MIGRATIONS);
    if (before.kind !== 'read') throw new Error(before.kind);
    const again = clientRecord(before.value, packBody);
    expect(splitRecord(again)?.head).toMatchObject({ layout: LAYOUT, form: 'shared' });
    expect(readClientRecord(again, MIGRATIONS)).toEqual(before);
  });

  it('whose body is damaged under a right sum is not whole', () => {
    const cut = changed(recordOf(3), (rest) => rest.slice(0, -40));
    expect(readClientRecord(cut, MIGRATIONS)).toEqual({ kind: 'notWhole' });
  });

  it('of a form that is not known is not whole', () => {
    const other = changed(recordOf(3), (rest) => rest.replace('"form":"shared"', '"form":"sung"'));
    expect(readClientRecord(other, MIGRATIONS)).toEqual({ kind: 'notWhole' });
  });
});

describe('a body', () => {
  it('is letters of 8 bits, and any text comes back from them', () => {
    for (const text of ['', '{}', 'ליאת Łęcka 🪡', '\u0000\ud7ff\uffff', JSON.stringify(DEMO_CLIENT)]) {
      const packed = packBody(text);
      expect([...packed].every((letter) => letter.charCodeAt(0) < 256)).toBe(true);
      expect(unpackBody(packed)).toBe(text);
    }
  });

  it('takes less than half of what it takes by itself, in every ready style', () => {
    for (const { style } of NAMED_STYLES.values()) {
      const [draft] = DEMO_CLIENT.drafts;
      const json = JSON.stringify({ ...DEMO_CLIENT, drafts: [{ ...draft, style }] });
      expect(packBody(json).length).toBeLessThan(deflateSync(strToU8(json)).length / 2);
    }
  });

  // Every kept record points back to them.
  it('is read with the same words for ever', () => {
    expect([SHARED_WORDS.length, sumOf(SHARED_WORDS)]).toEqual([10481, 'ogqrmk1jzcui0']);
  });
});
