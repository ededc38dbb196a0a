// The program's name and version, as they are said on screen and on every print. A test holds the version to that of the package.

export const PROGRAM_VERSION = '0.1.0';

export const PROGRAM = `Staywright ${PROGRAM_VERSION}`;
