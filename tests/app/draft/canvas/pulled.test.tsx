// What a frame of a pull draws again: counted, because a drawing that changes nothing looks the same.

import { act, fireEvent, render, renderHook } from '@testing-library/react';
import { Profiler } from 'react';
import { describe, expect, it } from 'vitest';
import { CanvasTools } from '../../../../src/app/draft/canvas/CanvasTools';
import { changeStyle, DEMO_BOOK, openClient, openDraftOf } from '../../../../src/document';
import { draft, type Style } from '../../../../src/engine';
import {
  type CanvasView,
  DraftCanvas,
  type Handle,
  type HandleActions,
  layOut,
  useCanvasView,
} from '../../../../src/table';
import { handlesOf } from '../../../../src/table/handles/handlesOf';
import { ValueTooltip } from '../../../../src/table/view/ValueTooltip';
import { onTable } from '../../withStore';

const client = openClient(DEMO_BOOK);
const { style } = openDraftOf(client);
const committed = draft(client.measurements, style);
const laid = layOut(committed);
if (!laid) throw new Error('the demo has no blocks');
const onCanvas = laid;

const BUST = 'front-bust';

const nothing = (): void => undefined;

const shown: CanvasView = {
  view: { left: 0, top: 0, pxPerMm: 1 },
  size: { width: 1000, height: 600 },
  isFitted: true,
  fit: nothing,
  zoomBy: nothing,
  zoomTo: nothing,
  show: nothing,
  panZoom: nothing,
};

const MESSAGES = {
  level: String,
  levelTitle: String,
  levelNote: () => '',
  piece: ({ id }: { id: string }) => id,
  width: (mm: number) => mm.toFixed(1),
  handle: ({ id }: { id: string }) => id,
  length: (mm: number) => mm.toFixed(1),
  value: ({ value }: { value: number }) => value.toFixed(1),
  joinedSide: '',
  place: () => '',
};

const ACTIONS: HandleActions = {
  prepare: (handle, value) => ({ ...made(handle, value), show: nothing }),
  commit: nothing,
  restore: nothing,
};

function made(handle: Handle, value: number) {
  const pulled = handle.set(style, value);
  return { draft: draft(client.measurements, pulled), style: pulled };
}

function canvas(pulled: Style, actions: HandleActions = ACTIONS, drawn = draft(client.measurements, pulled)) {
  return (
    <DraftCanvas
      draft={drawn}
      style={pulled}
      layout={onCanvas}
      shown={shown}
      coarse={false}
      selected={BUST}
      onSelect={nothing}
      blocks="both"
      level="waist"
      unit="in"
      small={false}
      describedBy="keys"
      actions={actions}
      steps={{ grid: 3, small: 1, large: 6 }}
      dotsMm={10}
      earlier={null}
      unaltered={null}
      onAdd={null}
      bending={null}
      messages={MESSAGES}
    />
  );
}

/** The style with its bust wedge pulled farther from the centre. */
const farther = (by: number): Style => ({
  ...style,
  wedges: style.wedges.map((wedge) =>
    wedge.id === BUST ? { ...wedge, station: wedge.station + by } : wedge,
  ),
});

describe('a frame of a pull', () => {
  it('writes each line that differs once, and puts nothing in or out', () => {
    const page = render(canvas(style));
    const seen = new MutationObserver(nothing);
    seen.observe(page.container, { subtree: true, childList: true, attributes: true });
    page.rerender(canvas(farther(0.02)));
    const written = seen.takeRecords();
    seen.disconnect();
    expect(written.length).toBeGreaterThan(10);
    const times = new Map<Node, string[]>();
    for (const { target, type, attributeName } of written) {
      times.set(target, [...(times.get(target) ?? []), attributeName ?? type]);
    }
    for (const names of times.values()) {
      expect(names).not.toContain('childList');
      expect(new Set(names).size).toBe(names.length);
    }
  });

  it('writes the texts beside the pointer anew where they stand', () => {
    const handle = handlesOf(committed, style, onCanvas).find(({ kind }) => kind === 'axis');
    if (!handle) throw new Error('no axis is drawn');
    const tooltip = (text: string) => (
      <svg aria-hidden="true">
        <ValueTooltip
          handle={handle}
          text={text}
          beside={[null, null]}
          nameOf={() => ''}
          draft={committed}
          layout={onCanvas}
          view={shown.view}
          size={shown.size}
          canvas={{ current: null }}
          finger={false}
        />
      </svg>
    );
    const page = render(tooltip('3 1/8 in'));
    const line = page.container.querySelector('text');
    page.rerender(tooltip('3 1/4 in'));
    expect(page.container.querySelector('text')).toBe(line);
    expect(line).toHaveTextContent('3 1/4 in');
  });

  it('leaves a handle that has not moved, and still hands its keys to what is there now', () => {
    const asked: number[] = [];
    const page = render(canvas(style, ACTIONS, committed));
    const after: HandleActions = {
      ...ACTIONS,
      prepare: (handle, value) => {
        asked.push(value);
        return ACTIONS.prepare(handle, value);
      },
    };
    page.rerender(canvas(style, after, committed));
    const hem = page.container.querySelector('[data-handle="edge:hem"]');
    if (!hem) throw new Error('the hem has no handle');
    fireEvent.keyDown(hem, { key: 'ArrowDown' });
    expect(asked).toEqual([style.hemBelow + 1]);
  });

  it('draws the tools above the table only when it is kept', () => {
    let drawn = 0;
    const { store } = onTable(
      <Profiler
        id="tools"
        onRender={() => {
          drawn += 1;
        }}
      >
        <CanvasTools
          shown={shown}
          adding={false}
          onAdding={nothing}
          comparing={false}
          onComparing={nothing}
          bending={false}
          onBending={nothing}
          worn={false}
          onWorn={nothing}
        />
      </Profiler>,
    );
    const before = drawn;
    act(() => store.getState().show((book) => changeStyle(book, () => farther(0.02))));
    expect(drawn).toBe(before);
    act(() => store.getState().keep({ code: 'unitSet' }));
    expect(drawn).toBe(before + 1);
  });

  it('has the table in view stay the same object while nothing of it changes', () => {
    const rims = { left: 0, right: 0, top: 0 };
    const view = renderHook(() => useCanvasView(onCanvas, { width: 800, height: 600 }, 0.6, rims));
    const before = view.result.current;
    view.rerender();
    expect(view.result.current).toBe(before);
  });
});
