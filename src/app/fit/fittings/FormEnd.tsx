// The end of a form of the fittings: what is wanting, what makes the alteration, and the way out.

import { FITTINGS } from '../../../document';

interface FormEndProps {
  /** What has to be filled in first; null where nothing is. */
  readonly wanting: string | null;
  /** The words of the button that takes the form. */
  readonly make: string;
  readonly onCancel: () => void;
}

export function FormEnd({ wanting, make, onCancel }: FormEndProps) {
  return (
    <>
      {wanting ? (
        <p className="said off" role="alert">
          {wanting}
        </p>
      ) : null}
      <p className="form-end">
        <button type="submit" className="primary">
          {make}
        </button>
        <button type="button" onClick={onCancel}>
          {FITTINGS.form.cancel}
        </button>
      </p>
    </>
  );
}
