// Texts and numbers in XML and HTML.

/** A text escaped for use between tags or inside a quoted attribute of XML or HTML. */
export const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => `&#${character.charCodeAt(0)};`);

/** A length in millimetres to the thousandth, without trailing zeros and never −0. */
export const mm = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);
