import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Lack, RefitStepView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/button';
import '../kit/dialog';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import '../supply/delivery-form';
import { words } from '../words';
import { number } from '../words/format';
import { lackIcon, lackWords } from './lacks';
import { waysOf, type Way } from './mend';

/** What stands in the way of a step, each with the way to mend it: where one tap does, here. */
@customElement('asf-lacks-mended')
export class LacksMended extends LightElement {
  @property({ attribute: false }) view!: RefitStepView;
  /** Where the step stands, for the way back to it. */
  @property() here = '';
  @state() private ordering = false;

  override render(): TemplateResult {
    const { lacks, line } = this.view.step;
    return html`<asf-section .label=${words().refit.blocks} .count=${number(lacks.length)}><ul class="rf-mend">${repeat(lacks, ({ why, other, pieces }) => `${why}/${other ?? ''}/${pieces ?? ''}`, (lack) => html`<li>${this.lack(lack)}</li>`)}</ul></asf-section>
      <asf-dialog .open=${this.ordering} .label=${words().supply.add} .body=${this.ordering ? html`<asf-delivery-form .partId=${line.id} .wanted=${line.quantity} @asf-put=${() => { this.ordering = false; }}></asf-delivery-form>` : nothing} @asf-close=${() => { this.ordering = false; }}></asf-dialog>`;
  }

  private lack(lack: Lack): TemplateResult {
    const ways = waysOf(lack, this.view, () => { this.ordering = true; });
    return html`<p class="rf-mend-words"><asf-icon name=${lackIcon(lack)} size="20"></asf-icon><span>${lackWords(lack, false)}</span></p>
      ${ways.length ? html`<div class="rf-mend-ways">${ways.map((way) => this.way(way))}</div>` : nothing}`;
  }

  private way({ word, href, mend, icon }: Way): TemplateResult {
    return href === undefined ? html`<asf-button .icon=${icon} word=${word} @click=${() => { void mend?.(); }}></asf-button>` : html`<asf-button .icon=${icon} word=${word} href=${href.startsWith('#/routes/') ? openedFrom(href, this.here) : href}></asf-button>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-lacks-mended': LacksMended } }
