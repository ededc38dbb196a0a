// Reads from a client file how a body differs left to right.

import { type BodySides, SIDE_LEVELS } from '../../engine';
import type { Fault } from './fault';
import { PartReader } from './partReader';
import type { FileUnit } from './readLength';

/**
 * Shares are parts of the girth; how much lower a level sits on the right is a length in the file's unit. Null where nothing
 * is given. Faults are added to the list, each at its field.
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
