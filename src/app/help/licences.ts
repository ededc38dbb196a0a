// What the page is made of besides its own code.

/** Names and licences of the packages that the app ships. */
export const LICENCES: readonly { readonly name: string; readonly licence: string }[] = [
  { name: '@fontsource/noto-sans-kr', licence: 'OFL-1.1' },
  { name: '@fontsource/noto-sans-sc', licence: 'OFL-1.1' },
  { name: '@fontsource/noto-sans-thai', licence: 'OFL-1.1' },
  { name: 'clipper2-ts', licence: 'BSL-1.0' },
  { name: 'dejavu-fonts-ttf', licence: 'Bitstream Vera, public domain' },
  { name: 'delaunator', licence: 'ISC' },
  { name: 'fflate', licence: 'MIT' },
  { name: 'jspdf', licence: 'MIT' },
  { name: 'react', licence: 'MIT' },
  { name: 'react-dom', licence: 'MIT' },
  { name: 'zod', licence: 'MIT' },
  { name: 'zustand', licence: 'MIT' },
];
