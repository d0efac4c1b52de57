import { html, type TemplateResult } from 'lit';
import '../kit/icon';
import '../styles/judge.css';
import { words } from '../words';

/** The family of a part, and the way to change it. */
export function familyLink(part: string, said: string): TemplateResult {
  return html`<a class="sheet-link sheet-family" href=${`#/judge/${part}?at=family`}><span>${words().judge.sheet.family}</span>
    <span class="sheet-link-value">${said}</span><asf-icon name="next" size="20"></asf-icon></a>`;
}
