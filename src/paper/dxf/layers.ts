// Layers of a pattern piece, with their numbers in ASTM D6673 (ANSI/AAMA-292), the sewn-product interchange standard.

interface Layer {
  readonly name: string;
  /** An index of the format's colours; 7 is the foreground. */
  readonly colour: number;
}

export const LAYERS = {
  cut: { name: '1', colour: 7 },
  turnPoint: { name: '2', colour: 1 },
  curvePoint: { name: '3', colour: 3 },
  notch: { name: '4', colour: 1 },
  mirror: { name: '6', colour: 5 },
  grain: { name: '7', colour: 3 },
  internal: { name: '8', colour: 4 },
  drill: { name: '13', colour: 6 },
  sew: { name: '14', colour: 5 },
} as const satisfies Readonly<Record<string, Layer>>;
