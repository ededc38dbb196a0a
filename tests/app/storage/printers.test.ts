import { describe, expect, it } from 'vitest';
import { listQuarantined } from '../../../src/app/storage/aside/quarantine';
import { createPrinterStorage, PRINTERS_KEY, printerFaultSentence } from '../../../src/app/storage/printers';
import { FakeStorage } from './fakeStorage';

const now = (): Date => new Date('2026-11-25T10:00:00Z');
const over = (storage: FakeStorage | null) => createPrinterStorage({ storage, now });
const DESK = { name: 'Desk', across: 1.02, down: 1.01 };
const HALL = { name: 'Hall', across: 1, down: 0.99 };

describe('printers', () => {
  it('are kept by name, beside those that another tab kept meanwhile', () => {
    const storage = new FakeStorage();
    const [one, other] = [over(storage), over(storage)];
    expect(one.read()).toEqual({ printers: [], fault: null });
    expect(one.keep(DESK)).toBeNull();
    expect(other.keep(HALL)).toBeNull();
    expect(one.keep({ ...DESK, down: 1 })).toBeNull();
    expect(over(storage).read().printers).toEqual([HALL, { ...DESK, down: 1 }]);
    expect(one.forget('Hall')).toBeNull();
    expect(other.read().printers).toEqual([{ ...DESK, down: 1 }]);
  });

  it.each(['{', '{"version":2,"printers":[]}', '{"version":1,"printers":[{"name":1}]}', '7'])(
    'that cannot be read are said, put aside once and never written over: %s',
    (text) => {
      const storage = new FakeStorage({ [PRINTERS_KEY]: text });
      const printers = over(storage);
      expect(printers.read()).toEqual({ printers: [], fault: 'unreadable' });
      expect(storage.written).toEqual([]);
      expect(printers.keep(DESK)).toBeNull();
      expect(printers.keep(HALL)).toBeNull();
      expect(listQuarantined(storage).map((quarantinedText) => quarantinedText.text)).toEqual([text]);
      expect(printers.read().printers).toEqual([DESK, HALL]);
    },
  );

  it('that cannot be read stay where they are when there is no room to put them aside', () => {
    const storage = new FakeStorage({ [PRINTERS_KEY]: '{' });
    storage.room = 1;
    expect(over(storage).keep(DESK)).toBe('guarding');
    expect(storage.kept.get(PRINTERS_KEY)).toBe('{');
  });

  it('say what a storage does that is absent, refuses or is full', () => {
    expect(over(null).read()).toEqual({ printers: [], fault: 'absent' });
    expect(over(null).keep(DESK)).toBe('absent');
    const storage = new FakeStorage();
    storage.refusesToWrite = true;
    expect(over(storage).keep(DESK)).toBe('refused');
    storage.refusesToWrite = false;
    storage.room = 3;
    expect(over(storage).keep(DESK)).toBe('full');
    storage.refusesToRead = true;
    expect(over(storage).read()).toEqual({ printers: [], fault: 'refused' });
    for (const fault of ['absent', 'refused', 'full', 'guarding', 'unreadable'] as const)
      expect(printerFaultSentence(fault)).toMatch(/^[A-Z].*\.$/);
  });
});
