// A mock-up that was asked for on another step is what Cut prints as soon as it is laid out.

let isAwaited = false;

/** Goes to Cut for a mock-up. */
export function goToMockup(): void {
  isAwaited = true;
  window.location.hash = '#cut';
}

/** Whether a mock-up was asked for since this was last called. */
export function takeMockup(): boolean {
  const asked = isAwaited;
  isAwaited = false;
  return asked;
}
