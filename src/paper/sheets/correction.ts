// Making up for a printer that does not keep the scale: what its print of a square measured tells how the next is drawn.

/** How many times larger a print is drawn along the paper's short and its long side; 1 where the printer keeps the scale. */
export interface Correction {
  readonly across: number;
  readonly down: number;
}

export const NO_CORRECTION: Correction = { across: 1, down: 1 };

/** A printer that is further off than this was told to fit the page, or the wrong square was measured. */
const MOST = 0.1;

/** True of numbers within 10 % of 1. */
export const isCorrection = ({ across, down }: Correction): boolean =>
  [across, down].every((factor) => Math.abs(factor - 1) <= MOST + 1e-9);

/**
 * The correction for the next print, from what a square of the last one measured; `last` is the correction that one was
 * printed with. Null where the printer would be more than 10 % off or a measure is no length.
 */
export function correctionFrom(
  sideMm: number,
  measuredMm: { readonly across: number; readonly down: number },
  last: Correction = NO_CORRECTION,
): Correction | null {
  const next = {
    across: (last.across * sideMm) / measuredMm.across,
    down: (last.down * sideMm) / measuredMm.down,
  };
  return isCorrection(next) ? next : null;
}

/** "2.04 % larger across, 1 % smaller down", for the page and the screen. */
export function correctionText({ across, down }: Correction): string {
  const change = (factor: number, name: string): string => {
    const percent = Math.round(Math.abs(factor - 1) * 1e4) / 100;
    return percent === 0 ? `unchanged ${name}` : `${percent} % ${factor > 1 ? 'larger' : 'smaller'} ${name}`;
  };
  return `${change(across, 'across')}, ${change(down, 'down')}`;
}
