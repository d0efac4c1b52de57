/** What stands in the field an event came from. */
export function textOf(event: Event): string {
  const { currentTarget } = event;
  return currentTarget instanceof HTMLElement && 'value' in currentTarget && typeof currentTarget.value === 'string' ? currentTarget.value : '';
}
