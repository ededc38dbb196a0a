// The garment on its body: turned by pointer, touch and keys, and read at the pointer.

import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import { type Unit, WORN } from '../../../document';
import { useSize } from '../../components/useSize';
import { type Camera, frameOf, KEY_ZOOM, moved, projection, seenAt } from './camera';
import { type Drawing, makeGlDrawing } from './glView';
import type { Shading } from './shades';
import { makeStillDrawing } from './stillDrawing';
import { usePointers, useZoomByWheel } from './turning';
import type { WornPicture } from './wornPicture';

/** One press of an arrow key, rad. */
const KEY_TURN = Math.PI / 24;

const KEYS: Readonly<Record<string, Parameters<typeof moved>[1]>> = {
  ArrowLeft: { turn: -KEY_TURN },
  ArrowRight: { turn: KEY_TURN },
  ArrowUp: { tilt: KEY_TURN },
  ArrowDown: { tilt: -KEY_TURN },
  '+': { zoom: KEY_ZOOM },
  '=': { zoom: KEY_ZOOM },
  '-': { zoom: 1 / KEY_ZOOM },
};

type Seeing = { readonly drawing: Drawing; readonly isStill: boolean } | 'none' | null;

/** Draws anew at once, and gives the canvas; null where nothing can be drawn. */
export type DrawNow = () => HTMLCanvasElement | null;

interface WornViewProps {
  readonly picture: WornPicture;
  /** All that are seen side by side: they are shown at one scale. */
  readonly beside: readonly WornPicture[];
  readonly shading: Shading;
  readonly unit: Unit;
  readonly camera: Camera;
  readonly onCamera: (change: (last: Camera) => Camera) => void;
  /** What it is called where there are two. */
  readonly caption: string | null;
  readonly drawNow: RefObject<DrawNow | null>;
}

/** What is seen, and where in the view, px. */
interface Reading {
  readonly seen: NonNullable<ReturnType<typeof seenAt>>;
  readonly x: number;
  readonly y: number;
  /** The view's own width. */
  readonly width: number;
}

export function WornView(props: WornViewProps) {
  const { picture, beside, shading, unit, camera, onCamera, caption, drawNow } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const room = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(room);
  const [seeing, setSeeing] = useState<Seeing>(null);
  const [reading, setReading] = useState<Reading | null>(null);

  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    const begin = (): void => {
      const gl = makeGlDrawing(element);
      const drawing = gl ?? makeStillDrawing(element);
      setSeeing(drawing ? { drawing, isStill: gl === null } : 'none');
    };
    // A context may be taken away when the screen sleeps or another page wants it, and given back.
    const lose = (event: Event): void => event.preventDefault();
    begin();
    element.addEventListener('webglcontextlost', lose);
    element.addEventListener('webglcontextrestored', begin);
    return () => {
      element.removeEventListener('webglcontextlost', lose);
      element.removeEventListener('webglcontextrestored', begin);
    };
  }, []);

  useEffect(() => {
    const element = canvas.current;
    if (!element || seeing === null || seeing === 'none' || width === 0) return;
    const ratio = Math.min(2, window.devicePixelRatio);
    const draw = (): HTMLCanvasElement => {
      const size = { width: Math.round(width * ratio), height: Math.round(height * ratio) };
      // To set a canvas's size lays it out anew even where it stays as it is.
      if (element.width !== size.width || element.height !== size.height) Object.assign(element, size);
      const background = colourOf(getComputedStyle(element).backgroundColor);
      const frame = frameOf(beside, width / height);
      seeing.drawing({ picture, shading, unit, camera, frame, background, ratio });
      return element;
    };
    drawNow.current = draw;
    const frame = requestAnimationFrame(draw);
    const theme = window.matchMedia('(prefers-color-scheme: dark)');
    theme.addEventListener('change', draw);
    return () => {
      drawNow.current = null;
      cancelAnimationFrame(frame);
      theme.removeEventListener('change', draw);
    };
  }, [picture, beside, shading, unit, camera, seeing, width, height, drawNow]);

  useZoomByWheel(canvas, (zoom) => onCamera((last) => moved(last, { zoom })));
  const pointers = usePointers(onCamera);
  const read = (event: PointerEvent<HTMLCanvasElement>): void => {
    const box = event.currentTarget.getBoundingClientRect();
    const [x, y] = [event.clientX - box.left, event.clientY - box.top];
    const matrix = projection(camera, frameOf(beside, box.width / box.height));
    const seen = seenAt(picture, matrix, (2 * x - box.width) / box.height, 1 - (2 * y) / box.height);
    setReading(seen && { seen, x, y, width: box.width });
  };
  const press = (event: KeyboardEvent): void => {
    const by = KEYS[event.key];
    if (!by || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    onCamera((last) => moved(last, by));
  };
  return (
    <div className="worn-view">
      <div className="worn-room" ref={room}>
        <canvas
          ref={canvas}
          tabIndex={0}
          role="img"
          aria-label={WORN.picture({ caption })}
          onKeyDown={press}
          onPointerDown={(event) => {
            pointers.down(event);
            read(event);
          }}
          onPointerMove={(event) => {
            if (!pointers.move(event)) read(event);
          }}
          onPointerUp={pointers.up}
          onPointerCancel={pointers.up}
          onPointerLeave={() => setReading(null)}
        />
        {caption !== null && <p className="worn-caption">{caption}</p>}
        {reading ? <WornReading picture={picture} unit={unit} reading={reading} /> : null}
      </div>
      {seeing === 'none' && <p className="hint">{WORN.noDrawing}</p>}
      {seeing !== null && seeing !== 'none' && seeing.isStill && <p className="hint">{WORN.still}</p>}
    </div>
  );
}

interface WornReadingProps {
  readonly picture: WornPicture;
  readonly unit: Unit;
  readonly reading: Reading;
}

/** The values at the pointer, beside it on the side that has more room. */
function WornReading({ picture, unit, reading: { seen, x, y, width } }: WornReadingProps) {
  const panel = picture.panels[picture.panelOf[seen.triangle] ?? 0];
  if (!panel) return null;
  const side = x > width / 2 ? { right: width - x + 16 } : { left: x + 16 };
  return (
    <p className="worn-reading" style={{ top: y, ...side }}>
      {WORN.seen({
        piece: panel,
        unit,
        standOff: picture.standOff[seen.vertex] ?? 0,
        warp: 100 * (picture.warp[seen.vertex] ?? 0),
        weft: 100 * (picture.weft[seen.vertex] ?? 0),
      })}
    </p>
  );
}

/** Red, green and blue of a computed colour, 0 to 1; white where it is none. */
function colourOf(css: string): [number, number, number] {
  const [red = 255, green = 255, blue = 255] = (css.match(/[\d.]+/g) ?? []).map(Number);
  return [red / 255, green / 255, blue / 255];
}
