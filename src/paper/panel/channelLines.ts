// The channels of the bones as they are drawn on the panels.

import type { Draft, Style } from '../../engine';
import { channelsOf } from '../making/channels';
import type { MakingSettings } from '../making/settings';
import type { Stroke } from './strokes';

/** The sides of the channels on each panel and the ends of their bones, by the panel's id, in the coordinates of its block. */
export function channelLines(
  draft: Draft,
  style: Style,
  settings: MakingSettings,
): ReadonlyMap<string, readonly Stroke[]> {
  const found = new Map<string, Stroke[]>();
  for (const { piece, sides, ends } of channelsOf(draft, style, settings)) {
    const lines = found.get(piece) ?? [];
    lines.push(...[...sides, ...ends].map((points): Stroke => ({ kind: 'bone', points })));
    found.set(piece, lines);
  }
  return found;
}
