// The steps from every earlier version, fetched where there is something of one to read.

export { MIGRATIONS } from '../../../document';
