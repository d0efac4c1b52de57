import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { desk, newId } from '../../bridge/desk';
import type { AssemblyLine, Change, Check, Command } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import '../assemblies/early';
import { early } from '../assemblies/early';
import { assemblyGone } from '../assemblies/gone';
import '../assemblies/reference';
import { Viewfinder, type Shot } from '../camera/viewfinder';
import { CAMERA, readPicture } from '../camera/pictures-in';
import { carryOut } from '../carry-out';
import '../cautions/cautions';
import { textOf } from '../field-text';
import { go } from '../frame/start';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/head';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Pictures } from '../pictures';
import type { Address } from '../places';
import '../styles/assemblies.css';
import '../styles/teardown.css';
import '../teardown/sight';
import type { Sight } from '../teardown/sight';
import { unsavedPhotos } from '../unsaved-photos';
import { words } from '../words';
import { answered, answerTo, CHECKS } from './checks';

/** What is looked at before an assembly is slackened: answered in words or by a photo, or skipped. */
@customElement('asf-place-before')
export class BeforePlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  /** The check whose photo the viewfinder is open for. */
  @state() private aiming: Check | null = null;
  /** It is kept whole as the reference, and is about to be stripped. */
  @state() private asking = false;
  @query('asf-sight') private sight!: Sight | null;

  private readonly live = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private readonly pictures = new Pictures(this);
  private readonly finder = new Viewfinder();
  /** Answers on their way. */
  private readonly putting = new Set<string>();

  override disconnectedCallback(): void {
    this.finder.close();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const text = words().before;
    const { line } = this;
    if (!line) return html`<asf-head .name=${text.title} back="#/assemblies"></asf-head>${this.live.view ? assemblyGone() : nothing}`;
    return html`<asf-head .name=${text.title} .second=${[line.record.values.name ?? words().assemblies.unnamed, line.side ? words().sides[line.side] : '', text.done(answered(line), CHECKS.length)].filter(Boolean).join(' · ')} back="#/assemblies"></asf-head>
      ${this.aiming ? html`<asf-sight class="bf-sight" .finder=${this.finder} @asf-shoot=${this.shoot} .over=${html`<div class="td-plates"><span class="td-kind">${text.check[this.aiming]}</span></div>`}></asf-sight>
        <div class="body"><div class="pair"><asf-button icon="camera" word=${text.photo} label=${text.photoOf(text.check[this.aiming])} @click=${this.shoot}></asf-button>
        <asf-button word=${words().kit.close} @click=${() => { this.aim(null); }}></asf-button></div></div>` : nothing}
      <div class="body"><asf-cautions step="take-apart" .assembly=${line.record.id}></asf-cautions><p class="reckoned">${text.why}</p><div class="bf-list">${CHECKS.map((check) => this.check(line, check))}</div>
        <div class="bf-reference"><asf-reference .record=${line.record}></asf-reference></div>
        <asf-button icon="list" word=${words().commissioning.fluids.title} href=${openedFrom('#/refit/fluids', `before/${line.record.id}`)}></asf-button></div>
      <div class="foot bf-foot"><asf-primary verb=${text.go} cost=${text.goCost} @click=${() => { if (early(line)) this.asking = true; else this.take(line.record.id); }}></asf-primary></div>
      <asf-early .line=${this.asking ? line : null} @asf-strip=${() => { this.asking = false; this.take(line.record.id); }} @asf-leave=${() => { this.asking = false; }}></asf-early>
      <input class="bf-file" hidden type="file" accept=${CAMERA} capture="environment" @change=${this.chosen}>`;
  }

  private get line(): AssemblyLine | undefined {
    return this.live.view?.assemblies.find(({ record }) => record.id === this.address.id);
  }

  private check(line: AssemblyLine, check: Check): TemplateResult {
    const text = words().before;
    const name = text.check[check];
    const key = keyOf(line, check);
    const record = answerTo(line, check);
    const skipped = record?.values.skipped === true;
    const photos = line.photos.filter(({ record: { values, struck } }) => !struck && values.check === check);
    return html`<section class="bf-check" data-check=${check} aria-label=${name}>
      <div class="bf-head"><b>${name}</b><span class="second">${skipped ? text.skipped : record ? text.answered : text.open}${photos.length > 0 ? ` · ${text.photos(photos.length)}` : ''}</span></div>
      <p class="second">${text.ask[check]}</p>
      ${photos.length > 0 ? html`<div class="bf-photos">${photos.map(({ record: { id, values } }) => html`<a href="#/photo/${id}" aria-label=${text.photoOf(name)}><asf-photo .src=${this.pictures.small(values.blob ?? '')} state="kept"></asf-photo></a>`)}</div>` : nothing}
      ${skipped ? nothing : html`<form @submit=${(event: Event) => { event.preventDefault(); void this.putDown(line, check); }} @focusout=${() => { void this.putDown(line, check); }}>
        <asf-field label=${text.answer} .value=${journal.typedBefore(key) ?? record?.values.text ?? ''} @input=${(event: Event) => { journal.typing(key, textOf(event)); }}></asf-field></form>`}
      <div class="pair">
        <asf-button icon="camera" word=${text.photo} label=${text.photoOf(name)} @click=${() => { this.aim(check); }}></asf-button>
        ${skipped ? html`<asf-button word=${text.unskip} @click=${() => { void this.answer(line, check, { skipped: false }, text.answered); }}></asf-button>`
          : record ? nothing : html`<asf-button word=${text.skip} label=${text.skipName(name)} @click=${() => { void this.answer(line, check, { skipped: true }, text.skippedSaid(name)); }}></asf-button>`}
      </div></section>`;
  }

  private async answer(line: AssemblyLine, check: Check, change: Change, message: string): Promise<boolean> {
    const { ok } = await carryOut(this.answering(line, check, [change]), message);
    return ok;
  }

  // Enter and leaving the field put down what was typed and is not stored: also what an earlier try, or an ended page, left there.
  private async putDown(line: AssemblyLine, check: Check): Promise<void> {
    const key = keyOf(line, check);
    const typed = journal.typedBefore(key);
    if (typed === null || this.putting.has(key)) return;
    const text = words().before;
    this.putting.add(key);
    const stored = typed.trim() === (answerTo(line, check)?.values.text ?? '') || await this.answer(line, check, { text: typed.trim() }, text.saved(text.check[check]));
    this.putting.delete(key);
    // What was typed meanwhile is not stored yet.
    if (stored && journal.typedBefore(key) === typed) journal.typed(key);
  }

  private answering(line: AssemblyLine, check: Check, changes: Change[]): Command {
    const record = answerTo(line, check);
    if (record) return { do: 'change', ids: [record.id], changes };
    return { do: 'create', id: newId(), kind: 'before', changes: [{ assembly: line.record.id }, { check }, { taken: Date.now() }, ...changes] };
  }

  private aim(check: Check | null): void {
    this.aiming = check;
    if (!check) { this.finder.close(); return; }
    this.finder.open();
    window.scrollTo(0, 0);
  }

  private readonly shoot = (): void => {
    const { sight } = this.finder;
    if (sight === 'refused' || sight === 'none') { this.querySelector<HTMLInputElement>('.bf-file')?.click(); return; }
    const shot = this.finder.shoot();
    if (!shot) { void this.finder.start(); return; }
    this.sight?.blink();
    this.record(shot.bytes);
  };

  private readonly chosen = (event: Event): void => {
    if (!(event.target instanceof HTMLInputElement)) return;
    for (const file of event.target.files ?? []) this.record(readPicture(file));
    event.target.value = '';
  };

  private record(picture: Shot['bytes']): void {
    const { line, aiming } = this;
    if (!line || !aiming) return;
    const text = words().before;
    const taken = Date.now();
    void unsavedPhotos.save(picture, async ({ bytes, media_type }) => {
      // As it stands at this try: the check may be answered, and the place left, since the one before.
      const now = await lineOf(line.record.id) ?? line;
      const photo: Command = { do: 'create', id: newId(), kind: 'photo', changes: [
        { of: line.record.id }, { moment: 'before' }, { shot: aiming === 'index-marks' ? 'index-mark' : 'plain' }, { check: aiming },
        { taken }, { order: now.photos.length + 1 }, { blob: '$0' }, { length: bytes.byteLength }, { media_type }] };
      // A photo answers the check by itself.
      const answer = answerTo(now, aiming) ? [] : [this.answering(now, aiming, [])];
      return { do: 'all', commands: [photo, ...answer] };
    }, text.photoTaken(text.check[aiming]));
  }

  private take(assembly: string): void {
    journal.hold(desk.current() ?? '', { assembly });
    go('#/teardown');
  }
}

function keyOf(line: AssemblyLine, check: Check): string {
  return `before:${line.record.id}:${check}`;
}

async function lineOf(assembly: string): Promise<AssemblyLine | undefined> {
  const view = await desk.ask({ ask: 'assemblies' });
  return view.view === 'assemblies' ? view.assemblies.find(({ record }) => record.id === assembly) : undefined;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-before': BeforePlace } }
