// Shoulders as version 6 of the book has them: what a style does not say of them is left to the draft, which then takes what
// was measured or is usual.

/** What every style was given before, mm: nobody's choice. */
const EARLIER_USUAL = { drop: 25.4, armholeIn: 12.7, front: 12.7, back: 6.35 } as const;

/** Stored numbers may have been rounded. mm */
const ROUNDING_MM = 1e-6;

const isUsual = (value: unknown, usual: number): boolean =>
  typeof value === 'number' && Math.abs(value - usual) < ROUNDING_MM;

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A stored style whose shoulders no longer hold the earlier usual numbers; any other data as it is. */
export function shouldersOfVersion6(style: unknown): unknown {
  if (!isObject(style) || !isObject(style.shoulders)) return style;
  const { drop, armholeIn, intake, ...others } = style.shoulders;
  const kept = isObject(intake)
    ? Object.fromEntries(
        Object.entries(intake).filter(
          ([block, value]) => !isUsual(value, block === 'front' ? EARLIER_USUAL.front : EARLIER_USUAL.back),
        ),
      )
    : {};
  return {
    ...style,
    shoulders: {
      ...others,
      ...(drop === undefined || isUsual(drop, EARLIER_USUAL.drop) ? {} : { drop }),
      ...(armholeIn === undefined || isUsual(armholeIn, EARLIER_USUAL.armholeIn) ? {} : { armholeIn }),
      ...(Object.keys(kept).length > 0 ? { intake: kept } : {}),
    },
  };
}
