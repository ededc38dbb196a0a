// All handles of the drawing. Under a pull of a wedge those of the other block follow when the pull rests.

import { memo } from 'react';
import { useRested } from '../gestures/useRested';
import type { Handle } from '../handles/handle';
import { HandleMark, type HandleTexts } from './HandleMark';
import { type MarkEventsOf, selectionId } from './handleSet';

interface HandleMarksProps extends HandleTexts {
  readonly handles: readonly Handle[];
  /** The handle that is pulled. */
  readonly pulled: Handle | null;
  /** Id of the wedge, or of the handle of none, that is selected. */
  readonly selectedId: string | null;
  /** Id of the one handle that Tab comes to. */
  readonly stop: string | undefined;
  readonly pxPerMm: number;
  readonly hitAreaPx: number;
  readonly eventsOf: MarkEventsOf;
}

export const HandleMarks = memo(function HandleMarks(props: HandleMarksProps) {
  const { handles, pulled, selectedId, stop, labelText, valueText, pxPerMm, hitAreaPx, eventsOf } = props;
  const isWedgePulled = !!pulled?.wedge;
  const rested = useRested(handles, isWedgePulled);
  /** What is drawn of a handle. */
  const drawnOf = (handle: Handle): Handle => {
    if (!isWedgePulled || handle.block === pulled.block) return handle;
    return rested.find(({ id }) => id === handle.id) ?? handle;
  };
  return handles.map((handle) => {
    const drawn = drawnOf(handle);
    return (
      <HandleMark
        key={handle.id}
        handle={drawn}
        labelText={labelText}
        valueText={valueText}
        pulling={handle.id === pulled?.id}
        isSelected={selectedId === selectionId(handle)}
        isStop={handle.id === stop}
        pxPerMm={pxPerMm}
        hitAreaPx={hitAreaPx}
        eventsOf={eventsOf}
      />
    );
  });
});
