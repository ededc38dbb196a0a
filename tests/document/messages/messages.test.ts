import { describe, expect, it } from 'vitest';
import {
  DEMO_CLIENT,
  edgeName,
  issueSentence,
  LEVEL_WORDS,
  MEASUREMENT_WORDS,
  NAMED_STYLES,
  pieceLabel,
  SAFETY_CAUTIONS,
  SAFETY_STANDING,
  seamLabel,
  seamName,
  wedgeNameOf,
  wedgeShortNameOf,
} from '../../../src/document';
import {
  balancedWedge,
  DEFAULT_STYLE,
  draft,
  type Issue,
  inches,
  LEVEL_NAMES,
  MEASUREMENTS,
  type Measurements,
  type Side,
  type Style,
} from '../../../src/engine';
import {
  identifyCentre,
  identifyDart,
  identifyPiece,
  identifyShoulder,
  identifySideSeam,
  identifyWedgeSeam,
} from '../../../src/engine/terms/identity';
import { ISSUE_KINDS } from '../../../src/engine/terms/issue';

const inInches = { unit: 'in', style: DEFAULT_STYLE } as const;
const inCm = { unit: 'cm', style: DEFAULT_STYLE } as const;

/** Every issue of the draft of a changed demo client in a changed style. */
const issuesOf = (lengths: Partial<Measurements>, style: Partial<Style> = {}): readonly Issue[] =>
  draft({ ...DEMO_CLIENT.measurements, ...lengths }, { ...DEFAULT_STYLE, ...style }).issues;

const spoken = (
  issues: readonly Issue[],
  code: Issue['code'],
  style: Pick<Style, 'wedges'> = DEFAULT_STYLE,
): string[] =>
  issues.filter((issue) => issue.code === code).map((issue) => issueSentence(issue, { unit: 'in', style }));

describe('names', () => {
  it('has words for every level and measurement', () => {
    for (const level of LEVEL_NAMES) expect(LEVEL_WORDS[level]).toMatch(/^[a-z -]+$/);
    for (const { name } of MEASUREMENTS) {
      expect(MEASUREMENT_WORDS[name].label).toMatch(/^[A-Z]/);
      expect(MEASUREMENT_WORDS[name].how).toMatch(/^[A-Z].*\.$/);
    }
    const labels = MEASUREMENTS.map(({ name }) => MEASUREMENT_WORDS[name].label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  it('names pieces, edges and seams', () => {
    const front = (number: number, side: Side | null = null) => identifyPiece('panel', 'front', number, side);
    expect(pieceLabel(front(1))).toBe('Front 1');
    expect(pieceLabel(identifyPiece('modesty', 'back'))).toBe('Back modesty panel');
    expect(pieceLabel(identifyPiece('facing', 'front'))).toBe('Front facing');
    expect(pieceLabel(identifyPiece('facing', 'front', 0, 'left'))).toBe('Left front facing');
    expect(pieceLabel(identifyPiece('band', 'back'))).toBe('Back shoulder band');
    expect(pieceLabel(identifyPiece('strap', 'front'))).toBe('Strap');
    expect(pieceLabel(front(1, 'left'))).toBe('Left front 1');
    expect(pieceLabel(identifyPiece('sidePanel', 'front', 3, 'right'))).toBe('Right side panel');
    expect(pieceLabel(identifyPiece('panel', 'back', 12))).toBe('Back 12');
    const back = (number: number) => identifyPiece('panel', 'back', number, 'right');
    for (const [seam, name, label] of [
      [identifySideSeam(), 'the side seam', 'Side seam'],
      [identifySideSeam('left'), 'the left side seam', 'Left side seam'],
      [identifyWedgeSeam(front(1), front(2)), 'the seam of Front 1 and Front 2', 'Front 1 + 2'],
      [
        identifyWedgeSeam(front(2), identifyPiece('sidePanel', 'front', 3)),
        'the seam of Front 2 and Side panel',
        'Front 2 + Side panel',
      ],
      [identifyWedgeSeam(back(2), back(1)), 'the seam of Right back 2 and Right back 1', 'Right back 2 + 1'],
      [identifyDart(front(2, 'left'), 'a'), 'the dart in Left front 2', 'Dart in Left front 2'],
      [identifyCentre('back'), 'centre back', 'Centre back'],
      [identifyCentre('back', 'left'), 'centre back on the left', 'Centre back on the left'],
      [identifyShoulder('whole'), 'the shoulder seam', 'Shoulder seam'],
      [
        identifyShoulder('tip', 'right'),
        'the right shoulder seam, its part at the tip',
        'Right shoulder seam, tip',
      ],
    ] as const) {
      expect(seamName(seam)).toBe(name);
      expect(seamLabel(seam)).toBe(label);
    }
    expect(seamLabel(identifyDart(front(2), 'a'), 'Bust dart')).toBe('Bust dart in Front 2');
    expect(edgeName({ role: 'seam', isSideSeam: false }, { block: 'front', edges: [] })).toBe('seam');
    expect(edgeName({ role: 'seam', isSideSeam: true }, { block: 'front', edges: [] })).toBe('side seam');
    expect(edgeName({ role: 'centre', isSideSeam: false }, { block: 'front', edges: [] })).toBe(
      'centre front',
    );
    expect(edgeName({ role: 'centre', isSideSeam: false }, { block: 'back', edges: [] })).toBe('centre back');
    expect(edgeName({ role: 'top', isSideSeam: false }, { block: 'back', edges: [] })).toBe('top edge');
    expect(edgeName({ role: 'hem', isSideSeam: false }, { block: 'back', edges: [] })).toBe('hem');
  });

  it('calls the upper edge a neckline under a shoulder, and on a shoulder band', () => {
    const namesOf = (name: string): Set<string> => {
      const made = draft(DEMO_CLIENT.measurements, NAMED_STYLES.get(name)?.style ?? DEFAULT_STYLE);
      const pieces = [...made.pieces, ...made.extras.filter(({ id }) => id.endsWith('-band'))];
      return new Set(
        pieces.flatMap((piece) =>
          piece.edges
            .filter(({ role }) => role === 'top')
            .map((edge) => `${pieceLabel(piece)}: ${edgeName(edge, piece)}`),
        ),
      );
    };
    expect([...namesOf('princess-bodice')]).toEqual(['Front 1: neckline', 'Back 1: neckline']);
    const band = namesOf('off-shoulder-bridal');
    expect(band).toContain('Front shoulder band: neckline');
    expect(band).toContain('Back shoulder band: neckline');
    expect(band).toContain('Front 1: top edge');
  });

  it.each([
    ['front', -1, 'Centre-front wedge'],
    ['front', -0.5, 'Inner front wedge'],
    ['front', -0.1, 'Inner front wedge'],
    ['front', -0.09, 'Bust wedge'],
    ['front', 0.09, 'Bust wedge'],
    ['front', 0.1, 'Side-front wedge'],
    ['front', 1, 'Side-front wedge'],
    ['back', -1, 'Centre-back wedge'],
    ['back', -0.5, 'Inner back wedge'],
    ['back', 0, 'Back wedge'],
    ['back', 0.5, 'Side-back wedge'],
  ] as const)('calls a wedge of the %s at %d %s', (block, station, name) => {
    const wedge = balancedWedge('w', block, station, 1);
    expect(wedgeNameOf(wedge.id, { wedges: [wedge] })).toBe(name);
  });

  it('numbers wedges that share a name from the centre out, whatever their order', () => {
    const [near, far, back] = [
      balancedWedge('near', 'front', 0.4, 1),
      balancedWedge('far', 'front', 0.7, 1),
      balancedWedge('back', 'back', 0.7, 1),
    ];
    const style = { wedges: [far, back, near] };
    expect(wedgeNameOf(near.id, style)).toBe('Side-front wedge');
    expect(wedgeNameOf(far.id, style)).toBe('Side-front wedge 2');
    expect(wedgeShortNameOf(far.id, style)).toBe('Side-front 2');
    expect(wedgeNameOf('back', style)).toBe('Side-back wedge');
    expect(wedgeNameOf('gone', style)).toBe('wedge');
  });
});

describe('sentences for what a draft says', () => {
  it('speaks of measurements by their labels and in the unit of the maker', () => {
    expect(spoken(issuesOf({ bust: null }), 'measurementMissing')).toEqual([
      'Bust girth is not filled in, and the draft needs it. Measure it and write it down.',
    ]);
    const [issue] = issuesOf({ waist: 3000 });
    expect(issue && issueSentence(issue, inCm)).toBe(
      'Waist girth must be between 30 cm and 250 cm. Look for a slip of the tape or the keyboard.',
    );
    expect(spoken(issuesOf({ waist: 3000 }), 'measurementOutOfRange')).toEqual([
      'Waist girth must be between 12 in and 98 in. Look for a slip of the tape or the keyboard.',
    ]);
  });

  it('names a number of the style, its wedge and its span', () => {
    const side = DEFAULT_STYLE.wedges.map((wedge) =>
      wedge.id === 'front-side' ? { ...wedge, weight: 0, intake: { waist: -300 } } : wedge,
    );
    const style = { wedges: side, hemBelow: 9000, ease: { ...DEFAULT_STYLE.ease, waist: 700 } };
    expect(spoken(issuesOf({}, style), 'styleOutOfRange')).toEqual([
      'The ease at the waist must be from −23 in to 23 in. Set it within that.',
      'The hem below the waist line must be from −15 in to 31 in. Set it within that.',
      'The weight of the side-front wedge must be from 0.01 to 100. Set it within that.',
      'The intake of the side-front wedge at the waist must be from −7½ in to 11½ in. Set it within that.',
    ]);
  });

  it('names a part of the style that has no span', () => {
    const [first] = DEFAULT_STYLE.wedges;
    const wedges = [first, first].filter((wedge) => wedge !== undefined);
    expect(spoken(issuesOf({}, { wedges }), 'styleOutOfRange')).toEqual([
      'The id of the centre-front wedge is missing, stands twice, or is not something the draft knows. Choose it anew.',
    ]);
  });

  it('says where a panel is too narrow and which wedge to ease', () => {
    const wedges = [...DEFAULT_STYLE.wedges, balancedWedge('front-near', 'front', 0.55, 1)];
    const [sentence] = spoken(issuesOf({}, { wedges }), 'panelTooNarrow', { wedges });
    expect(sentence).toMatch(
      /^Front \d is only .+ in wide near the waist; it needs at least ¹³⁄₁₆ in to be sewn\. Move the side-front wedge/,
    );
  });

  it('does not write a width that is too small as if it were enough', () => {
    const values = { width: 19.9, least: 20 };
    const issue: Issue = {
      code: 'panelTooNarrow',
      severity: 'error',
      at: { piece: identifyPiece('panel', 'front', 2), level: 'waist' },
      values,
    };
    expect(issueSentence(issue, inCm)).toMatch(
      /^Front 2 is only a hair less than 2 cm wide near the waist; it needs/,
    );
  });

  it('warns of a waist drawn in too far with the numbers in both lengths and parts', () => {
    const ease = { ...DEFAULT_STYLE.ease, waist: -inches(5) };
    const [issue] = issuesOf({}, { ease }).filter(({ code }) => code === 'waistReductionHigh');
    // 5 / 29.5 = 16.9 %; the ceiling of 4 in or 10 %: common practice, no source
    expect(issue && issueSentence(issue, inInches)).toContain('5 in (17 %); about 4 in or 10 %');
    expect(issue && issueSentence(issue, inCm)).toContain('12.7 cm (17 %); about 10.2 cm or 10 %');
  });

  it('holds the other girths to the ceiling of the waist, and says that it is the waist’s', () => {
    const ease = { ...DEFAULT_STYLE.ease, underBust: -inches(6), hip: -inches(5) };
    const said = issuesOf({}, { ease });
    // The ceiling of 4 in or 10 %: common practice for the waist, no source; 6 / 31.75 = 19 %
    expect(spoken(said, 'ribReductionHigh')).toEqual([
      'The ribs at the under-bust are drawn in by 6 in (19 %); even for a waist about 4 in or 10 %, whichever is less, is the usual ceiling (common practice). Read the cautions for tight lacing and mark them as read, or take less.',
    ]);
    expect(spoken(said, 'girthReductionHigh')[0]).toMatch(
      /^The hip is drawn in by 5 in \(\d+ %\); even for a waist .* Look for a slip of the keyboard, or take less\.$/,
    );
  });

  it('tells of cautions that were read as a fact, without asking for them again', () => {
    const ease = { ...DEFAULT_STYLE.ease, waist: -inches(5), underBust: -inches(6) };
    const asking = issuesOf({}, { ease }).filter(({ code }) => /^(waist|rib)ReductionHigh$/.test(code));
    expect(asking).toHaveLength(2);
    for (const issue of asking) {
      expect(issueSentence(issue, inInches)).toContain('Read the cautions');
      const fact = issueSentence(issue, { ...inInches, read: true });
      expect(fact).toMatch(/drawn in by .*, is the usual ceiling[^.]*\.$/);
      expect(fact).not.toMatch(/[Rr]ead|take less/);
    }
  });

  it('tells apart a garment too short and one turned upside down', () => {
    const short = { topAbove: -inches(5.5), hemBelow: -inches(1) };
    expect(spoken(issuesOf({}, short), 'garmentTooShort')[0]).toMatch(
      /^Only .* is left between top edge and hem/,
    );
    const turned = { topAbove: -inches(9), hemBelow: -inches(3) };
    expect(spoken(issuesOf({}, turned), 'garmentTooShort')[0]).toMatch(/^The hem lies above the top edge/);
  });

  it('says a whole sentence or more for every code, even of an issue without a place and of numbers that are none', () => {
    for (const code of Object.keys(ISSUE_KINDS) as Issue['code'][]) {
      const { severity, values } = ISSUE_KINDS[code];
      const none = Object.fromEntries(values.map((name) => [name, Number.NaN]));
      const bare = issueSentence({ code, severity, at: {}, values: none } as Issue, inInches);
      expect(bare, code).toMatch(/^[A-Z][^\n]*\.$/);
      expect(bare, code).not.toMatch(/undefined|NaN|null|Infinity/);
    }
  });

  it('names what it is about and leaves nothing open in the drafts of odd bodies', () => {
    const odd = [
      issuesOf({ overBust: null, underarmToWaist: null, waistToLap: null }),
      issuesOf({ underarmToWaist: 50, waistToLap: 30 }),
      issuesOf({ neckToWaist: 260 }),
      issuesOf({ neckToUnderBust: 280 }),
      issuesOf({ bustPointWidth: 490 }),
      issuesOf({ frontWaistArc: 700, frontBustArc: 600 }),
      issuesOf({ frontBustArc: 600 }),
      issuesOf({}, { closure: { front: 'busk', back: 'lacing', lacingGap: 0 } }),
      issuesOf({}, { closure: { front: 'fold', back: 'lacing', lacingGap: 0 } }),
      issuesOf({ waist: 300, hip: 300 }, { closure: { front: 'seam', back: 'lacing', lacingGap: 300 } }),
      issuesOf({ bust: 1600, waist: 600 }),
    ].flat();
    expect(new Set(odd.map(({ code }) => code)).size).toBeGreaterThanOrEqual(10);
    for (const issue of odd) {
      const sentence = issueSentence(issue, inCm);
      expect(sentence).toMatch(/^[A-Z][^\n]*\.$/);
      expect(sentence).not.toMatch(/–|undefined|NaN|front-|back-|[a-z][A-Z]/);
    }
  });
});

describe('cautions for tight lacing', () => {
  it('each name where they come from, and the last word is left to a clinician', () => {
    expect(SAFETY_CAUTIONS.length).toBeGreaterThan(5);
    for (const { text, source } of SAFETY_CAUTIONS) {
      expect(text).toMatch(/\.$/);
      expect(source).not.toBe('');
    }
    expect(SAFETY_STANDING).toMatch(/not medical advice.*licensed clinician/s);
  });
});
