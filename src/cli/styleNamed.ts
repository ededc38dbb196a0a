// A style of the table by its name, as it is asked for on the command line.

import { type FileStyle, NAMED_STYLES, type Read, refuse } from '../document';

/** A style of the table, or a fault that lists what is there. */
export function styleNamed(name: string): Read<FileStyle> {
  const value = NAMED_STYLES.get(name);
  return value
    ? { ok: true, value }
    : refuse(
        '--style',
        `There is no style “${name}”; there are: ${[...NAMED_STYLES.keys()].join(', ')}. A file ends in .json.`,
      );
}
