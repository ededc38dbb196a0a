// Finds a ready style by the word after --style.

import { CLI, type FileStyle, NAMED_STYLES, type Read, refuse } from '../../document';

/** The ready style of this name, or a fault that lists the names there are. */
export function styleNamed(name: string): Read<FileStyle> {
  const value = NAMED_STYLES.get(name);
  return value
    ? { ok: true, value }
    : refuse('--style', CLI.styleUnknown({ name, styles: [...NAMED_STYLES.keys()] }));
}
