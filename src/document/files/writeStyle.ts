// Writes a style as a file that the headless drafter reads: every field, in mm.

import type { Style } from '../../engine';

export function writeStyle(name: string, style: Style): string {
  return `${JSON.stringify({ name, unit: 'mm', ...style }, null, 1)}\n`;
}
