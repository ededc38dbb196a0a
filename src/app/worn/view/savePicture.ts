// Saves what a canvas shows as a picture.

import { download } from '../../components/download';

/** The canvas must have been drawn just now: WebGL keeps its picture no longer than that. */
export function savePicture(canvas: HTMLCanvasElement, name: string): void {
  canvas.toBlob((blob) => {
    blob
      ?.arrayBuffer()
      .then((bytes) => download(new Uint8Array(bytes), 'image/png', name))
      .catch(() => undefined);
  }, 'image/png');
}
