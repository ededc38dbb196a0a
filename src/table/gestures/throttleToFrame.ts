// Shows what a pull asks for, at most once a frame. What took long to reckon is shown in the frame after: to draft and to
// draw in one would hold the screen up.

/** Reckons something, and gives back what puts it on the screen. */
type Prepare = () => () => void;

export interface FrameThrottle {
  /** Shows this with one of the next frames, instead of what was asked before and is not reckoned yet. */
  readonly ask: (prepare: Prepare) => void;
  /** Shows at once what was asked last, if it is not shown yet. */
  readonly finish: () => void;
  /** Forgets what is not shown yet. */
  readonly forget: () => void;
}

/** Reckoning that took longer has had its frame, of about 17. ms */
const LONG_MS = 3;

export function throttleToFrame(): FrameThrottle {
  let asked: Prepare | null = null;
  let reckoned: (() => void) | null = null;
  let frame: number | null = null;

  const draw = (): void => {
    frame = null;
    if (!reckoned && asked) {
      const prepare = asked;
      asked = null;
      const start = performance.now();
      reckoned = prepare();
      if (performance.now() - start > LONG_MS) {
        wait();
        return;
      }
    }
    const show = reckoned;
    reckoned = null;
    show?.();
    if (asked) wait();
  };
  const wait = (): void => {
    frame ??= requestAnimationFrame(draw);
  };
  const forget = (): void => {
    if (frame !== null) cancelAnimationFrame(frame);
    frame = null;
    asked = null;
    reckoned = null;
  };
  return {
    ask: (prepare) => {
      asked = prepare;
      wait();
    },
    finish: () => {
      const show = asked?.() ?? reckoned;
      forget();
      show?.();
    },
    forget,
  };
}
