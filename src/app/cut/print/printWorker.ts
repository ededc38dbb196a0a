// Makes a print beside the page, so that the screen stays alive meanwhile.

import { makePrint, type PrintJob, type PrintNews } from './printJob';

const tell = (news: PrintNews): void => self.postMessage(news);

self.addEventListener('message', ({ data }: MessageEvent<PrintJob>) => {
  makePrint(data, (drawn, of) => tell({ kind: 'page', drawn, of }))
    .then((bytes) => tell({ kind: 'made', bytes }))
    .catch(() => tell({ kind: 'failed' }));
});
