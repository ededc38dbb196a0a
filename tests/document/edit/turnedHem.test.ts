import { describe, expect, it } from 'vitest';
import {
  changeStyle,
  DEMO_BOOK,
  issueSentence,
  readBook,
  readStyle,
  setTurnedHem,
  writeStyle,
} from '../../../src/document';
import { DEFAULT_STYLE, draft } from '../../../src/engine';
import { MEAN_BODY } from '../../support/bodies/drawBodies';

describe('a turned hem', () => {
  const turned = setTurnedHem(DEFAULT_STYLE, true);

  it('is asked for and taken back; without it the style is as it was', () => {
    expect(turned).toEqual({ ...DEFAULT_STYLE, turnedHem: true });
    expect(setTurnedHem(turned, false)).toEqual(DEFAULT_STYLE);
  });

  it('is kept in the book', () => {
    const book = changeStyle(DEMO_BOOK, (style) => setTurnedHem(style, true));
    expect(readBook(JSON.stringify(book))).toEqual({ kind: 'book', book });
  });

  it('comes back from a style file as it was written', () => {
    expect(readStyle(JSON.parse(writeStyle('Ferry', turned)), 'file')).toEqual({
      ok: true,
      value: { title: 'Ferry', style: turned },
    });
    const wrong = readStyle({ turnedHem: 'up' }, 'file');
    expect(wrong.ok ? [] : wrong.faults.map(({ path }) => path)).toEqual(['turnedHem']);
  });

  it('without an allowance is said to have nothing to turn', () => {
    const none = { ...turned, allowances: { ...turned.allowances, hem: 0 } };
    const { issues } = draft(MEAN_BODY, none);
    const said = issues.filter(({ code }) => code === 'hemNeedsAllowance');
    expect(said.map((issue) => issueSentence(issue, { unit: 'cm', style: none }))).toEqual([
      'The hem is to be turned up, but it has no allowance to turn. Give it one, or bind the hem.',
    ]);
  });
});
