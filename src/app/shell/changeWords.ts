// What a change is called, with the names of wedges and measurements, as a part of its own.

export { changeSentence } from '../../document';
