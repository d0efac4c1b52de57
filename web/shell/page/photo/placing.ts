import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '../kit/button';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { moved, resized, turned, type MarkShape } from './mark-shape';

const STEP = 200;

/** A mark on its way: moved and sized by buttons and keys. Tells `asf-mark` while it changes, `asf-put` and `asf-leave`. */
@customElement('asf-placing')
export class Placing extends LightElement {
  @property({ attribute: false }) mark?: MarkShape | undefined;
  @property({ type: Number }) aspect = 1;

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.pressed);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.pressed);
    super.disconnectedCallback();
  }

  override render(): TemplateResult | typeof nothing {
    const { mark } = this;
    if (!mark) return nothing;
    const say = words().photo;
    const button = (word: string, key: string, sign = word): TemplateResult => html`<asf-button compact word=${sign} label="${sign} ${word}" @click=${() => { this.act(key); }}></asf-button>`;
    return html`<p class="reckoned">${mark.shape === 'ring' ? say.placeRing : say.placeArrow} <span class="second">${say.keys}</span></p>
      <div class="placing-keys">${button(say.left, 'ArrowLeft', '←')}${button(say.right, 'ArrowRight', '→')}${button(say.up, 'ArrowUp', '↑')}${button(say.down, 'ArrowDown', '↓')}
        ${button(say.smaller, '-', '−')}${button(say.larger, '+', '+')}${mark.shape === 'arrow' ? button(say.turn, 't') : nothing}</div>
      <div class="primary-and-second"><asf-primary small verb=${say.put} icon=${mark.shape} @click=${() => { this.tell('asf-put', null); }}></asf-primary>
        <asf-button word=${words().kit.close} @click=${() => { this.tell('asf-leave', null); }}></asf-button></div>`;
  }

  private act(key: string): boolean {
    if (!this.mark) return false;
    const next = this.next(this.mark, key);
    if (next) this.tell('asf-mark', next);
    else if (key === 'Enter') this.tell('asf-put', null);
    else if (key === 'Escape') this.tell('asf-leave', null);
    else return false;
    return true;
  }

  private next(mark: MarkShape, key: string): MarkShape | null {
    const down = STEP * this.aspect;
    switch (key) {
      case 'ArrowLeft': return moved(mark, [-STEP, 0]);
      case 'ArrowRight': return moved(mark, [STEP, 0]);
      case 'ArrowUp': return moved(mark, [0, -down]);
      case 'ArrowDown': return moved(mark, [0, down]);
      case '+': case '=': return resized(mark, 1.15);
      case '-': return resized(mark, 1 / 1.15);
      case 't': case 'T': return mark.shape === 'arrow' ? turned(mark, this.aspect) : null;
    }
    return null;
  }

  private readonly pressed = (event: KeyboardEvent): void => {
    if (!this.mark || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target instanceof HTMLElement && event.target.matches('input, textarea, select')) return;
    // Enter on a button presses that button.
    if (event.key === 'Enter' && event.target instanceof HTMLElement && event.target.matches('button, a')) return;
    if (this.act(event.key)) event.preventDefault();
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-placing': Placing } }
