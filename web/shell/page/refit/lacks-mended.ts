import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Lack, RefitStepView } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../kit/button';
import '../kit/dialog';
import '../kit/icon';
import '../kit/message';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Once } from '../once';
import '../supply/delivery-form';
import { words } from '../words';
import { number } from '../words/format';
import { lackIcon, lackWords } from './lacks';
import { waysOf, type Mended, type Way } from './mend';

/** What stands in the way of a step, each with the way to mend it: where one tap does, here. */
@customElement('asf-lacks-mended')
export class LacksMended extends LightElement {
  @property({ attribute: false }) view!: RefitStepView;
  /** Where the step stands, for the way back to it. */
  @property() here = '';
  @state() private ordering = false;
  /** Why a tap stored nothing, and at which lack. */
  @state() private refused: { at: string; why: string } | null = null;
  private readonly once = new Once();

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('view')) this.refused = null;
  }

  override render(): TemplateResult {
    const { lacks, line } = this.view.step;
    return html`<asf-section .label=${words().refit.blocks} .count=${number(lacks.length)}><ul class="rf-mend">${repeat(lacks, nameOf, (lack) => html`<li>${this.lack(lack)}</li>`)}</ul></asf-section>
      <asf-dialog .open=${this.ordering} .label=${words().supply.add} .body=${this.ordering ? html`<asf-delivery-form .partId=${line.id} .wanted=${line.quantity} @asf-put=${() => { this.ordering = false; }}></asf-delivery-form>` : nothing} @asf-close=${() => { this.ordering = false; }}></asf-dialog>`;
  }

  private lack(lack: Lack): TemplateResult {
    const ways = waysOf(lack, this.view, () => { this.ordering = true; });
    const at = nameOf(lack);
    return html`<p class="rf-mend-words"><asf-icon name=${lackIcon(lack)} size="20"></asf-icon><span>${lackWords(lack, false)}</span></p>
      ${ways.length ? html`<div class="rf-mend-ways">${ways.map((way) => this.way(way, at))}</div>` : nothing}
      ${this.refused?.at === at ? html`<asf-message kind="alert" .happened=${this.refused.why}></asf-message>` : nothing}`;
  }

  private way({ word, href, mend, icon }: Way, at: string): TemplateResult {
    return href === undefined ? html`<asf-button .icon=${icon} word=${word} @click=${() => { if (mend) void this.mend(at, mend); }}></asf-button>` : html`<asf-button .icon=${icon} word=${word} href=${href.startsWith('#/routes/') ? openedFrom(href, this.here) : href}></asf-button>`;
  }

  // Two taps on one lack mend it once: the second would be for a record that the answer does not show yet.
  private mend(at: string, mend: () => Promise<Mended>): Promise<void> {
    return this.once.run(at, this.view, async () => {
      this.refused = null;
      const mended = await mend();
      if (typeof mended === 'boolean') return mended;
      this.refused = { at, why: mended.why };
      return false;
    });
  }
}

function nameOf({ why, other, pieces }: Lack): string {
  return `${why}/${other ?? ''}/${pieces ?? ''}`;
}

declare global { interface HTMLElementTagNameMap { 'asf-lacks-mended': LacksMended } }
