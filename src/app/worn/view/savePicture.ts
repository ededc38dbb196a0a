// Saves what is seen as a picture: one view, or two side by side with their names.

import { download } from '../../components/files/download';

export interface SeenView {
  /** Drawn just now: WebGL keeps its picture no longer than that. */
  readonly canvas: HTMLCanvasElement;
  readonly caption: string | null;
}

/** Between two views, and the height of a line with a name, px of the picture. */
const GAP_PX = 12;
const CAPTION_PX = 36;

/** Nothing is saved where the browser cannot draw. */
export function savePicture(views: readonly SeenView[], name: string): void {
  const width = views.reduce((sum, { canvas }) => sum + canvas.width + GAP_PX, -GAP_PX);
  const height = Math.max(0, ...views.map(({ canvas }) => canvas.height));
  const hasNames = views.some(({ caption }) => caption !== null);
  const sheet = document.createElement('canvas');
  sheet.width = Math.max(1, width);
  sheet.height = height + (hasNames ? CAPTION_PX : 0);
  const context = sheet.getContext('2d');
  if (!context) return;
  context.fillStyle = '#fff';
  context.fillRect(0, 0, sheet.width, sheet.height);
  context.fillStyle = '#111';
  context.font = `${CAPTION_PX / 2}px sans-serif`;
  context.textBaseline = 'middle';
  let x = 0;
  for (const { canvas, caption } of views) {
    context.drawImage(canvas, x, sheet.height - height);
    if (caption !== null) context.fillText(caption, x + GAP_PX / 2, CAPTION_PX / 2, canvas.width - GAP_PX);
    x += canvas.width + GAP_PX;
  }
  sheet.toBlob((blob) => {
    blob
      ?.arrayBuffer()
      .then((bytes) => download(new Uint8Array(bytes), 'image/png', name))
      .catch(() => undefined);
  }, 'image/png');
}
