import type { Sheet } from './labels';

const rules = new CSSStyleSheet();

/** Tells the printer the size of the page. Rules of their own object are the only ones that can change and that the policy allows. */
export function setPaper(sheet: Sheet): void {
  rules.replaceSync(`@page { size: ${sheet.width}mm ${sheet.height}mm; margin: 0; }`);
  if (!document.adoptedStyleSheets.includes(rules)) document.adoptedStyleSheets = [...document.adoptedStyleSheets, rules];
}

export function clearPaper(): void {
  document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== rules);
}
