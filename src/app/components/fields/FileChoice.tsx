// A file of text chosen from the device: looks like a button, and is the browser's own choice of a file.

import { useId } from 'react';

interface FileChoiceProps {
  readonly label: string;
  /** Kinds of file that the browser offers first; JSON where they are left out. */
  readonly accept?: string;
  /** The text of the file, empty where it cannot be read, and the file's name. */
  readonly onChoose: (text: string, name: string) => void;
}

export function FileChoice({ label, accept = 'application/json,.json', onChoose }: FileChoiceProps) {
  const id = useId();
  const choose = async (file: File | undefined): Promise<void> => {
    if (file) onChoose(await file.text().catch(() => ''), file.name);
  };
  return (
    <label className="file-choice" htmlFor={id}>
      <span>{label}</span>
      <input
        id={id}
        type="file"
        accept={accept}
        onChange={(event) => {
          void choose(event.target.files?.[0]);
          // The same file may be chosen again, mended.
          event.target.value = '';
        }}
      />
    </label>
  );
}
