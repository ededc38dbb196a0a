// Bytes as a text that every storage takes whole: 15 bits a letter, all letters below the surrogates and above the controls.

const BITS = 15;
const LOWEST = 0x20;

/** The first letter tells whether the number of bytes is odd, because the last letter may have room for one more. */
export function textOfBytes(bytes: Uint8Array): string {
  const codes: number[] = [LOWEST + (bytes.length % 2)];
  let [held, count] = [0, 0];
  for (const byte of bytes) {
    held = (held << 8) | byte;
    count += 8;
    if (count >= BITS) {
      count -= BITS;
      codes.push(LOWEST + (held >> count));
      held &= (1 << count) - 1;
    }
  }
  if (count > 0) codes.push(LOWEST + (held << (BITS - count)));
  let text = '';
  for (let i = 0; i < codes.length; i += 4096) text += String.fromCharCode(...codes.slice(i, i + 4096));
  return text;
}

/** The bytes again; a text that is none of {@link textOfBytes} gives other bytes. */
export function bytesOfText(text: string): Uint8Array {
  const most = Math.floor(((text.length - 1) * BITS) / 8);
  const length = most % 2 === text.charCodeAt(0) - LOWEST ? most : Math.max(0, most - 1);
  const bytes = new Uint8Array(length);
  let [held, count, at] = [0, 0, 0];
  for (let i = 1; i < text.length && at < length; i += 1) {
    held = (held << BITS) | (text.charCodeAt(i) - LOWEST);
    count += BITS;
    while (count >= 8 && at < length) {
      count -= 8;
      bytes[at] = held >> count;
      at += 1;
      held &= (1 << count) - 1;
    }
  }
  return bytes;
}
