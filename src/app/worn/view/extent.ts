// How far a garment reaches.

/** How high its top and hem lie, and how far from the axis it reaches, mm. */
export interface Extent {
  readonly top: number;
  readonly bottom: number;
  readonly out: number;
}

/** @param places three numbers a vertex, z up */
export function extentOf(places: Float32Array | Float64Array): Extent {
  let [top, bottom, out] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, 0];
  for (let i = 2; i < places.length; i += 3) {
    top = Math.max(top, places[i] as number);
    bottom = Math.min(bottom, places[i] as number);
    out = Math.max(out, Math.hypot(places[i - 2] as number, places[i - 1] as number));
  }
  return { top, bottom, out };
}
