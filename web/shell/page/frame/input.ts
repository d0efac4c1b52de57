const GOING = new Set(['Tab', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Escape', 'F6']);

/** Puts on the page whether one goes about by key or by touch. Typing in a field, and its Enter, is neither. */
export function followInput(): void {
  const { dataset } = document.documentElement;
  dataset['by'] = 'key';
  const keyed = ({ key, target, ctrlKey, metaKey, altKey }: KeyboardEvent): void => {
    const isTyping = target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement;
    if (GOING.has(key) || ctrlKey || metaKey || altKey || !isTyping) dataset['by'] = 'key';
  };
  document.addEventListener('keydown', keyed, { capture: true, passive: true });
  document.addEventListener('pointerdown', () => { dataset['by'] = 'touch'; }, { capture: true, passive: true });
}
