// The SVG pattern: well-formed, in named groups, and harmless whatever the names are.

import { describe, expect, it } from 'vitest';
import { patternSvg } from '../../../src/paper';
import { DEMO_SHEET, demoPattern } from '../demoPattern';

const parsed = (text: string): XMLDocument => new DOMParser().parseFromString(text, 'application/xml');

describe('the SVG pattern', () => {
  const input = demoPattern();

  it('has a named group for each panel, and in it one for each kind of line', () => {
    const svg = parsed(patternSvg(input));
    for (const { id } of input.draft.pieces) {
      const group = svg.getElementById(id);
      expect([...(group?.children ?? [])].map((child) => child.id).filter((each) => each !== '')).toEqual(
        ['cut-line', 'sew-line', 'grain', 'marks', 'text'].map((layer) => `${id}.${layer}`),
      );
    }
    const ids = [...svg.querySelectorAll('[id]')].map((each) => each.id);
    expect(new Set(ids).size).toBe(ids.length);
    const ends = [...svg.querySelectorAll('[id$=cut-line] path')].map((path) =>
      path.getAttribute('d')?.at(-1),
    );
    expect(ends).toEqual(input.draft.pieces.map(() => 'Z'));
  });

  it('keeps names of any script, and none of them can break out of it', () => {
    const name = '</title><script>document.title="taken"</script>"\' & Ольга 王芳 \u0000\u202e';
    const text = patternSvg({ ...input, client: { ...input.client, name } });
    const svg = parsed(text);
    expect(svg.querySelector('parsererror')).toBeNull();
    expect(svg.querySelectorAll('script')).toHaveLength(0);
    expect(svg.querySelector('title')?.textContent).toContain(
      '</title><script>document.title="taken"</script>"\' & Ольга 王芳, Winter ball bodice',
    );
  });

  it('says what must not be cut', () => {
    const none = { ...DEMO_SHEET.style, hemBelow: -5000 };
    const nothing = parsed(patternSvg(demoPattern('A4', none)));
    expect(nothing.querySelectorAll('path')).toHaveLength(0);
    expect(nothing.getElementById('warning')?.textContent).toContain('do not cut');
    expect(parsed(patternSvg(input)).getElementById('warning')).toBeNull();
  });

  it('is the same to the letter each time', () => {
    expect(patternSvg(demoPattern())).toBe(patternSvg(demoPattern()));
  });
});
