import { describe, expect, it } from 'vitest';
import { consequence } from '../../../src/app/shell/consequence';
import { addClient, changeClient, changeStyle, DEMO_BOOK, setStation } from '../../../src/document';
import { inches, type Style } from '../../../src/engine';

const styled = (change: (style: Style) => Style) => consequence(DEMO_BOOK, changeStyle(DEMO_BOOK, change));

describe('what is said to come of a change', () => {
  it('is the girth that changed, lacing gap and all', () => {
    // the demo's waist is 29 1/2 in
    const said = styled((style) => ({ ...style, ease: { ...style.ease, waist: inches(-3) } }));
    expect(said).toBe('waist laced 26½ in');
  });

  it('is the panels’ widths where every girth stays', () => {
    const said = styled((style) => setStation(style, 'front-bust', 0.1));
    expect(said).toMatch(/^Front 1 \S+ in wide at the waist, Front 2 /);
  });

  it('is said in the unit of the client', () => {
    const metric = changeClient(DEMO_BOOK, (client) => ({ ...client, unit: 'cm' }));
    const after = changeStyle(metric, (style) => ({ ...style, ease: { ...style.ease, waist: -100 } }));
    expect(consequence(metric, after)).toBe('waist laced 64.9 cm');
  });

  it('says when the draft can no longer be cut', () => {
    expect(styled((style) => ({ ...style, hemBelow: inches(-12) }))).toContain('cannot be cut like this');
  });

  it('is nothing for a change of names, of nothing, or of the client in view', () => {
    expect(consequence(DEMO_BOOK, DEMO_BOOK)).toBe('');
    expect(
      consequence(
        DEMO_BOOK,
        changeClient(DEMO_BOOK, (client) => ({ ...client, name: 'W' })),
      ),
    ).toBe('');
    expect(consequence(DEMO_BOOK, addClient(DEMO_BOOK, 'new', 'Client 2'))).toBe('');
  });
});
