import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { LightElement } from './light-element';

let sliders = 0;

/** A figure that is slid between two ends; what it says stands beside its name, and is what a reader hears. */
@customElement('asf-slider')
export class Slider extends LightElement {
  @property() label = '';
  @property({ type: Number }) min = 0;
  @property({ type: Number }) max = 100;
  @property({ type: Number }) step = 1;
  @property({ type: Number }) value = 0;
  /** The figure in words. */
  @property() said = '';
  @property() hint = '';

  private readonly field = `asf-slider-${++sliders}`;

  override render(): TemplateResult {
    return html`<div class="slider"><label for=${this.field}>${this.label}</label><output for=${this.field}><b>${this.said}</b></output>
      <input id=${this.field} type="range" min=${this.min} max=${this.max} step=${this.step} .value=${String(this.value)} aria-valuetext=${this.said} aria-describedby=${this.hint ? `${this.field}-hint` : nothing}
        @input=${(event: Event) => { this.slide(event); }}>
      ${this.hint ? html`<span class="second" id="${this.field}-hint">${this.hint}</span>` : nothing}</div>`;
  }

  private slide(event: Event): void {
    event.stopPropagation();
    if (event.target instanceof HTMLInputElement) this.tell('asf-slide', { value: Number(event.target.value) });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-slider': Slider } }
