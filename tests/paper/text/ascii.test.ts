import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ascii, asciiName } from '../../../src/paper/text/ascii';

describe('ascii', () => {
  it.each([
    ['Wren Abernathy', 'Wren Abernathy'],
    ['Zoë Ångström, Łęcka, Đorđe, Þóra, Straße', 'Zoe Angstrom, Lecka, Dorde, Thora, Strasse'],
    ['Ẹ̀bùn Ọláyínká, Nguyễn Thị Hường', 'Ebun Olayinka, Nguyen Thi Huong'],
    ['Ольга Щукина, Їжакевич', 'Olga Shchukina, Izhakevich'],
    ['Αθηνά Ψαρρού', 'Athina Psarrou'],
    ['3¹¹⁄₁₆ in, 2½ in', '3 11/16 in, 2 1/2 in'],
    ['王芳 😀', '\\U+738B\\U+82B3 \\U+D83D\\U+DE00'],
    ['a\r\n\u202eb\u0000', 'a b'],
    ['', ''],
  ])('writes %j as %j', (text, written) => {
    expect(ascii(text)).toBe(written);
  });

  it('gives one line of 7 bits, whatever it is given', async () => {
    await fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(ascii(text)).toMatch(/^[ -~]*$/);
      }),
    );
  });
});

describe('a name in ASCII', () => {
  it.each([
    ['Wren Abernathy', 'Wren Abernathy'],
    ['Zoë  Ångström', 'Zo\\U+00EB \\U+00C5ngstr\\U+00F6m'],
    ['é Łęcka', '\\U+00E9 \\U+0141\\U+0119cka'],
    ['Ẹ̀bùn', '\\U+1EB8\\U+0300b\\U+00F9n'],
    ['Ольга Щукина, Αθηνά', 'Olga Shchukina, Athina'],
    ['王芳 2½', '\\U+738B\\U+82B3 2 1/2'],
  ])('keeps the marks of %j', (name, written) => {
    expect(asciiName(name)).toBe(written);
  });

  it('is one line of 7 bits, whatever it is', async () => {
    await fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        expect(asciiName(name)).toMatch(/^[ -~]*$/);
      }),
    );
  });
});
