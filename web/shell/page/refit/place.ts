import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { go } from '../frame/start';
import { LightElement } from '../kit/light-element';
import type { Address } from '../places';
import '../styles/parts.css';
import '../styles/refit.css';
import '../styles/sheet.css';
import './assembly';
import './commissioning';
import './fluids-place';
import './home';
import './loose';
import './outside';
import './step';
import type { Ticked } from './step';

const desk = matchMedia('(min-width: 62.5em)');

/** Refit: all assemblies, one of them step by step, what is still loose, and the way to the road. On a desk the steps stand beside the one in hand. */
@customElement('asf-place-refit')
export class PlaceRefit extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private wide = desk.matches;
  private shown = '';
  /** The last tick: taken back by whichever way, its step is in hand again. */
  private last: Ticked = { entry: '', part: '', assembly: undefined };

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('change', this.resized);
    document.addEventListener('asf-taken-back', this.takenBack);
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('change', this.resized);
    document.removeEventListener('asf-taken-back', this.takenBack);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const { id } = this.address;
    switch (id) {
      case null: return html`<asf-refit-home></asf-refit-home>`;
      case 'loose': return html`<asf-refit-loose></asf-refit-loose>`;
      case 'commissioning': return html`<asf-commissioning></asf-commissioning>`;
      case 'fluids': return html`<asf-fluids-place .address=${this.address}></asf-fluids-place>`;
      default: return this.assembly(id);
    }
  }

  private get step(): string {
    return this.address.search.get('step') ?? '';
  }

  private assembly(id: string): TemplateResult {
    const { step } = this;
    const one = step && step !== 'next' ? html`<asf-refit-step .partId=${step} .assembly=${id} ?beside=${this.wide} @asf-step=${this.moved} @asf-ticked=${(event: CustomEvent<Ticked>) => { this.last = event.detail; }}></asf-refit-step>` : nothing;
    const list = id === 'none' ? html`<asf-refit-outside .current=${step}></asf-refit-outside>` : html`<asf-refit-assembly .assembly=${id} .current=${step} ?panes=${this.wide} ?lists=${this.wide && one !== nothing}></asf-refit-assembly>`;
    if (!this.wide) return one === nothing ? list : html`${one}`;
    if (one === nothing) return list;
    return html`<div class="parts-panes rf-panes"><div class="parts-pane">${list}</div><div class="parts-pane parts-pane-sheet">${one}</div></div>`;
  }

  /** Another step comes in the place of this one: the way back leads to where the first was opened from. */
  private readonly moved = (event: CustomEvent<{ part: string; assembly: string | undefined }>): void => {
    this.to(event.detail.part, event.detail.assembly);
  };

  private readonly takenBack = ({ detail }: CustomEvent<string>): void => {
    const { entry, part, assembly } = this.last;
    if (!entry || detail !== entry) return;
    this.last = { entry: '', part: '', assembly: undefined };
    this.to(part, assembly);
  };

  private to(part: string, assembly: string | undefined): void {
    go(part ? `#/refit/${assembly ?? 'none'}?step=${part}` : assembly ? `#/refit/${assembly}` : '#/refit', true);
  }

  // One element serves all of it: a new page of it begins at its top.
  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    const now = `${this.address.id ?? ''}?${this.step}`;
    if (!changed.has('address') || now === this.shown) return;
    const isFirst = this.shown === '';
    this.shown = now;
    if (isFirst) return;
    window.scrollTo(0, 0);
    this.querySelector('.parts-pane-sheet')?.scrollTo(0, 0);
  }

  private readonly resized = (): void => { this.wide = desk.matches; };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-refit': PlaceRefit } }
