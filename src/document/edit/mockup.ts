// The style of a mock-up: the same garment with wide allowances, to be let out where it is too tight.

import { inches, type Style } from '../../engine';

/** The usual allowance of a mock-up on every edge; common practice, no source. mm */
export const MOCKUP_ALLOWANCE_MM = inches(1);

/** A style with the same allowance, mm, on every edge and a hem that is not turned up. Sew lines stay where they are. */
export function mockupStyle({ turnedHem: _, ...style }: Style, allowance: number): Style {
  return {
    ...style,
    allowances: { seam: allowance, side: allowance, top: allowance, hem: allowance, centre: allowance },
  };
}
