// Fittings as they stand in a backup and in a file of fittings, lengths in mm.

import type { SeamHeight } from '../../../engine';
import type { Fitting, KeptAlteration } from '../fittings';
import { isObject } from '../isObject';
import { placeWritten, readPlace, readSeam } from '../namedPlaces';

export const fittingsWritten = (fittings: readonly Fitting[]): object[] =>
  fittings.map(({ alterations, ...fitting }) => ({
    ...fitting,
    alterations: alterations.map(alterationWritten),
  }));

function alterationWritten(alteration: KeptAlteration): object {
  switch (alteration.kind) {
    case 'seam':
      return {
        ...alteration,
        seam: placeWritten(alteration.seam),
        at: alteration.at.map(({ height, a, b }) => ({ ...heightWritten(height), a, b })),
      };
    case 'bustPoint':
      return alteration;
    default:
      return {
        ...alteration,
        at: alteration.at.map(({ place, by }) => ({ place: placeWritten(place), by })),
      };
  }
}

function heightWritten(height: SeamHeight): object {
  switch (height.kind) {
    case 'level':
      return { level: height.level };
    case 'end':
      return { edge: height.end };
    case 'belowWaist':
      return { belowWaist: height.mm };
  }
}

/** Fittings of a backup in the shape in which the book has them; what is of another shape stays as it is, for the schema to find. */
export function fittingsOfBackup(data: unknown): unknown {
  if (!Array.isArray(data)) return data;
  return data.map((fitting: unknown) =>
    isObject(fitting) && Array.isArray(fitting.alterations)
      ? { ...fitting, alterations: fitting.alterations.map(alterationOfBackup) }
      : fitting,
  );
}

function alterationOfBackup(data: unknown): unknown {
  if (!isObject(data) || !Array.isArray(data.at)) return data;
  const seam = data.kind === 'seam' ? { seam: readSeam(data.seam) ?? data.seam } : {};
  return { ...data, ...seam, at: data.at.map(amountOfBackup) };
}

function amountOfBackup(data: unknown): unknown {
  if (!isObject(data)) return data;
  const { level, edge, belowWaist, place, ...amounts } = data;
  if (place !== undefined) return { ...amounts, place: readPlace(place) ?? place };
  if (level !== undefined) return { ...amounts, height: { kind: 'level', level } };
  if (edge !== undefined) return { ...amounts, height: { kind: 'end', end: edge } };
  return belowWaist === undefined ? data : { ...amounts, height: { kind: 'belowWaist', mm: belowWaist } };
}
