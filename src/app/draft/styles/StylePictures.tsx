// The ready-made styles and the maker's own as pictures, each drafted for the client in view, to one scale.

import { startTransition, useEffect, useState } from 'react';
import { type Client, DRAFT, STYLE_BOOK } from '../../../document';
import { type Draft, draftWhole, type Style } from '../../../engine';
import { GarmentSketch, type SketchFrame } from '../../../table';
import { useOpen } from '../../store/storeContext';
import { type KnownStyle, ownOnes, READY_MADE } from './knownStyle';

const TEXTS = STYLE_BOOK.pictures;

interface StylePicturesProps {
  /** The style that lies on the table, or that it was changed from; null where it is none of them. */
  readonly current: KnownStyle | null;
  readonly isChanged: boolean;
  readonly onUse: (style: KnownStyle) => void;
}

export function StylePictures({ current, isChanged, onUse }: StylePicturesProps) {
  const { book, client } = useOpen();
  const groups = [
    { label: DRAFT.styles.own, styles: ownOnes(book) },
    { label: DRAFT.styles.readyMade, styles: READY_MADE },
  ].filter(({ styles }) => styles.length > 0);
  const all = groups.flatMap(({ styles }) => styles);
  const drawn = useOneByOne(all.length);
  return groups.map(({ label, styles }) => (
    <div key={label} className="style-pictures">
      {groups.length > 1 ? <h3>{label}</h3> : null}
      <ul>
        {styles.map((each) => (
          <li key={each.key}>
            <Picture
              known={each}
              client={client}
              isDrawn={all.indexOf(each) < drawn}
              isCurrent={each.key === current?.key}
              isChanged={isChanged}
              onUse={() => onUse(each)}
            />
          </li>
        ))}
      </ul>
    </div>
  ));
}

interface PictureProps {
  readonly known: KnownStyle;
  readonly client: Client;
  readonly isDrawn: boolean;
  readonly isCurrent: boolean;
  readonly isChanged: boolean;
  readonly onUse: () => void;
}

function Picture({ known, client, isDrawn, isCurrent, isChanged, onUse }: PictureProps) {
  const { title, style } = known;
  const draft = isDrawn ? draftFor(client, style) : null;
  const faults = draft?.pieces.length
    ? draft.issues.filter(({ severity }) => severity === 'error').length
    : 0;
  return (
    <button
      type="button"
      className="style-picture"
      data-style={known.key}
      aria-pressed={isCurrent && !isChanged}
      onClick={onUse}
    >
      <span className="picture">
        {draft?.pieces.length ? (
          <GarmentSketch draft={draft} closure={style.closure} frame={frameFor(client, draft)} />
        ) : null}
      </span>
      <span className="title">{title}</span>
      <span className={faults > 0 ? 'hint faults' : 'hint'}>
        {isCurrent ? (isChanged ? TEXTS.changedSince : TEXTS.onTable) : null}
        {!isCurrent && faults > 0 ? TEXTS.toMend({ count: faults }) : null}
      </span>
    </button>
  );
}

/** Above the neck point and below the hip, mm: what a style may reach. */
const ROOM_MM = 12;
/** Half the width of a body seen from in front, as a part of its widest girth, and as much as ease may add. */
const HALF_WIDTH = 0.19;

/** Room for any style on a client. */
function frameFor({ measurements: { bust, hip } }: Client, { levels }: Draft): SketchFrame {
  return {
    top: -ROOM_MM,
    foot: Math.max(...levels.map(({ y }) => y)) + ROOM_MM,
    half: HALF_WIDTH * Math.max(bust ?? 0, hip ?? 0),
  };
}

/** How many of a number of pictures are drawn: one more after each that is on the screen, so that no key waits for all. */
function useOneByOne(count: number): number {
  const [drawn, setDrawn] = useState(0);
  useEffect(() => {
    if (drawn >= count) return;
    const next = setTimeout(() => startTransition(() => setDrawn(drawn + 1)));
    return () => clearTimeout(next);
  }, [drawn, count]);
  return drawn;
}

interface Drafted extends Pick<Client, 'measurements' | 'sides'> {
  readonly draft: Draft;
}

const drafted = new WeakMap<Style, Drafted>();

/** A style drafted for a client, remembered while she is measured as she was. */
function draftFor({ measurements, sides }: Client, style: Style): Draft {
  const known = drafted.get(style);
  if (known?.measurements === measurements && known.sides === sides) return known.draft;
  const draft = draftWhole(measurements, style, sides ?? null);
  drafted.set(style, { measurements, ...(sides ? { sides } : {}), draft });
  return draft;
}
