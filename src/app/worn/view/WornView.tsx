// The garment on its body: turned by pointer, touch and keys, read at the pointer, saved as a picture.

import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from 'react';
import { WORN } from '../../../document';
import { useSize } from '../../components/useSize';
import { type Camera, FRONT, frameOf, moved, projection, seenAt, VIEWS } from './camera';
import { type Drawing, makeGlDrawing } from './glView';
import { savePicture } from './savePicture';
import type { Shading } from './shades';
import { makeStillDrawing } from './stillDrawing';
import { usePointers, useZoomByWheel } from './turning';
import type { WornPicture } from './wornPicture';

/** One press of an arrow key, rad. */
const KEY_TURN = Math.PI / 24;
const KEY_ZOOM = 1.15;

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

export function WornView({ picture, shading }: { readonly picture: WornPicture; readonly shading: Shading }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const room = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(room);
  const [camera, setCamera] = useState<Camera>(FRONT);
  const [seeing, setSeeing] = useState<Seeing>(null);
  const [seen, setSeen] = useState<ReturnType<typeof seenAt>>(null);
  const draw = useRef<() => void>(() => undefined);

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
    draw.current = () => {
      element.width = Math.round(width * ratio);
      element.height = Math.round(height * ratio);
      const background = colourOf(getComputedStyle(element).backgroundColor);
      seeing.drawing({
        picture,
        shading,
        camera,
        frame: frameOf(picture, width / height),
        background,
        ratio,
      });
    };
    const frame = requestAnimationFrame(() => draw.current());
    const theme = window.matchMedia('(prefers-color-scheme: dark)');
    const again = (): void => draw.current();
    theme.addEventListener('change', again);
    return () => {
      cancelAnimationFrame(frame);
      theme.removeEventListener('change', again);
    };
  }, [picture, shading, camera, seeing, width, height]);

  useZoomByWheel(canvas, (zoom) => setCamera((last) => moved(last, { zoom })));
  const pointers = usePointers(setCamera);
  const read = (event: PointerEvent<HTMLCanvasElement>): void => {
    const box = event.currentTarget.getBoundingClientRect();
    const right = (2 * (event.clientX - box.left) - box.width) / box.height;
    const up = 1 - (2 * (event.clientY - box.top)) / box.height;
    setSeen(seenAt(picture, projection(camera, frameOf(picture, box.width / box.height)), right, up));
  };
  const press = (event: KeyboardEvent): void => {
    const by = KEYS[event.key];
    if (!by || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    setCamera((last) => moved(last, by));
  };

  const panel = seen === null ? undefined : picture.panels[picture.panelOf[seen.triangle] ?? 0];
  return (
    <div className="worn-view">
      <div className="worn-room" ref={room}>
        <canvas
          ref={canvas}
          tabIndex={0}
          role="img"
          aria-label={WORN.picture}
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
          onPointerLeave={() => setSeen(null)}
        />
      </div>
      <p className="worn-seen">
        {seen && panel
          ? WORN.seen({
              piece: panel,
              standOff: picture.standOff[seen.vertex] ?? 0,
              warp: 100 * (picture.warp[seen.vertex] ?? 0),
              weft: 100 * (picture.weft[seen.vertex] ?? 0),
            })
          : WORN.seenNothing}
      </p>
      <div className="worn-tools">
        <fieldset>
          <legend>{WORN.views.label}</legend>
          {(['front', 'side', 'back'] as const).map((view) => (
            <button
              key={view}
              type="button"
              onClick={() => setCamera((last) => ({ ...last, turn: VIEWS[view], tilt: FRONT.tilt }))}
            >
              {WORN.views[view]}
            </button>
          ))}
        </fieldset>
        <button type="button" onClick={() => setCamera((last) => moved(last, { zoom: KEY_ZOOM }))}>
          {WORN.nearer}
        </button>
        <button type="button" onClick={() => setCamera((last) => moved(last, { zoom: 1 / KEY_ZOOM }))}>
          {WORN.farther}
        </button>
        <button
          type="button"
          onClick={() => {
            draw.current();
            if (canvas.current) savePicture(canvas.current, WORN.file);
          }}
        >
          {WORN.save}
        </button>
        <span className="hint">{WORN.turning}</span>
      </div>
      {seeing === 'none' && <p className="hint">{WORN.noDrawing}</p>}
      {seeing !== null && seeing !== 'none' && seeing.isStill && <p className="hint">{WORN.still}</p>}
    </div>
  );
}

/** Red, green and blue of a computed colour, 0 to 1; white where it is none. */
function colourOf(css: string): [number, number, number] {
  const [red = 255, green = 255, blue = 255] = (css.match(/[\d.]+/g) ?? []).map(Number);
  return [red / 255, green / 255, blue / 255];
}
