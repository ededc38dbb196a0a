// A style as a file of its own, as the headless drafter takes one: every field, in mm.

import type { Style } from '../../engine';

export function writeStyle(name: string, style: Style): string {
  return `${JSON.stringify({ name, unit: 'mm', ...style }, null, 1)}\n`;
}
