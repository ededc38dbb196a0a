// The pattern as a PNG picture: an SVG drawing painted on white.

/** Long side of the picture: every name can be read on a screen, and the file is small enough to send. */
const LONG_SIDE_PX = 2600;

/** Paints an SVG text that states its size as a PNG; null where the browser cannot. */
export async function picture(svg: string): Promise<Uint8Array | null> {
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = url;
    await image.decode();
    const scale = LONG_SIDE_PX / Math.max(image.naturalWidth, image.naturalHeight);
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(image.naturalWidth * scale);
    canvas.height = Math.round(image.naturalHeight * scale);
    const brush = canvas.getContext('2d');
    if (!brush) return null;
    brush.fillStyle = '#fff';
    brush.fillRect(0, 0, canvas.width, canvas.height);
    brush.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    return blob && new Uint8Array(await blob.arrayBuffer());
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(url);
  }
}
