// The face that pages are set in: DejaVu Sans Condensed.

/** Names of its files in dejavu-fonts-ttf. */
export const FACE_FILES = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' };

/** Units in its size as it is set: 2048 of its own make 95 %, where a line of it is as long as most sans serif faces make it. */
export const FACE_PER_EM = 2156;
