// What is said of a row that is left out.

import { SIZES } from '../messages/book/sizes';
import type { RowFault } from './readSizes';

export function rowFaultSentence(fault: RowFault): string {
  switch (fault.code) {
    case 'notALength':
      return SIZES.fault.notALength(fault);
    case 'nameMissing':
      return SIZES.fault.nameMissing(fault);
    case 'nameTwice':
      return SIZES.fault.nameTwice(fault);
  }
}
