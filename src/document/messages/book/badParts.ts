// What could not be read of a client or a style, in the words of the form.

import { DEFAULT_STYLE, MEASUREMENTS } from '../../../engine';
import type { FaultyPart } from '../../model/kept/readParts';
import { catalogue, listed } from '../catalogue';
import { styleField } from '../remarks/styleFields';
import { inSentence } from '../words/inSentence';
import { MEASUREMENT_WORDS } from '../words/measurements';

/** More than this many are not listed one by one. */
const MOST_NAMED = 6;

/** What cannot be read of a client or a style, as a sentence that goes on behind its name. */
export function badPartsSentence({ bad, mended }: FaultyPart): string {
  if (!mended || bad.length === 0) return BAD_PARTS.nothing;
  const names = [...new Set(bad.map(partName))];
  return BAD_PARTS.without({
    parts: names.slice(0, MOST_NAMED),
    more: Math.max(0, names.length - MOST_NAMED),
  });
}

function partName({ path, draft }: FaultyPart['bad'][number]): string {
  const [field, at, part, ...inner] = path.map(String);
  const measured = MEASUREMENTS.find(({ name }) => name === at);
  if ((field === 'measurements' || field === 'readings') && measured) {
    const name = inSentence(MEASUREMENT_WORDS[measured.name].label);
    return field === 'readings' ? BAD_PARTS.readings({ name }) : name;
  }
  if (field === 'drafts' && draft !== null) {
    if (part === 'comparison') return BAD_PARTS.comparison({ draft });
    if (part === 'fittings' || part === 'notes' || part === 'lays')
      return BAD_PARTS.ofDraft({ part: BAD_PARTS.parts[part], draft });
    if (part === 'style' && inner.length > 0)
      return BAD_PARTS.ofDraft({ part: styleName(inner.join('.')), draft });
    return BAD_PARTS.draft({ draft });
  }
  if (field === 'style' && at !== undefined) return styleName(path.slice(1).join('.'));
  return BAD_PARTS.fields[field as keyof typeof BAD_PARTS.fields] ?? BAD_PARTS.somethingElse;
}

const styleName = (path: string): string =>
  path.startsWith('wedges.') || path.startsWith('rightWedges.')
    ? BAD_PARTS.wedge
    : inSentence(styleField(path, DEFAULT_STYLE).name);

const BAD_PARTS = catalogue({
  nothing: 'cannot be read. Download it to keep it.',
  without: ({ parts, more }: { parts: readonly string[]; more: number }) =>
    `can be brought back without what cannot be read: ${listed(more > 0 ? [...parts, `${more} others`] : parts)}.`,
  readings: ({ name }: { name: string }) => `the readings of ${name}`,
  ofDraft: ({ part, draft }: { part: string; draft: string }) => `${part} of the draft “${draft}”`,
  draft: ({ draft }: { draft: string }) => `the draft “${draft}”`,
  comparison: ({ draft }: { draft: string }) => `what “${draft}” is compared with`,
  wedge: 'one wedge',
  parts: { fittings: 'a part of a fitting', notes: 'a note', lays: 'the lay plans' },
  somethingElse: 'a part without a name',
  fields: {
    id: 'the mark she is known by',
    name: 'the name',
    unit: 'the unit',
    measurements: 'the measurements',
    takenOn: 'the day she was measured',
    earlier: 'measurements taken before',
    readings: 'second readings',
    estimated: 'which measurements were estimated',
    sides: 'the differences between left and right',
    archived: 'whether she is in the archive',
    lastUsed: 'when she was last opened',
    openDraft: 'which draft is open',
    drafts: 'a draft',
    prints: 'the record of a print',
    on: 'the day it was kept',
  },
});
