import { describe, expect, it } from 'vitest';
import {
  type Change,
  changeSentence,
  sameChange,
  setEnds,
  setStation,
  wedgePlaceOf,
} from '../../../../src/document';
import { DEFAULT_STYLE } from '../../../../src/engine';

const wedge = wedgePlaceOf('front-side', DEFAULT_STYLE);

describe('the name of a change', () => {
  it.each<[Change, string]>([
    [{ code: 'passingChangeKept' }, 'last change'],
    [{ code: 'clientBroughtBack', name: 'Wren' }, 'took Wren from the archive'],
    [{ code: 'draftRemoved', name: 'Toile' }, 'took off Toile'],
    [{ code: 'styleLaid', title: 'Harbour' }, 'style Harbour'],
    [{ code: 'styleRemoved', title: 'Harbour' }, 'took out Harbour'],
    [{ code: 'measurementSet', measurement: 'waistToLap' }, 'waist to lap, seated'],
    [{ code: 'estimateTaken', measurement: 'hip' }, 'estimated hip girth'],
    [{ code: 'readingSet', measurement: 'waist', which: 2 }, 'third reading of waist girth'],
    [{ code: 'leftHalfSet', level: 'underBust' }, 'left half at the under-bust'],
    [{ code: 'rightLowerSet', level: 'hip' }, 'right hip line lower by'],
    [{ code: 'garmentLengthSet', field: 'closure.lacingGap' }, 'lacing gap'],
    [{ code: 'edgeShapeSet', edge: 'hem' }, 'hem’s shape'],
    [{ code: 'edgeNodeSet', edge: 'top', node: 'bustLine' }, 'top edge at the bust line'],
    [{ code: 'topEdgeMoved', from: 'overBust' }, 'top edge above the over-bust line'],
    [{ code: 'shoulderNumberSet', number: 'intake.back' }, 'back wedge at mid-shoulder'],
    [{ code: 'shouldersSet', kind: 'band' }, 'off-shoulder band'],
    [{ code: 'extraLengthSet', path: 'extras.straps.width' }, 'strap width'],
    [{ code: 'allowanceSet', edge: 'centre' }, 'allowance, centre edges'],
    [{ code: 'wedgeMoved', wedge }, 'side-front wedge: distance from the centre line'],
    [{ code: 'intakePulled', wedge, level: 'highHip' }, 'side-front wedge: intake at the high hip'],
    [{ code: 'axisBent', wedge, level: 'hip' }, 'side-front wedge: axis from the centre line at the hip'],
    [{ code: 'wedgeEndsSet', wedge, ends: 'openAtTop' }, 'side-front wedge open at the top edge'],
    [{ code: 'dartPointPulled', wedge, end: 'upper' }, 'side-front wedge, upper point'],
    [
      { code: 'dartSlanted', wedge, end: 'lower' },
      'side-front wedge, lower point: distance from the centre line',
    ],
    [{ code: 'wedgeRemoved', wedge: null }, 'took off the wedge'],
  ])('%o', (change, sentence) => {
    expect(changeSentence(change)).toBe(sentence);
  });

  it('calls a wedge by where it stands, and by its number among those beside it', () => {
    const dart = setEnds(setStation(DEFAULT_STYLE, 'front-bust', 0.3), 'front-bust', 'closed', {
      top: -200,
      bust: -100,
      waist: 0,
      hem: 120,
    });
    expect(wedgePlaceOf('front-bust', dart)).toEqual({
      block: 'front',
      place: 'side',
      kind: 'dart',
      number: 1,
    });
    const beside = setStation(DEFAULT_STYLE, 'front-bust', 0.3);
    expect(wedgePlaceOf('front-side', beside)).toMatchObject({ place: 'side', number: 2 });
    expect(wedgePlaceOf('nobody', beside)).toBeNull();
  });
});

it('is the same change where code and values are', () => {
  const removed: Change = { code: 'clientRemoved', name: 'Wren' };
  expect(sameChange(removed, { name: 'Wren', code: 'clientRemoved' })).toBe(true);
  expect(sameChange(removed, { code: 'clientRemoved', name: 'Ada' })).toBe(false);
  expect(sameChange(removed, { code: 'clientCopied', name: 'Wren' })).toBe(false);
});
