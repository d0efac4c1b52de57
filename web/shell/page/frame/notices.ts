import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import { takeBack, type Done } from '../carry-out';
import '../kit/button';
import '../kit/message';
import '../kit/undo';
import { LightElement } from '../kit/light-element';
import { addressOf } from '../places';
import { applyUpdate, updateIsWaiting, updates } from '../update';
import { words } from '../words';
import './alerts';
import { mayInterrupt } from './interrupting';

/** An action that ends in another place is there within this time. */
const LEADS_AWAY = 1500;
/** These take back what was done there by themselves. */
const TAKES_BACK = new Set(['scan']);

/** What is said above all places: trouble with storing, what was refused, a new version, and what can be taken back. */
@customElement('asf-notices')
export class Notices extends LightElement {
  @state() private version: 'none' | 'waiting' | 'changed' = updateIsWaiting() ? 'waiting' : 'none';
  @state() private done: Done | null = null;
  @state() private said = '';
  private saving = 0;
  private place = addressOf(location.hash).place;
  private doneAt = 0;

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('saving', this.isSaving);
    document.addEventListener('asf-done', this.isDone);
    document.addEventListener('asf-say', this.say);
    updates.addEventListener('ready', this.ready);
    updates.addEventListener('waiting', this.updateWaits);
    updates.addEventListener('changed', this.updateChanged);
    window.addEventListener('hashchange', this.moved);
    document.addEventListener('keydown', this.key);
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('saving', this.isSaving);
    document.removeEventListener('asf-done', this.isDone);
    document.removeEventListener('asf-say', this.say);
    updates.removeEventListener('ready', this.ready);
    updates.removeEventListener('waiting', this.updateWaits);
    updates.removeEventListener('changed', this.updateChanged);
    window.removeEventListener('hashchange', this.moved);
    document.removeEventListener('keydown', this.key);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    return html`<asf-alerts></asf-alerts>${this.updateBar()}
      <p class="unseen" role="status" aria-live="polite">${this.said}</p>
      <asf-undo .message=${this.done?.message ?? ''} ?open=${this.done?.entry != null} @asf-undo=${this.undo} @asf-gone=${() => { this.done = null; }}></asf-undo>`;
  }

  private updateBar(): TemplateResult | typeof nothing {
    const text = words().frame.update;
    if (this.version === 'none' || this.saving > 0 || !mayInterrupt()) return nothing;
    const isChanged = this.version === 'changed';
    return html`<asf-message class="notice" .happened=${isChanged ? text.changed : text.happened} .safe=${text.safe}>
      <div class="pair"><asf-button word=${isChanged ? text.reload : text.take} icon="rotate" @click=${this.takeUpdate}></asf-button>
      <asf-button word=${text.later} @click=${() => { this.version = 'none'; }}></asf-button></div></asf-message>`;
  }

  private readonly takeUpdate = (): void => {
    if (this.version === 'changed') location.reload();
    else applyUpdate();
  };

  private readonly undo = async (): Promise<void> => {
    const entry = this.done?.entry;
    this.done = null;
    if (!entry) return;
    const { ok } = await takeBack(entry, words().frame.undone);
    if (!ok) this.said = words().frame.undoFailed;
  };

  // In a field the key is the field's own.
  private readonly key = (event: KeyboardEvent): void => {
    const isWriting = event.target instanceof Element && event.target.closest('input:not([type="radio"], [type="checkbox"]), textarea, select') !== null;
    if (event.key.toLowerCase() !== 'z' || isWriting || event.altKey || event.repeat || !this.done?.entry) return;
    event.preventDefault();
    void this.undo();
  };

  private readonly isSaving = (event: CustomEvent<{ waiting: number }>): void => {
    this.saving = event.detail.waiting;
    if (this.version !== 'none') this.requestUpdate();
  };

  private readonly isDone = (event: CustomEvent<Done>): void => {
    this.done = event.detail.entry ? event.detail : null;
    this.doneAt = performance.now();
    if (!event.detail.entry) this.said = event.detail.message;
  };

  private readonly say = (event: Event): void => {
    if (event instanceof CustomEvent) this.said = (event as CustomEvent<string>).detail;
  };

  private readonly ready = (): void => { this.said = words().frame.offline; };
  private readonly moved = (): void => {
    // What was done in a place that is left is no longer in hand there; what led away from it still is.
    const { place } = addressOf(location.hash);
    if (place !== this.place && (TAKES_BACK.has(place) || performance.now() - this.doneAt > LEADS_AWAY)) this.done = null;
    this.place = place;
    // Where nothing is under way the question may be put.
    if (this.version !== 'none') this.requestUpdate();
  };
  private readonly updateWaits = (): void => { this.version = 'waiting'; };
  private readonly updateChanged = (): void => { this.version = 'changed'; };
}

declare global { interface HTMLElementTagNameMap { 'asf-notices': Notices } }
