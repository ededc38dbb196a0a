import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { throttleToFrame } from '../../../src/table/gestures/throttleToFrame';

/** What was put on the screen, and with which frame. */
let shown: string[] = [];
let frames = 0;
/** ms */
let clock = 0;
let waiting = new Map<number, () => void>();

beforeEach(() => {
  shown = [];
  frames = 0;
  waiting = new Map();
  vi.spyOn(performance, 'now').mockImplementation(() => clock);
  vi.stubGlobal('requestAnimationFrame', (draw: () => void) => {
    const id = waiting.size + 100 * frames + 1;
    waiting.set(id, draw);
    return id;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => waiting.delete(id));
});

afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

function nextFrame(): void {
  frames += 1;
  const due = [...waiting.values()];
  waiting.clear();
  for (const draw of due) draw();
}

/** Takes `takes` ms to compute. */
const preparing =
  (name: string, takes = 1) =>
  () => {
    clock += takes;
    return () => void shown.push(`${name} with frame ${frames}`);
  };

describe('the frame throttle of a pull', () => {
  it('computes and shows in one frame what is quickly computed', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a'));
    expect(shown).toEqual([]);
    nextFrame();
    expect(shown).toEqual(['a with frame 1']);
    expect(waiting.size).toBe(0);
  });

  it('shows only the last of what was requested within one frame', () => {
    const throttle = throttleToFrame();
    for (const name of ['a', 'b', 'c']) throttle.request(preparing(name));
    nextFrame();
    nextFrame();
    expect(shown).toEqual(['c with frame 1']);
  });

  it('leaves what took long to the frame after', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a', 9));
    nextFrame();
    expect(shown).toEqual([]);
    nextFrame();
    expect(shown).toEqual(['a with frame 2']);
    expect(waiting.size).toBe(0);
  });

  it('keeps showing where every frame requests something slow', () => {
    const throttle = throttleToFrame();
    for (let i = 1; i <= 8; i += 1) {
      throttle.request(preparing(String(i), 9));
      nextFrame();
    }
    expect(shown).toEqual(['1 with frame 2', '3 with frame 4', '5 with frame 6', '7 with frame 8']);
    nextFrame();
    nextFrame();
    expect(shown.at(-1)).toBe('8 with frame 10');
  });

  it('shows the last at once on release', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a', 9));
    nextFrame();
    throttle.request(preparing('b', 9));
    throttle.flush();
    expect(shown).toEqual(['b with frame 1']);
    nextFrame();
    expect(shown).toHaveLength(1);
  });

  it('shows at once what was computed and not shown yet', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a', 9));
    nextFrame();
    throttle.flush();
    expect(shown).toEqual(['a with frame 1']);
  });

  it('shows nothing twice', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a'));
    nextFrame();
    throttle.flush();
    expect(shown).toEqual(['a with frame 1']);
  });

  it('shows nothing of a cancelled pull when the next one is released before it moved', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a'));
    throttle.cancel();
    throttle.flush();
    nextFrame();
    expect(shown).toEqual([]);
  });

  it('drops what a cancelled pull requested', () => {
    const throttle = throttleToFrame();
    throttle.request(preparing('a', 9));
    nextFrame();
    throttle.request(preparing('b'));
    throttle.cancel();
    nextFrame();
    nextFrame();
    expect(shown).toEqual([]);
    throttle.request(preparing('c'));
    nextFrame();
    expect(shown).toEqual(['c with frame 4']);
  });
});
