// The fit in words and figures: the worst places with what cures them, and a table by region, edge and mark.

import { type Unit, WORN, wedgePhrase, wedgePlaceOf } from '../../document';
import type { Side } from '../../engine';
import { goToMeasurement, goToWedge } from '../components/awaited/awaitedPlace';
import { draftOfSide, useOpen } from '../store/storeContext';
import { curedAt, type SideSeamPlace } from './curedAt';
import type { WornHalfFigures } from './view/wornPicture';

type Worst = WornHalfFigures['worst'][number];

interface WornPlacesProps {
  readonly halves: readonly WornHalfFigures[];
  readonly unit: Unit;
  readonly onSideSeam: (place: SideSeamPlace) => void;
}

export function WornPlaces({ halves, unit, onSideSeam }: WornPlacesProps) {
  const places = halves.flatMap(({ side, worst }) =>
    worst.map((place) => {
      const text = `${WORN.worst.seen(place, unit)} ${WORN.worst.cure(place)}`;
      return { side, place, text: side === null ? text : WORN.worst.side({ side, text }) };
    }),
  );
  return (
    <div className="worn-places">
      <h3>{WORN.worst.title}</h3>
      {places.length === 0 ? (
        <p>{WORN.worst.none}</p>
      ) : (
        <ol>
          {places.map(({ side, place, text }) => (
            <li key={text}>
              {text} <GoToCure place={place} side={side} onSideSeam={onSideSeam} />
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}

interface GoToCureProps {
  readonly place: Worst;
  readonly side: Side | null;
  readonly onSideSeam: (place: SideSeamPlace) => void;
}

/** Goes to where the place is mended: the number of a wedge at its level, a form of the side seam, or the heights of the tape. */
function GoToCure({ place, side, onSideSeam }: GoToCureProps) {
  const { client, savedDraft } = useOpen();
  const cure = curedAt(place, draftOfSide(client, savedDraft, side));
  switch (cure?.kind) {
    case 'wedge': {
      const wedge = wedgePhrase(wedgePlaceOf(cure.wedge, savedDraft.style));
      return (
        <button
          type="button"
          onClick={() => {
            goToWedge({ wedge: cure.wedge, level: cure.level, side });
            window.location.hash = 'draft';
          }}
        >
          {WORN.worst.goToWedge({ wedge, level: cure.level })}
        </button>
      );
    }
    case 'sideSeam':
      return (
        <button type="button" onClick={() => onSideSeam({ level: cure.level, side })}>
          {WORN.worst.goToSideSeam({ level: cure.level })}
        </button>
      );
    case 'tape':
      return (
        <button
          type="button"
          onClick={() => {
            goToMeasurement(cure.measurement);
            window.location.hash = 'measure';
          }}
        >
          {WORN.worst.goToTape}
        </button>
      );
    default:
      return null;
  }
}

interface WornTableProps {
  readonly half: WornHalfFigures;
  readonly unit: Unit;
  /** The same half of the garment it is seen beside; null where there is none. */
  readonly before: WornHalfFigures | null;
}

export function WornTable({ half: { side, figures }, unit, before }: WornTableProps) {
  const { table } = WORN;
  const away = (value: number): string => table.away({ value, unit });
  const was = before?.figures ?? null;
  return (
    <>
      <table className="worn-table">
        <caption>
          {side === null ? table.title : table.half({ side })}
          {was !== null && <span className="hint">{table.beside}</span>}
        </caption>
        <thead>
          <tr>
            <th scope="col">{table.where}</th>
            <th scope="col">{table.standOff}</th>
            <th scope="col">{table.stretch}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">{table.whole}</th>
            <Figure now={away(figures.standOff)} was={was && away(was.standOff)} />
            <Figure
              now={table.percent({ value: figures.stretch })}
              was={was && table.percent({ value: was.stretch })}
            />
          </tr>
          {figures.regions.map(({ band, part, standOff, stretch }) => {
            const earlier = was?.regions.find((each) => each.band === band && each.part === part);
            return (
              <tr key={`${band} ${part}`}>
                <th scope="row">{table.region({ band, part })}</th>
                <Figure now={away(standOff)} was={earlier && away(earlier.standOff)} />
                <Figure
                  now={table.percent({ value: stretch })}
                  was={earlier && table.percent({ value: earlier.stretch })}
                />
              </tr>
            );
          })}
          {figures.edges.map(({ edge, part, gape }) => {
            const earlier = was?.edges.find((each) => each.edge === edge && each.part === part);
            return (
              <tr key={`${edge} ${part}`}>
                <th scope="row">{table.edge({ edge, part })}</th>
                <Figure wide now={away(gape)} was={earlier && away(earlier.gape)} />
              </tr>
            );
          })}
          {figures.marks.map(({ level, part, rise }) => {
            const earlier = was?.marks.find((each) => each.level === level && each.part === part);
            return (
              <tr key={`${level} ${part}`}>
                <th scope="row">{table.mark({ level, part })}</th>
                <Figure
                  wide
                  now={table.rise({ value: rise, unit })}
                  was={earlier && table.rise({ value: earlier.rise, unit })}
                />
              </tr>
            );
          })}
        </tbody>
      </table>
      {figures.apex !== null && (
        <p className="hint">
          {table.apex({ value: figures.apex, unit })}
          {was !== null && was.apex !== null && (
            <span className="worn-was">{table.was({ text: away(was.apex) })}</span>
          )}
        </p>
      )}
    </>
  );
}

interface FigureProps {
  readonly now: string;
  readonly was: string | null | undefined;
  readonly wide?: true;
}

/** A figure, and under it what it is in the garment beside it. */
function Figure({ now, was, wide }: FigureProps) {
  return (
    <td colSpan={wide ? 2 : 1}>
      {now}
      {was ? <span className="worn-was">{WORN.table.was({ text: was })}</span> : null}
    </td>
  );
}
