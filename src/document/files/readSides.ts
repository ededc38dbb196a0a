// How a body differs left to right, from a client file.

import { type BodySides, SIDE_LEVELS } from '../../engine';
import type { Fault } from './fault';
import { PartReader } from './partReader';
import type { FileUnit } from './readLength';

/**
 * Shares are parts of the girth; how much lower a level sits on the right is a length in the file's unit. Null where nothing
 * is given. What is wrong is added to the faults, at its field.
 */
export function readSides(given: unknown, unit: FileUnit, faults: Fault[]): BodySides | null {
  if (given === undefined || given === null) return null;
  const read = new PartReader(unit, faults);
  const sides = read.group({ sides: given }, 'sides', ['leftShare', 'rightLower']);
  read.group(sides, 'rightLower', SIDE_LEVELS, 'sides.');
  return {
    leftShare: read.someLevels(sides, 'leftShare', 'sides.', 'share'),
    rightLower: read.someLevels(sides, 'rightLower', 'sides.', 'length'),
  };
}
