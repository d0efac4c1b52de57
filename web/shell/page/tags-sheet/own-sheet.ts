import { html, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { textOf } from '../field-text';
import '../kit/field';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { OWN_FIELDS, ownFigure, type OwnField } from './paper';

/** The figures of a sheet of the user's own. Tells `asf-own` with the field and what was typed. */
@customElement('asf-own-sheet')
export class OwnSheet extends LightElement {
  @property({ attribute: false }) own: Readonly<Record<OwnField, string>> | undefined;

  override render(): TemplateResult {
    const say = words().tagsSheet.own;
    const { own } = this;
    return html`<fieldset class="ts-own"><legend class="choice-label">${say.title}</legend><div class="ts-figures-in">${OWN_FIELDS.map((field) => html`<asf-field
      kind="number" .label=${say.fields[field]} .value=${own?.[field] ?? ''} .error=${own && ownFigure(field, own[field]) === null ? say.wrong : ''}
      @input=${(event: Event) => { this.tell('asf-own', { field, text: textOf(event) }); }}></asf-field>`)}</div></fieldset>`;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-own-sheet': OwnSheet } }
