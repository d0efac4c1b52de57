import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../parts/pick';
import { routeWord } from '../routes/route-word';
import { words } from '../words';
import { money } from '../words/format';

/** One side of a rule: a part or a donor, and of a part with quotes perhaps one of them alone. Tells `asf-side`. */
@customElement('asf-rule-side')
export class RuleSide extends LightElement {
  @property() label = '';
  @property() error = '';
  @property() value = '';
  @property() quote = '';
  @property({ attribute: false }) options: readonly (readonly [string, string])[] = [];
  private readonly cost = new Live(this, 'cost', () => (this.value ? { ask: 'cost', part: this.value } : null));

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('value') && this.hasUpdated) this.cost.anew();
  }

  override render(): TemplateResult {
    const say = words().rules;
    return html`<asf-pick .label=${this.label} .error=${this.error} .value=${this.value} .options=${[['', say.choose], ...this.options]} @asf-change=${this.picked('value')}></asf-pick>${this.quotes()}`;
  }

  private quotes(): TemplateResult | typeof nothing {
    const say = words().rules;
    const view = this.value && this.cost.view?.part === this.value ? this.cost.view : undefined;
    if (!view?.quotes.length) return nothing;
    const options = view.quotes.map(({ id, route, from, cash }) => [id, [routeWord(route), from ?? '', cash ? money(cash) : ''].filter(Boolean).join(', ')] as const);
    return html`<asf-pick .label=${say.which} .value=${this.quote} .options=${[['', say.anyNew], ...options]} @asf-change=${this.picked('quote')}></asf-pick>`;
  }

  private picked(member: 'value' | 'quote'): (event: CustomEvent<{ value: string }>) => void {
    return (event) => {
      event.stopPropagation();
      const { value } = event.detail;
      this.tell('asf-side', member === 'value' ? { value, quote: '' } : { value: this.value, quote: value });
    };
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-rule-side': RuleSide } }
