// The files of the page's face.

/** Files of the page's face, DejaVu Sans Condensed, in dejavu-fonts-ttf. It has Latin, Greek, Cyrillic, Arabic and Hebrew. */
export const FACE_FILES = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' };

/** Units per em as the page's face is set: its own 2048 are 95 % of it, so that a line is as long as in most sans serif faces. */
export const FACE_PER_EM = 2156;
