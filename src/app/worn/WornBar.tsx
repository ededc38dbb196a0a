// What is done with the picture: from where it is seen, how near, and what its colours tell.

import { WORN } from '../../document';
import { type Camera, FRONT, isSeenFrom, KEY_ZOOM, moved, VIEWS } from './view/camera';
import { SHADINGS, type Shading } from './view/shades';

interface WornBarProps {
  readonly shading: Shading;
  readonly onShading: (shading: Shading) => void;
  readonly camera: Camera;
  readonly onCamera: (change: (last: Camera) => Camera) => void;
}

export function WornBar({ shading, onShading, camera, onCamera }: WornBarProps) {
  const zoom = (by: number) => () => onCamera((last) => moved(last, { zoom: by }));
  return (
    <div className="worn-bar">
      <fieldset className="worn-from">
        <legend className="unseen">{WORN.views.label}</legend>
        {(['front', 'side', 'back'] as const).map((view) => (
          <button
            key={view}
            type="button"
            aria-pressed={isSeenFrom(camera, view)}
            onClick={() => onCamera((last) => ({ ...last, turn: VIEWS[view], tilt: FRONT.tilt }))}
          >
            {WORN.views[view]}
          </button>
        ))}
        <button type="button" aria-label={WORN.farther} title={WORN.farther} onClick={zoom(1 / KEY_ZOOM)}>
          −
        </button>
        <button type="button" aria-label={WORN.nearer} title={WORN.nearer} onClick={zoom(KEY_ZOOM)}>
          +
        </button>
      </fieldset>
      <fieldset className="held">
        <legend className="unseen">{WORN.shading.label}</legend>
        {SHADINGS.map((each) => (
          <label key={each}>
            <input type="radio" name="shading" checked={shading === each} onChange={() => onShading(each)} />
            <span>{WORN.shading[each]}</span>
          </label>
        ))}
      </fieldset>
    </div>
  );
}
