// Shows the last of what a pull requests, at most once a frame. What took long to compute is shown in the next frame: computing and
// drawing in one frame would block the screen.

/** Computes something, and returns the function that shows it. */
type Prepare = () => () => void;

export interface FrameThrottle {
  /** Shows this in one of the next frames, in place of an earlier request that is not computed yet. */
  readonly request: (prepare: Prepare) => void;
  /** Shows the last request at once, unless it is shown already. */
  readonly flush: () => void;
  /** Drops what is not shown yet. */
  readonly cancel: () => void;
}

/** What took longer to compute is shown in the next frame; a frame lasts about 17 ms. */
const LONG_MS = 3;

/** A throttle that uses `requestAnimationFrame`. */
export function throttleToFrame(): FrameThrottle {
  let requested: Prepare | null = null;
  let computed: (() => void) | null = null;
  let frame: number | null = null;

  const draw = (): void => {
    frame = null;
    if (!computed && requested) {
      const prepare = requested;
      requested = null;
      const start = performance.now();
      computed = prepare();
      if (performance.now() - start > LONG_MS) {
        schedule();
        return;
      }
    }
    const show = computed;
    computed = null;
    show?.();
    if (requested) schedule();
  };
  const schedule = (): void => {
    frame ??= requestAnimationFrame(draw);
  };
  const cancel = (): void => {
    if (frame !== null) cancelAnimationFrame(frame);
    frame = null;
    requested = null;
    computed = null;
  };
  return {
    request: (prepare) => {
      requested = prepare;
      schedule();
    },
    flush: () => {
      const show = requested?.() ?? computed;
      cancel();
      show?.();
    },
    cancel,
  };
}
