import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Gesture, IDLE, type PullState, pull } from '../../../src/table/gestures/pull';

const press: Gesture = { kind: 'press', handle: 'axis:a', at: { x: 100, y: 50 }, value: 12, along: 'x' };
const to = (x: number, y: number): Gesture => ({ kind: 'move', at: { x, y } });

function run(events: readonly Gesture[]) {
  let state: PullState = IDLE;
  return events.map((event) => {
    const step = pull(state, event);
    ({ state } = step);
    return step;
  });
}

describe('a pull', () => {
  it('tells the travel from where it was pressed, and keeps it on release', () => {
    const steps = run([press, to(110, 50), to(90, 46), { kind: 'release' }]);
    expect(steps.map(({ effect }) => effect)).toEqual(['none', 'preview', 'preview', 'commit']);
    expect(steps.map(({ travel }) => travel)).toEqual([null, { x: 10, y: 0 }, { x: -10, y: -4 }, null]);
    expect(steps.at(-1)?.state).toEqual(IDLE);
  });

  it('never moves anything under a click whose hand shakes', () => {
    const steps = run([press, to(101, 51), to(99, 49), { kind: 'release' }]);
    expect(steps.map(({ effect }) => effect)).toEqual(['none', 'none', 'none', 'none']);
  });

  it('moves a handle the less, the farther the pointer is off its way', () => {
    const [, near, far] = run([press, to(120, 60), to(140, 50 + 112)]);
    expect(near?.travel?.x).toBe(20);
    // twice as far off as it moves it whole: by half
    expect(far?.travel?.x).toBe(30);
  });

  it('puts the old number back when it is broken off', () => {
    expect(run([press, to(140, 50), { kind: 'cancel' }]).at(-1)?.effect).toBe('restore');
    expect(run([press, { kind: 'cancel' }]).at(-1)?.effect).toBe('none');
  });

  it('stays with the first handle when another is pressed', () => {
    const steps = run([press, to(140, 50), { ...press, handle: 'leg:b' }, to(150, 50)]);
    expect(steps.at(-1)?.state).toMatchObject({ handle: 'axis:a' });
  });

  it('ends idle after every release or cancel, with at most one commit a press', () => {
    const event = fc.oneof(
      fc.constant<Gesture>(press),
      fc.tuple(fc.integer({ min: 0, max: 300 }), fc.integer({ min: 0, max: 300 })).map(([x, y]) => to(x, y)),
      fc.constant<Gesture>({ kind: 'release' }),
      fc.constant<Gesture>({ kind: 'cancel' }),
    );
    fc.assert(
      fc.property(fc.array(event, { maxLength: 40 }), (events) => {
        const steps = run(events);
        let presses = 0;
        let ends = 0;
        steps.forEach((step, i) => {
          const { kind } = events[i] as Gesture;
          if (kind === 'press') presses += 1;
          if (step.effect === 'commit' || step.effect === 'restore') ends += 1;
          if (kind === 'release' || kind === 'cancel') expect(step.state).toEqual(IDLE);
          expect(step.travel !== null).toBe(step.effect === 'preview');
        });
        expect(ends).toBeLessThanOrEqual(presses);
      }),
    );
  });
});
