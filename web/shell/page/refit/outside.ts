import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/empty';
import '../kit/head';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { partRow } from '../parts/part-row';
import { Pictures } from '../pictures';
import { words } from '../words';

/** Parts that are off and in no assembly: each can be refitted all the same. */
@customElement('asf-refit-outside')
export class RefitOutside extends LightElement {
  @property() current = '';
  private readonly live = new Live(this, 'parts', () => ({ ask: 'parts', group: 'none' }));
  private readonly pictures = new Pictures(this);
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().refit;
    const rows = (this.live.view?.rows ?? []).filter(({ assembly, standing }) => assembly === undefined && standing !== 'on');
    return html`<asf-head .name=${say.outside.title} .second=${this.live.view ? say.parts(rows.length) : ''} back="#/refit" .cells=${this.current ? [] : [this.keeping.cell]}></asf-head>
      <div class="body"><p class="reckoned">${say.outside.lead}</p>
        ${this.live.view && rows.length === 0 ? html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>` : nothing}
        <ul>${rows.map((line) => html`<li>${partRow(line, { picture: line.photo ? this.pictures.small(line.photo) : '', href: `#/refit/none?step=${line.id}`, current: line.id === this.current })}</li>`)}</ul></div>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-refit-outside': RefitOutside } }
