// The texts of the making list on the Cut step and of the form with its figures.

import { catalogue } from '../../catalogue';

export const MAKING = catalogue({
  title: 'Making list',
  summary: {
    title: 'Making list in short',
    whole: 'The whole list',
    bones: 'Bones',
    eyelets: 'Eyelets',
  },
  printed: 'Print it behind the sheets, with the eyelets and bones on the panels',
  copy: 'Copy as text',
  copied: 'Copied.',
  notCopied: 'The browser did not let the list be copied; download it instead.',
  download: 'Download as CSV',
  form: {
    summary: 'What the list goes by',
    rule: 'Bones are reckoned',
    rules: { betweenBindings: 'between bindings', channel: 'by the channel' },
    groups: {
      bones: 'Bones',
      eyelets: 'Eyelets',
      trimmings: 'Lace, binding, tape, casing',
      cloth: 'Cloth',
    },
    reset: 'Back to the usual figures',
    outside: ({ least, most }: { least: string; most: string }) =>
      `This must be between ${least} and ${most}; the last good figure holds.`,
    share: ({ percent }: { percent: number }) => `${percent} %`,
  },
});
