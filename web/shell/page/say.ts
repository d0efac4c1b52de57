/** Said to readers of the screen, without moving the focus. */
export function say(text: string): void {
  document.dispatchEvent(new CustomEvent<string>('asf-say', { detail: text }));
}
