import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, type DeskEvents, type Keeping, type StoreTrouble } from '../../bridge/desk';
import '../hand-over/job-file-out';
import * as journal from '../journal';
import '../kit/button';
import '../kit/dialog';
import '../kit/field';
import '../kit/head';
import '../kit/leader';
import '../kit/message';
import '../kit/primary';
import '../kit/room';
import '../kit/section';
import '../kit/stamp';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import '../styles/hand-over.css';
import '../styles/sheet.css';
import { words } from '../words';
import { dayOfYear } from '../words/format';
import { readNumber } from '../words/read';
import { daysSince, isDue, readRemind, type Remind } from './due';

/** Where the first photos are missing to go by: a phone photo and its smaller ones. */
const USUAL_PHOTO = 3.5e6;

/** Whether everything is safe, and what would make it safer. */
@customElement('asf-place-safe-keeping')
export class PlaceSafeKeeping extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private keeping: Keeping | undefined;
  @state() private trouble: StoreTrouble | null = desk.trouble();
  @state() private waiting = 0;
  @state() private setting = false;
  @state() private asked = '';
  @state() private making = false;
  @state() private wrong = '';
  private typed: { photos: string; days: string } = { photos: '', days: '' };
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override connectedCallback(): void {
    super.connectedCallback();
    desk.addEventListener('changed', this.look);
    desk.addEventListener('trouble', this.troubled);
    desk.addEventListener('saving', this.saving);
    this.look();
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('changed', this.look);
    desk.removeEventListener('trouble', this.troubled);
    desk.removeEventListener('saving', this.saving);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().safeKeeping;
    const { keeping } = this;
    return html`<asf-head .name=${say.title} .second=${this.head.view?.job.values.name ?? ''} back="#/job"></asf-head>
      <div class="body keep-body">${keeping ? html`${this.state_(keeping)}${this.room(keeping)}${this.cleared(keeping)}${this.last(keeping)}` : html`<p class="second" role="status">${say.asking}</p>`}
        ${this.making ? html`<asf-job-file-out></asf-job-file-out>` : nothing}
        <div class="keep-links pair"><asf-button icon="bring" word=${say.rescue} href="./rescue.html"></asf-button><asf-button icon="gauge" word=${say.selfTest} href="#/self-test"></asf-button></div>
        <p class="second">${say.rescueLead}</p></div>
      ${keeping && !this.making ? html`<div class="foot keep-foot"><asf-primary .verb=${say.make} .cost=${keeping.usage === null ? '' : say.cost(keeping.usage)} @click=${this.make}></asf-primary></div>` : nothing}
      <asf-dialog .open=${this.setting} .label=${say.remind.title} .body=${this.setting ? this.form() : nothing} @asf-close=${() => { this.setting = false; }}></asf-dialog>`;
  }

  private state_(keeping: Keeping): TemplateResult {
    const say = words().safeKeeping;
    const bad = this.trouble !== null;
    const title = bad ? say.trouble : this.waiting > 0 ? say.waiting(this.waiting) : keeping.persisted === true ? say.kept : say.keptNotPromised;
    return html`<div class="keep-head"><asf-stamp quiet size="64" .state=${bad ? 'failed' : this.waiting > 0 ? 'saving' : 'kept'}></asf-stamp>
      <div role="status"><h2 class="keep-title">${title}</h2><p>${say.counts(keeping.photos, keeping.entries)} ${bad ? nothing : say.disk}</p></div></div>
      ${keeping.private_window ? html`<asf-message kind="alert" .happened=${say.privateWindow.happened} .safe=${say.privateWindow.safe} .todo=${say.privateWindow.todo}></asf-message>` : nothing}`;
  }

  private room({ usage, quota, photos }: Keeping): TemplateResult {
    const say = words().safeKeeping;
    if (usage === null || quota === null) return html`<asf-section .label=${say.room}><p class="second">${say.roomUnknown}</p></asf-section>`;
    const each = photos > 20 ? Math.max(2e5, usage / photos) : USUAL_PHOTO;
    const left = Math.max(0, quota - usage);
    // Round down to what can be promised: the browser's figure is padded.
    const more = Math.floor((left * 0.9) / each);
    const rounded = more > 100 ? Math.floor(more / 10 ** Math.floor(Math.log10(more))) * 10 ** Math.floor(Math.log10(more)) : more;
    return html`<asf-section .label=${say.room}><asf-room .used=${usage} .total=${quota} more=${say.more(rounded)}></asf-room>
      ${usage / quota > 0.7 || left < 1e9 ? html`<p class="reckoned"><b>${say.roomShort}</b></p>` : nothing}</asf-section>`;
  }

  private cleared({ persisted }: Keeping): TemplateResult {
    const say = words().safeKeeping;
    return html`<asf-section .label=${say.cleared} .count=${html`<b>${persisted === true ? say.no : say.mayBe}</b>`}>
      <p class="reckoned">${persisted === true ? say.promised : html`${say.notPromised} ${say.notPromisedDo}`}</p>
      ${persisted === true ? nothing : html`<asf-button icon="kept" word=${say.askAgain} @click=${this.persist}></asf-button><p role="status">${this.asked || nothing}</p>`}</asf-section>`;
  }

  private last(keeping: Keeping): TemplateResult {
    const say = words().safeKeeping;
    const remind = this.remind();
    const { handed_out, photos, photos_since, entries } = keeping;
    const due = isDue(remind, keeping, Date.now());
    const made = handed_out === null ? say.never : say.days(dayOfYear(new Date(handed_out)), say.ago(daysSince(handed_out, Date.now())));
    const lost = handed_out === null ? (photos > 0 ? say.neverLost(photos) : say.lost(0, entries)) : say.lost(photos_since, 0);
    return html`<asf-section .label=${say.last} .count=${due ? html`<span class="flag">${say.due}</span>` : ''}>
        <asf-leader .label=${say.made} .value=${made}></asf-leader>
        <asf-leader big .label=${say.since} .value=${String(handed_out === null ? photos : photos_since)}></asf-leader>
        <p class="reckoned">${lost ? html`<b>${lost}</b> ${say.saves}` : say.safe}</p></asf-section>
      <button type="button" class="sheet-link" @click=${() => { this.typed = { photos: String(remind.photos), days: String(remind.days) }; this.wrong = ''; this.setting = true; }}>
        <span>${say.remind.lead}<b>${say.remind.photos(remind.photos)}</b>${say.remind.or}<b>${say.remind.days(remind.days)}</b></span><span class="sheet-link-value"></span><asf-icon name="next" size="20"></asf-icon></button>
      ${keeping.persisted === true ? nothing : html`<p class="second">${say.remind.fits}</p>`}`;
  }

  private form(): TemplateResult {
    const say = words().safeKeeping.remind;
    const field = (name: 'photos' | 'days', label: string): TemplateResult => html`<asf-field kind="number" .label=${label} .value=${this.typed[name]} .error=${this.wrong === name ? say.wrong : ''} @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) this.typed = { ...this.typed, [name]: event.target.value }; this.wrong = ''; }}></asf-field>`;
    return html`<form class="bring" @submit=${this.setRemind}>${field('photos', say.photosLabel)}${field('days', say.daysLabel)}<asf-primary small kind="submit" verb=${say.put} icon="check"></asf-primary></form>`;
  }

  private readonly setRemind = (event: Event): void => {
    event.preventDefault();
    for (const name of ['photos', 'days'] as const) {
      const figure = readNumber(this.typed[name]);
      if (figure !== null && Number.isInteger(figure) && figure > 0) continue;
      this.wrong = name;
      return;
    }
    journal.prefer('remind', `${this.typed.photos.trim()},${this.typed.days.trim()}`);
    this.setting = false;
  };

  private remind(): Remind {
    return readRemind(journal.preference('remind'));
  }

  private readonly make = async (): Promise<void> => {
    this.making = true;
    await this.updateComplete;
    const out = this.querySelector('asf-job-file-out');
    await out?.updateComplete;
    out?.scrollIntoView({ block: 'center' });
    await out?.prepare();
  };

  private readonly persist = async (): Promise<void> => {
    const say = words().safeKeeping.asked;
    try {
      this.asked = await navigator.storage.persist() ? say.yes : say.no;
    } catch {
      this.asked = say.no;
    }
    this.look();
  };

  private readonly look = (): void => {
    desk.keeping().then((keeping) => { this.keeping = keeping; }, () => undefined);
  };

  private readonly troubled = ({ detail }: DeskEvents['trouble']): void => { this.trouble = detail; };
  private readonly saving = ({ detail }: DeskEvents['saving']): void => { this.waiting = detail.waiting; };
}

declare global { interface HTMLElementTagNameMap { 'asf-place-safe-keeping': PlaceSafeKeeping } }
