// All handles of the drawing. Under a pull those of other wedges may follow a frame later.

import { memo, useDeferredValue } from 'react';
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
  const before = useDeferredValue(pulled?.wedge ? handles : null);
  return handles.map((handle) => {
    const isNear = !pulled?.wedge || handle.wedge === pulled.wedge;
    const drawn = isNear ? handle : (before?.find(({ id }) => id === handle.id) ?? handle);
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
