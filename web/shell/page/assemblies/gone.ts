import { html, type TemplateResult } from 'lit';
import '../kit/button';
import '../kit/empty';
import { words } from '../words';

/** An address led to an assembly that is not in this job. */
export function assemblyGone(): TemplateResult {
  const { gone } = words().assemblies;
  return html`<div class="body"><asf-empty .first=${gone.first} .then=${gone.then}><asf-button icon="list" word=${gone.go} href="#/assemblies"></asf-button></asf-empty></div>`;
}
