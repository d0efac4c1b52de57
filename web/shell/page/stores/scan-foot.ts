import { html, type TemplateResult } from 'lit';
import '../kit/primary';

/** What stands low on a screen of the stores: scanning, and one thing beside it. */
export function scanFoot({ verb, href, second }: { verb: string; href: string; second: unknown }): TemplateResult {
  return html`<div class="foot store-foot"><div class="primary-and-second"><asf-primary .verb=${verb} icon="scan" @click=${() => { location.hash = href; }}></asf-primary>${second}</div></div>`;
}
