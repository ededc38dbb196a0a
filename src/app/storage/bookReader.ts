// What reads a book from text, as a part of its own that is fetched when there is one to read.

export { readBook } from '../../document';
