// Nonsense in: no throw, no hang, no NaN out, and always a blocking issue that says where.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  DEFAULT_STYLE,
  type Draft,
  draft,
  LEVEL_NAMES,
  MEASUREMENTS,
  type Measurements,
  type Style,
} from '../../src/engine';
import { MEAN_BODY } from '../support/bodies/drawBodies';
import { DRAWN, howMany } from '../support/howMany';

const SEED = 8;
const BODIES = howMany({ few: 300, all: 2000 });
const STYLES = howMany({ few: 400, all: 3000 });

/** Drafts whatever it is given, as a program without types would. */
const draftAny = (measurements: unknown, style: unknown): Draft =>
  draft(measurements as Measurements, style as Style);

const blocked = (made: Draft): boolean => made.issues.some(({ severity }) => severity === 'error');

const expectNumbers = (made: Draft): void => expect(notANumber(made, 'draft')).toBeNull();

/** Path of the first number in a value that is not finite; null when all are. */
function notANumber(value: unknown, path: string): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path;
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, part] of value instanceof Map ? value : Object.entries(value)) {
    const found = notANumber(part, `${path}.${String(key)}`);
    if (found !== null) return found;
  }
  return null;
}

const absurd = fc.oneof(
  fc.constantFrom(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    0,
    -0,
    -1,
    1e-300,
    1e308,
    Number.MAX_SAFE_INTEGER,
  ),
  fc.constantFrom(null, undefined, '', '900', 'wide', true, [], {}, [900], { mm: 900 }),
  fc.double(),
  fc.string(),
);

/** Every path to a value inside plain data. */
function pathsOf(value: unknown, path: readonly string[] = []): string[][] {
  const here = path.length > 0 ? [[...path]] : [];
  if (typeof value !== 'object' || value === null) return here;
  return [...here, ...Object.entries(value).flatMap(([key, part]) => pathsOf(part, [...path, key]))];
}

function withValue(value: unknown, [key, ...rest]: readonly string[], put: unknown): unknown {
  if (key === undefined) return put;
  const copy: unknown[] | Record<string, unknown> = Array.isArray(value)
    ? [...value]
    : { ...(value as object) };
  const parts = copy as Record<string, unknown>;
  if (rest.length === 0 && put === MISSING) delete parts[key];
  else parts[key] = withValue(parts[key], rest, put);
  return copy;
}

const MISSING = Symbol('missing');

describe('absurd measurements', () => {
  it('any value at any place', DRAWN, () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...MEASUREMENTS), absurd), { minLength: 1, maxLength: 4 }),
        (changes) => {
          const body: Record<string, unknown> = { ...MEAN_BODY };
          for (const [{ name }, value] of changes) body[name] = value;
          const made = draftAny(body, DEFAULT_STYLE);
          expectNumbers(made);
          const refused = MEASUREMENTS.filter(({ name, needed, least, most }) => {
            const value = body[name];
            if (value === null || value === undefined) return needed;
            return !(typeof value === 'number' && value >= least && value <= most);
          });
          for (const { name } of refused)
            expect(made.issues).toContainEqual(
              expect.objectContaining({ severity: 'error', at: { field: name } }),
            );
          if (refused.length > 0) expect(made.pieces).toEqual([]);
        },
      ),
      { seed: SEED, numRuns: BODIES },
    );
  });

  it('any body within the spans', DRAWN, () => {
    const body = fc.record(
      Object.fromEntries(
        MEASUREMENTS.map(({ name, needed, least, most }) => {
          const span = fc.oneof(
            fc.constantFrom(least, most),
            fc.double({ min: least, max: most, noNaN: true }),
          );
          return [name, needed ? span : fc.option(span)];
        }),
      ),
    );
    fc.assert(
      fc.property(body, (any) => {
        const made = draftAny(any, DEFAULT_STYLE);
        expectNumbers(made);
        if (made.pieces.length < 6) expect(blocked(made)).toBe(true);
      }),
      { seed: SEED, numRuns: BODIES },
    );
  });

  it.each([[null], [undefined], [3], ['body'], [[]], [{}]])('%j for the whole body', (nothing) => {
    const made = draftAny(nothing, DEFAULT_STYLE);
    expect(made.pieces).toEqual([]);
    expect(made.issues.map(({ at }) => at.field)).toContain('bust');
  });
});

describe('absurd styles', () => {
  const paths = pathsOf(DEFAULT_STYLE);

  it('any value at any place, or none', DRAWN, () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom(...paths), fc.oneof(absurd, fc.constant(MISSING))), {
          minLength: 1,
          maxLength: 3,
        }),
        (changes) => {
          let style: unknown = DEFAULT_STYLE;
          for (const [path, value] of changes)
            if (reaches(style, path)) style = withValue(style, path, value);
          expectNumbers(draftAny(MEAN_BODY, style));
        },
      ),
      { seed: SEED, numRuns: STYLES },
    );
  });

  const reaches = (value: unknown, path: readonly string[]): boolean =>
    path.length <= 1 ||
    (typeof value === 'object' &&
      value !== null &&
      reaches((value as Record<string, unknown>)[path[0] as string], path.slice(1)));

  it.each([[null], [undefined], [3], ['style'], [[]], [{}]])('%j for the whole style', (nothing) => {
    const made = draftAny(MEAN_BODY, nothing);
    expect(made.pieces).toEqual([]);
    expect(made.issues.map(({ at }) => at.field)).toContain('ease.waist');
  });

  it.each(
    paths
      .filter(([first, second]) => first !== 'wedges' || second === undefined || second === '0')
      .map((path) => [path.join('.')]),
  )('without %s', (path) => {
    const made = draftAny(MEAN_BODY, withValue(DEFAULT_STYLE, path.split('.'), MISSING));
    expectNumbers(made);
    expect(blocked(made)).toBe(true);
    expect(made.pieces).toEqual([]);
  });

  it('no wedges at all drafts one piece a block', () => {
    const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges: [] });
    expect(made.pieces.map(({ id }) => id)).toEqual(['front-1', 'back-1']);
    expect(blocked(made)).toBe(false);
  });

  it('seven wedges on a block are too many', () => {
    const wedge = DEFAULT_STYLE.wedges[1];
    const wedges = Array.from({ length: 7 }, (_, i) => ({
      ...(wedge as Style['wedges'][number]),
      id: `w${i}`,
      station: i / 8,
    }));
    expect(draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges }).issues).toContainEqual(
      expect.objectContaining({ code: 'tooManyWedges', severity: 'error', at: { block: 'front' } }),
    );
  });

  it('two wedges of one id are refused, also across the blocks', () => {
    for (const twin of ['front-side', 'back-side']) {
      const wedges = DEFAULT_STYLE.wedges.map((wedge) =>
        wedge.id === twin ? { ...wedge, id: 'front-bust' } : wedge,
      );
      const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges });
      expect(made.pieces).toEqual([]);
      expect(made.issues).toContainEqual(
        expect.objectContaining({
          code: 'styleOutOfRange',
          severity: 'error',
          at: { field: 'wedges.front-bust.id' },
        }),
      );
    }
  });

  it('two wedges on one station leave no panel between them, on the centre line too', () => {
    for (const station of [-1, 0.3]) {
      const twins = ['one', 'two'].map((id) => ({
        id,
        kind: 'through' as const,
        block: 'front' as const,
        station,
        stationAt: {},
        sizing: 'manual' as const,
        intake: { waist: 20 },
        weight: 1,
      }));
      const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges: twins });
      expect(made.issues).toContainEqual(
        expect.objectContaining({ code: 'panelCrossed', severity: 'error' }),
      );
      for (const row of made.proof.ledger) expect(row.sewnGirth).toBeNull();
    }
  });

  it('stations that lead a wedge across its neighbour are refused at the level', () => {
    const wedges = DEFAULT_STYLE.wedges.map((wedge) =>
      wedge.id === 'front-bust' ? { ...wedge, stationAt: { waist: 0.9 } } : wedge,
    );
    expect(draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges }).issues).toContainEqual(
      expect.objectContaining({
        code: 'panelCrossed',
        severity: 'error',
        at: expect.objectContaining({ level: 'waist', block: 'front' }),
      }),
    );
  });

  it('the largest intakes everywhere are refused', () => {
    const all = Object.fromEntries(LEVEL_NAMES.map((level) => [level, 300]));
    const wedges = DEFAULT_STYLE.wedges.map((wedge) => ({
      ...wedge,
      sizing: 'manual' as const,
      intake: all,
    }));
    const made = draft(MEAN_BODY, { ...DEFAULT_STYLE, wedges });
    expectNumbers(made);
    expect(blocked(made)).toBe(true);
  });
});
