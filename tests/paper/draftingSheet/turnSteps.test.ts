// The step that turns a bust dart into the side seam: who drafts the dart in the neckline by the steps before it and turns by this one
// comes out at the finished front.

import { describe, expect, it } from 'vitest';
import { parseLength } from '../../../src/document';
import { draft, type Point } from '../../../src/engine';
import { draftingSheet } from '../../../src/paper/draftingSheet/draftingSheet';
import { MEAN_BODY } from '../../support/bodies/drawBodies';
import { withShoulders } from '../../support/bodies/sizedBodies';
import { bustPointOf } from '../../support/judges/sideDart';
import { BUST_DART, beforeTurning, DARTED, inSideSeam } from '../../support/styles/sideDart';
import { demoPattern } from '../demoPattern';

const HAND_MM = 25.4 / 16;
const BODY = withShoulders(MEAN_BODY);

const sheetOf = (style: typeof DARTED) => {
  const pattern = demoPattern('A4', style);
  return draftingSheet({
    ...pattern,
    client: { ...pattern.client, measurements: BODY },
    draft: draft(BODY, style),
  });
};

const TURN = /turn the bust dart/;
const read = (text: string | undefined): number => {
  const parsed = parseLength(text ?? '', 'in');
  if (!parsed.ok) throw new Error(`“${text}” is no length`);
  return parsed.mm;
};
const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

describe('the sheet of a bust dart in the side seam', () => {
  const style = inSideSeam();
  const steps = sheetOf(style).steps;
  const turn = steps.find(({ heading }) => TURN.test(heading));
  const places = new Map(
    (turn?.tables[0]?.rows ?? []).map(([name = '', x, y]) => [name, { x: read(x), y: read(y) }]),
  );
  const [lower, upper, point, underarm] = [
    'Dart, lower end at the side',
    'Dart, upper end at the side',
    'Dart, point',
    'Side seam, upper end',
  ].map((name) => places.get(name) as Point) as [Point, Point, Point, Point];
  const front = draft(BODY, style).pieces[0];
  const dart = front?.darts.find(({ wedge }) => wedge === BUST_DART);

  it('has all steps up to the turn as for the dart in the neckline, number for number', () => {
    const before = steps.slice(0, steps.indexOf(turn as (typeof steps)[number]));
    const plain = sheetOf(beforeTurning()).steps;
    expect(before.length).toBeGreaterThan(10);
    expect(before.map(({ heading, tables, sentences }) => ({ heading, tables, sentences }))).toEqual(
      plain.slice(0, before.length).map(({ heading, tables, sentences }) => ({ heading, tables, sentences })),
    );
  });

  it('has the ends of the dart, its point and the underarm where the front is cut', () => {
    expect(apart(lower, dart?.inner.at(-1) as Point)).toBeLessThan(HAND_MM);
    expect(apart(upper, dart?.outer.at(-1) as Point)).toBeLessThan(HAND_MM);
    expect(apart(point, dart?.inner[0] as Point)).toBeLessThan(HAND_MM);
    const armhole = front?.edges.find(({ role }) => role === 'armhole')?.points[0];
    expect(apart(underarm, armhole as Point)).toBeLessThan(HAND_MM);
  });

  it('swings the armhole of the steps before it to where the front has it', () => {
    const apex = bustPointOf(BODY, style);
    const rad =
      Math.atan2(upper.y - apex.y, upper.x - apex.x) - Math.atan2(lower.y - apex.y, lower.x - apex.x);
    const rows =
      steps.find(({ heading }) => heading === 'Front: neckline, shoulder and armhole')?.tables[0]?.rows ?? [];
    const from = rows.findIndex(([name]) => name === 'Front 1, armhole');
    const drawn = rows.slice(from).filter(([name], i) => i === 0 || name === '');
    expect(drawn.length).toBeGreaterThan(3);
    const armhole = front?.edges.find(({ role }) => role === 'armhole')?.points ?? [];
    for (const [, x, y] of drawn) {
      const [dx, dy] = [read(x) - apex.x, read(y) - apex.y];
      const swung = {
        x: apex.x + dx * Math.cos(rad) - dy * Math.sin(rad),
        y: apex.y + dx * Math.sin(rad) + dy * Math.cos(rad),
      };
      expect(Math.min(...armhole.map((each) => apart(each, swung)))).toBeLessThan(2 * HAND_MM);
    }
  });

  it('says how far below the armhole, how wide, how short and how long the legs are', () => {
    const said = turn?.sentences.join(' ') ?? '';
    for (const length of ['2 below the armhole', '1 from the bust point']) expect(said).toContain(length);
    const [, width] = /opens (\S+) at the side/.exec(said) ?? [];
    const [, leg] = /(\S+) long each/.exec(said) ?? [];
    expect(Math.abs(read(width) - apart(lower, upper))).toBeLessThan(2 * HAND_MM);
    expect(Math.abs(read(leg) - apart(point, lower))).toBeLessThan(2 * HAND_MM);
  });

  it('is not there for a dart in any other edge', () => {
    expect(sheetOf(DARTED).steps.some(({ heading }) => TURN.test(heading))).toBe(false);
  });
});
