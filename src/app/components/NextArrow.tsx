// The arrow behind the words of the way on to the next step.

export function NextArrow() {
  return (
    <svg className="next-arrow" viewBox="0 0 20 20" aria-hidden="true">
      <path d="m8 5 5 5-5 5" />
    </svg>
  );
}
