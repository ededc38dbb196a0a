// Reads fittings from a file or a backup: every fault stands at its field, as "fittings.0.alterations.1.at.0.a".

import { type Alteration, LEVEL_NAMES, MOST_ALTERED_MM, SEAM_ENDS } from '../../engine';
import { FILES } from '../messages/book/files';
import type { Fitting, KeptAlteration } from '../model/fittings';
import { isObject, type JsonObject } from '../model/isObject';
import { readPlace, readSeam } from '../model/namedPlaces';
import { type Fault, type Read, refuse } from './fault';
import { FittingReader } from './fittingReader';
import { kindOf } from './json';
import { readUnit } from './readLength';

/** Reads a fittings file: `{ unit, fittings: [...] }`, amounts in the file's unit, mm where it names none. */
export function readFittings(data: unknown): Read<readonly Fitting[]> {
  if (!isObject(data)) return refuse('', FILES.fittings.notObject({ kind: kindOf(data) }));
  const unit = readUnit(data.unit);
  if (!unit.ok) return unit;
  const faults: Fault[] = [];
  const read = new FittingReader(unit.value, faults);
  read.knownOnly(data, '', ['unit', 'fittings']);
  const fittings = fittingsOf(data, read);
  return faults.length > 0 ? { ok: false, faults } : { ok: true, value: fittings };
}

const fittingsOf = (data: JsonObject, read: FittingReader): Fitting[] =>
  read.list(data, 'fittings', '').map((given, i): Fitting => {
    const path = `fittings.${i}.`;
    read.knownOnly(given, path, ['date', 'note', 'on', 'alterations']);
    return {
      date: read.date(given, path),
      note: read.text(given, 'note', path),
      on: read.flag(given, 'on', path, true),
      alterations: read
        .list(given, 'alterations', path)
        .flatMap((each, k) => alterationOf(each, `${path}alterations.${k}.`, read) ?? []),
    };
  });

const KINDS = ['seam', 'length', 'edge', 'bustPoint'] as const;
const FIELDS: Readonly<Record<Alteration['kind'], readonly string[]>> = {
  seam: ['kind', 'on', 'seam', 'side', 'at'],
  length: ['kind', 'on', 'between', 'side', 'at'],
  edge: ['kind', 'on', 'edge', 'side', 'at'],
  bustPoint: ['kind', 'on', 'side', 'out', 'down'],
};

function alterationOf(given: JsonObject, path: string, read: FittingReader): KeptAlteration | null {
  const kind = read.needed(given, 'kind', path, KINDS);
  if (kind === null) return null;
  read.knownOnly(given, path, FIELDS[kind]);
  const side = read.word(given, 'side', path, ['both', 'left', 'right'], 'both');
  const on = read.flag(given, 'on', path, true);
  switch (kind) {
    case 'seam': {
      const seam = read.named(given, 'seam', path, readSeam, FILES.fittings.seamUnknown);
      const at = read.list(given, 'at', path, 1).map((each, i) => heightOf(each, `${path}at.${i}.`, read));
      return seam && { kind, seam, side, at, on };
    }
    case 'bustPoint':
      return {
        kind,
        side,
        out: read.amount(given, 'out', path, MOST_ALTERED_MM, 0),
        down: read.amount(given, 'down', path, MOST_ALTERED_MM, 0),
        on,
      };
    case 'length': {
      const between = read.between(given, path);
      return { kind, between, side, at: amountsOf(given, path, read, 2), on };
    }
    case 'edge': {
      const edge = read.needed(given, 'edge', path, ['top', 'hem', 'neckline', 'armhole']);
      return edge && { kind, edge, side, at: amountsOf(given, path, read, 1), on };
    }
  }
}

type SeamAmount = Extract<Alteration, { kind: 'seam' }>['at'][number];

function heightOf(given: JsonObject, path: string, read: FittingReader): SeamAmount {
  read.knownOnly(given, path, ['level', 'edge', 'belowWaist', 'a', 'b']);
  const [a, b] = [
    read.amount(given, 'a', path, MOST_ALTERED_MM),
    read.amount(given, 'b', path, MOST_ALTERED_MM),
  ];
  const heights = [given.level, given.edge, given.belowWaist].filter((each) => each !== undefined);
  if (heights.length !== 1) read.refuse(path.slice(0, -1), FILES.fittings.heightUnknown);
  if (given.edge !== undefined)
    return { height: { kind: 'end', end: read.word(given, 'edge', path, SEAM_ENDS, 'top') }, a, b };
  if (given.belowWaist === undefined)
    return { height: { kind: 'level', level: read.word(given, 'level', path, LEVEL_NAMES, 'waist') }, a, b };
  return { height: { kind: 'belowWaist', mm: read.height(given, path) }, a, b };
}

const amountsOf = (given: JsonObject, path: string, read: FittingReader, least: number) =>
  read.list(given, 'at', path, least).flatMap((each, i) => {
    const own = `${path}at.${i}.`;
    read.knownOnly(each, own, ['place', 'by']);
    const place = read.named(each, 'place', own, readPlace, FILES.fittings.placeUnknown);
    const by = read.amount(each, 'by', own, MOST_ALTERED_MM);
    return place ? [{ place, by }] : [];
  });
