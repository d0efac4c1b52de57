// A new version is offered only between two things, never over a camera or a half-written word.

/** Whether a question may be put now. */
export function mayInterrupt(): boolean {
  const { activeElement } = document;
  const isWriting = activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement;
  return !isWriting && document.querySelector('.sight-live') === null;
}
