// The page's face as the page serves it, fetched for a print. Letters that it lacks are drawn by the device.

import regular from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url&no-inline';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url&no-inline';
import { type FontFiles, isDrawnByDevice } from '../../../paper';

const ADDRESSES = new Map([
  ['DejaVuSansCondensed.ttf', regular],
  ['DejaVuSansCondensed-Bold.ttf', bold],
]);

export const fontFiles: FontFiles = {
  read: async (name) => new Uint8Array(await (await fetched(ADDRESSES.get(name) ?? name)).arrayBuffer()),
  others: async () => [],
  isDrawn: isDrawnByDevice,
};

async function fetched(address: string): Promise<Response> {
  const answer = await fetch(address);
  // Some hosts answer with the page what they do not have.
  const isPage = answer.headers.get('content-type')?.startsWith('text/html') === true;
  if (!answer.ok || isPage) throw new Error(`${address} could not be loaded`);
  return answer;
}
