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

/** Reckoned in `takes` ms. */
const asking =
  (name: string, takes = 1) =>
  () => {
    clock += takes;
    return () => void shown.push(`${name} with frame ${frames}`);
  };

describe('the pace of a pull', () => {
  it('reckons and shows in one frame what is quickly reckoned', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a'));
    expect(shown).toEqual([]);
    nextFrame();
    expect(shown).toEqual(['a with frame 1']);
    expect(waiting.size).toBe(0);
  });

  it('shows only the last of what was asked within one frame', () => {
    const pace = throttleToFrame();
    for (const name of ['a', 'b', 'c']) pace.ask(asking(name));
    nextFrame();
    nextFrame();
    expect(shown).toEqual(['c with frame 1']);
  });

  it('leaves what took long to the frame after', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a', 9));
    nextFrame();
    expect(shown).toEqual([]);
    nextFrame();
    expect(shown).toEqual(['a with frame 2']);
    expect(waiting.size).toBe(0);
  });

  it('goes on showing where every frame asks for something slow', () => {
    const pace = throttleToFrame();
    for (let i = 1; i <= 8; i += 1) {
      pace.ask(asking(String(i), 9));
      nextFrame();
    }
    expect(shown).toEqual(['1 with frame 2', '3 with frame 4', '5 with frame 6', '7 with frame 8']);
    nextFrame();
    nextFrame();
    expect(shown.at(-1)).toBe('8 with frame 10');
  });

  it('shows the last at once when it is let go', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a', 9));
    nextFrame();
    pace.ask(asking('b', 9));
    pace.finish();
    expect(shown).toEqual(['b with frame 1']);
    nextFrame();
    expect(shown).toHaveLength(1);
  });

  it('shows at once what was reckoned and not shown yet', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a', 9));
    nextFrame();
    pace.finish();
    expect(shown).toEqual(['a with frame 1']);
  });

  it('shows nothing twice', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a'));
    nextFrame();
    pace.finish();
    expect(shown).toEqual(['a with frame 1']);
  });

  it('shows nothing of a pull that is broken off when the next one is let go before it moved', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a'));
    pace.forget();
    pace.finish();
    nextFrame();
    expect(shown).toEqual([]);
  });

  it('forgets what a pull that is broken off asked for', () => {
    const pace = throttleToFrame();
    pace.ask(asking('a', 9));
    nextFrame();
    pace.ask(asking('b'));
    pace.forget();
    nextFrame();
    nextFrame();
    expect(shown).toEqual([]);
    pace.ask(asking('c'));
    nextFrame();
    expect(shown).toEqual(['c with frame 4']);
  });
});
