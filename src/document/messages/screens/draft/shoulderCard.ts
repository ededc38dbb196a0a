// The card of the Draft step that says where the garment ends above the bust.

import { catalogue } from '../../catalogue';

export const SHOULDER_CARD = catalogue({
  title: 'Shoulders',
  legend: 'Where the garment ends above the bust',
  hints: {
    strapless: 'The garment ends at the top edge.',
    shoulders:
      'Every panel runs up to neckline, shoulder or armhole; a wedge ends at mid-shoulder where it has no place of its own.',
    band: 'The panels end at the top edge; what lies above is cut as a band, one piece a block, its wedges sewn up.',
  },
  /** Each number by a short label beside its field, and by the full name its field has for itself. */
  numbers: {
    drop: {
      label: 'Shoulder drop',
      full: 'Shoulder drop',
      hint: 'tip below the neck point; empty: as measured or usual',
    },
    armholeIn: {
      label: 'Armhole inwards',
      full: 'Armhole inwards',
      hint: 'at half its depth; empty: to chest and back width',
    },
    ease: {
      label: 'Back shoulder ease',
      full: 'Back shoulder ease',
      hint: 'longer than the front and eased in; empty: as usual',
    },
    rise: {
      label: 'Nape below neck',
      full: 'Nape below the back neck point',
      hint: 'at centre back; empty: as usual',
    },
    'intake.front': {
      label: 'Front wedge',
      full: 'Front wedge at its upper end',
      hint: 'taken where it ends; empty: the bust dart',
    },
    'intake.back': {
      label: 'Back wedge',
      full: 'Back wedge at its upper end',
      hint: 'taken at its upper end; empty: as usual',
    },
    bandAbove: { label: 'Band height', full: 'Band height', hint: 'above the top edge at the centres' },
  },
});
