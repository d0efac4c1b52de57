import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { PlaceKind } from '../../bridge/protocol';
import { textOf } from '../field-text';
import '../kit/choice';
import '../kit/dialog';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { placeKinds } from './place-kinds';

export interface PlaceNamed { name: string; kind: PlaceKind }

/** Name and kind of a place, asked for in a dialog. Tells `asf-named`; `asf-close` without an answer. */
@customElement('asf-place-form')
export class PlaceForm extends LightElement {
  @property({ type: Boolean }) open = false;
  @property() label = '';
  @property() verb = '';
  @property() name = '';
  @property() kind: PlaceKind = 'box';
  @state() private typed = '';
  @state() private chosen: PlaceKind = 'box';
  @state() private wrong = '';

  override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('open') && this.open) [this.typed, this.chosen, this.wrong] = [this.name, this.kind, ''];
  }

  override render(): TemplateResult {
    return html`<asf-dialog .open=${this.open} .label=${this.label} .body=${this.open ? this.form() : nothing} @asf-close=${() => { this.open = false; }}></asf-dialog>`;
  }

  private form(): TemplateResult {
    const say = words().stores;
    return html`<form class="place-form" @submit=${this.submitted}>
      <asf-field .label=${say.name} .value=${this.typed} .error=${this.wrong} max="200" @input=${(event: Event) => { this.typed = textOf(event); this.wrong = ''; }}></asf-field>
      <asf-choice columns="3" .label=${say.kind} .options=${placeKinds()} .value=${this.chosen} @asf-change=${(event: CustomEvent<{ value: PlaceKind }>) => { this.chosen = event.detail.value; }}></asf-choice>
      <asf-primary small kind="submit" .verb=${this.verb} icon="check"></asf-primary></form>`;
  }

  private readonly submitted = (event: Event): void => {
    event.preventDefault();
    const name = this.typed.trim();
    if (!name) {
      this.wrong = words().stores.needsName;
      return;
    }
    this.open = false;
    this.tell<PlaceNamed>('asf-named', { name, kind: this.chosen });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-form': PlaceForm } }
