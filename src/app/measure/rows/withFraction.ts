// A fraction put behind the whole number of a field, as the keys of fractions do.

/**
 * The text with its sign and its whole number kept and the fraction in place of whatever stood behind them:
 * "34" and "34 1/2" with "3/8" both become "34 3/8", "3/4" becomes "3/8".
 */
export function withFraction(text: string, fraction: string): string {
  const [, sign = '', whole = ''] = /^\s*([-+\u2212]?)\s*(\d+(?!\d*\s*[/\u2044]))?/u.exec(text) ?? [];
  return `${sign}${whole === '' ? '' : `${whole} `}${fraction}`;
}
