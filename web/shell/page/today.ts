/** The day of the calendar here and now, as `2026-05-01`. */
export function today(at = new Date()): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${String(at.getFullYear()).padStart(4, '0')}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}
