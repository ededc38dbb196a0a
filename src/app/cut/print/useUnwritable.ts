// The characters of names that a print on this device cannot write.

import { useEffect, useState } from 'react';
import { glyphsFor } from '../../../paper';

/**
 * The characters that stand as empty boxes on a print: neither the page's face nor a font of this device has them. None until
 * they are looked for; nothing is fetched for a name in plain letters.
 */
export function useUnwritable(client: string, draft: string): readonly string[] {
  const [letters, setLetters] = useState<readonly string[]>([]);
  useEffect(() => {
    let isCurrent = true;
    const say = (missing: readonly string[]): void => {
      if (isCurrent) setLetters(missing);
    };
    const look = async (): Promise<readonly string[]> => {
      const { fontFiles } = await import('./fontFiles');
      return (await glyphsFor([client, draft], fontFiles))?.missing ?? [];
    };
    // Where the face cannot be loaded the print says so itself.
    look().then(say, () => say([]));
    return () => {
      isCurrent = false;
    };
  }, [client, draft]);
  return letters;
}
