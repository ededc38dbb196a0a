// Markup written by hand: text that cannot break out of it, and numbers without needless digits.

/** Text for between tags or inside a quoted attribute of XML or HTML. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);

/** Millimetres to the thousandth, without a trailing 0 or a −0. */
export const mm = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);
