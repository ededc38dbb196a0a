// What a pointer and a keyboard do, as W3C WebDriver and WebDriver BiDi write it.

import type { Key, Place } from './engine';

const CODES: Readonly<Record<Key, string>> = { Enter: '\uE007', Tab: '\uE004' };

/** Time between two moves of the pointer, ms. */
const MOVE_MS = 20;

export function pullActions(path: readonly Place[]): readonly object[] {
  const moves = path.map(({ x, y }) => ({
    type: 'pointerMove',
    x: Math.round(x),
    y: Math.round(y),
    duration: MOVE_MS,
    origin: 'viewport',
  }));
  const [first, ...others] = moves;
  const actions = [first, { type: 'pointerDown', button: 0 }, ...others, { type: 'pointerUp', button: 0 }];
  return [{ type: 'pointer', id: 'pointer', parameters: { pointerType: 'mouse' }, actions }];
}

export const typeActions = (text: string): readonly object[] => keyActions([...text]);

export const pressActions = (key: Key): readonly object[] => keyActions([CODES[key]]);

function keyActions(values: readonly string[]): readonly object[] {
  const actions = values.flatMap((value) => [
    { type: 'keyDown', value },
    { type: 'keyUp', value },
  ]);
  return [{ type: 'key', id: 'keyboard', actions }];
}
