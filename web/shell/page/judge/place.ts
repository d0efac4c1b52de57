import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { AskedView, Change, Command, InspectView } from '../../bridge/protocol';
import { CAMERA, readPicture } from '../camera/pictures-in';
import { carryOut } from '../carry-out';
import '../cautions/cautions';
import { KeepingWord } from '../frame/keeping-word';
import { go } from '../frame/start';
import * as journal from '../journal';
import '../kit/button';
import '../kit/empty';
import '../kit/head';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { standingWord } from '../parts/tag-figures';
import { sideBefore, tagInHand } from '../parts/tag-in-hand';
import type { Address } from '../places';
import { say as aloud } from '../say';
import '../styles/judge.css';
import '../styles/sheet.css';
import { unsavedPhotos } from '../unsaved-photos';
import { words } from '../words';
import './answers';
import './family';
import { answering, leavingOut, photoOf } from './finding';
import './own-check';
import { ownCheckKey } from './own-check';
import { OWN_FAMILY, type MadeFamily } from './own-family';
import './question';
import { result } from './result';
import { answerWord, checkWords, familyName } from './said';
import { after, standAt, type Stand } from './stand';

/** Judges one part: first its family, then one question after another; last what it comes to. */
@customElement('asf-place-judge')
export class PlaceJudge extends LightElement {
  @property({ attribute: false }) address!: Address;
  /** The answer on its way to be stored. */
  @state() private putting = '';
  @query('.judge-file') private file!: HTMLInputElement | null;

  private readonly live = new Live(this, 'inspect', () => (this.partId ? { ask: 'inspect', part: this.partId } : null));
  private readonly whole = new Live(this, 'part', () => (this.partId ? { ask: 'part', part: this.partId } : null));
  private readonly keeping = new KeepingWord(this);
  private shown = '';

  private get partId(): string { return this.address.id ?? ''; }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.pressed);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.pressed);
    super.disconnectedCallback();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('address') || !this.hasUpdated || this.live.view?.part === this.partId) return;
    this.live.anew();
    this.whole.anew();
  }

  // A reader of the screen hears the next question, and keys go on from there.
  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    const { view } = this.live;
    const at = view && this.at(view);
    const key = at ? `${at.is}${at.is === 'question' ? view.asked[at.index]?.question ?? '' : ''}` : '';
    if (!key || key === this.shown) return;
    const isFirst = this.shown === '';
    this.shown = key;
    if (!isFirst) void this.turnTo();
  }

  override render(): TemplateResult {
    const say = words().judge;
    const { view } = this.live;
    if (this.live.nothing) return html`<asf-head .name=${say.title} back="#/parts"></asf-head><div class="body"><asf-empty .first=${say.gone.first} .then=${say.gone.then}><asf-button icon="parts" word=${say.gone.go} href="#/parts"></asf-button></asf-empty></div>`;
    if (!view || view.part !== this.partId) return this.head('');
    const at = this.at(view);
    switch (at.is) {
      case 'family': return html`${this.head(this.standing)}<div class="body judge-body">${this.cautions()}
        <asf-judge-family .view=${view} @asf-family=${this.chosen} @asf-made=${this.made}></asf-judge-family></div>`;
      case 'own': return html`${this.head(this.standing)}<div class="body judge-body">
        <asf-own-check .family=${view.family ?? ''} .familyName=${this.nameOf(view)} @asf-asked=${this.asked} @asf-back=${() => { this.to('result'); }}></asf-own-check></div>`;
      case 'result': return html`${this.head(this.standing)}${result(this.partId, view, this.cautions(), (to) => { this.to(to); })}`;
      case 'question': return this.question(view, at.index);
    }
  }

  private question(view: InspectView, index: number): TemplateResult {
    const say = words().judge;
    const asked = view.asked[index];
    if (!asked) return html`${nothing}`;
    return html`${this.head(html`<b>${say.question(index + 1, view.asked.length)}</b>`)}
      <div class="body judge-body">${this.cautions()}<asf-judge-question .view=${view} .at=${index}></asf-judge-question></div>
      <div class="foot judge-foot"><asf-answers .asked=${asked} .putting=${this.putting} @asf-answer=${(event: CustomEvent<{ outcome: string }>) => { void this.answer(view, index, event.detail.outcome); }}></asf-answers>
        <div class="judge-turn">
          <asf-button column icon="back" key="Backspace" word=${say.back} @click=${() => { this.previous(view, index); }}></asf-button>
          <asf-button column icon="camera" key="P" word=${say.photo} label=${say.photoOf(checkWords(asked).name)} @click=${() => { this.file?.click(); }}></asf-button>
          ${asked.answer || asked.skipped ? html`<asf-button column icon="next" key="Enter" word=${say.next} @click=${() => { this.next(view, index); }}></asf-button>`
            : html`<asf-button column icon="skip" key="S" word=${say.skip} @click=${() => { void this.skip(view, index); }}></asf-button>`}</div></div>
      <input class="judge-file" hidden type="file" accept=${CAMERA} multiple @change=${(event: Event) => { void this.taken(event, asked); }}>`;
  }

  private head(second: unknown): TemplateResult {
    const line = this.whole.view?.line;
    return html`<asf-head sheet class="head-words-tight" .name=${line?.name || words().sheet.noName} .second=${html`${line ? sideBefore(line) : nothing}${second}`} .tag=${line ? tagInHand(line) : nothing} back=${`#/part/${this.partId}`} .cells=${[this.keeping.cell]}></asf-head>`;
  }

  private get standing(): string {
    const line = this.whole.view?.line;
    return line ? standingWord(line) : '';
  }

  private cautions(): TemplateResult {
    return html`<asf-cautions step="judge" .partId=${this.partId}></asf-cautions>`;
  }

  private nameOf(view: InspectView): string {
    return familyName(view.family, view.own_families) || words().judge.family.none;
  }

  private at(view: InspectView): Stand {
    return standAt(view, this.address.search.get('at'));
  }

  private to(at: string): void {
    go(`#/judge/${this.partId}?at=${encodeURIComponent(at)}`, true);
  }

  private async turnTo(): Promise<void> {
    await this.updateComplete;
    await Promise.all([...this.querySelectorAll<LightElement>('asf-judge-question, asf-judge-family, asf-own-check')].map((one) => one.updateComplete));
    window.scrollTo(0, 0);
    const heading = this.querySelector<HTMLElement>('.judge-body h2[tabindex]');
    if (!this.querySelector('asf-own-check')) heading?.focus({ preventScroll: true });
  }

  private readonly chosen = (event: CustomEvent<{ family: string }>): void => {
    const { family } = event.detail;
    const view = this.live.view;
    const record = this.whole.view?.record;
    if (!view || !record) return;
    if (family === view.family) { this.to('result'); return; }
    void this.put({ do: 'change', ids: [this.partId], changes: [{ family }], seen: { family: record.seen.family ?? [] } }, words().judge.family.chosen(familyName(family, view.own_families)), '');
  };

  private readonly made = async (event: CustomEvent<MadeFamily>): Promise<void> => {
    const { name, single_use, pair, safety_critical, route } = event.detail;
    const id = newId();
    const record = this.whole.view?.record;
    const changes: Change[] = [{ name }, { single_use }, { pair }, { safety_critical }, ...(route ? [{ route }] : [])];
    const ok = await this.put({ do: 'all', commands: [{ do: 'create', id, kind: 'own-family', changes },
      { do: 'change', ids: [this.partId], changes: [{ family: id }], seen: { family: record?.seen.family ?? [] } }] }, words().judge.family.chosen(name), 'own');
    if (ok) journal.typed(OWN_FAMILY);
  };

  private readonly asked = async (event: CustomEvent<{ text: string }>): Promise<void> => {
    const family = this.live.view?.family;
    if (family === undefined) return;
    const id = newId();
    const ok = await this.put({ do: 'create', id, kind: 'own-check', changes: [{ family }, { text: event.detail.text }] }, words().judge.own.added, id);
    if (ok) journal.typed(ownCheckKey(family));
  };

  private async answer(view: InspectView, index: number, outcome: string): Promise<void> {
    const asked = view.asked[index];
    if (!asked || this.putting) return;
    if (asked.answer === outcome) { this.next(view, index); return; }
    this.putting = outcome;
    await this.put(answering(this.partId, asked, outcome), words().judge.answered(checkWords(asked).name, answerWord(asked, outcome)), after(view, index));
    this.putting = '';
  }

  private async skip(view: InspectView, index: number): Promise<void> {
    const asked = view.asked[index];
    if (!asked || this.putting) return;
    await this.put(leavingOut(this.partId, asked), words().judge.skippedSaid(checkWords(asked).name), after(view, index));
  }

  /** Stores it, says so to readers of the screen, and goes on. No offer to undo lies over the answers: back does that. */
  private async put(command: Command, said: string, to: string): Promise<boolean> {
    const { ok } = await carryOut(command);
    if (!ok) return false;
    aloud(said);
    if (to) this.to(to);
    else go(`#/judge/${this.partId}`, true);
    return true;
  }

  private next(view: InspectView, index: number): void {
    this.to(view.asked[index + 1]?.question ?? 'result');
  }

  private previous(view: InspectView, index: number): void {
    this.to(view.asked[index - 1]?.question ?? 'family');
  }

  private async taken(event: Event, { question }: AskedView): Promise<void> {
    const { target } = event;
    if (!(target instanceof HTMLInputElement)) return;
    const part = this.partId;
    const waiting = unsavedPhotos.count + unsavedPhotos.unread;
    // No message: an offer to undo would lie over the answers. The photo itself shows its tick.
    const saving = [...target.files ?? []].map((file) => unsavedPhotos.save(readPicture(file), (picture) => photoOf(part, question, file.lastModified || Date.now(), picture), ''));
    target.value = '';
    await Promise.all(saving);
    if (unsavedPhotos.count + unsavedPhotos.unread <= waiting) aloud(words().judge.photoSafe);
  }

  private readonly pressed = (event: KeyboardEvent): void => {
    const { key, target } = event;
    const { view } = this.live;
    if (!view || event.ctrlKey || event.metaKey || event.altKey || event.repeat || document.querySelector('dialog[open]')) return;
    if (target instanceof HTMLElement && target.matches('input, textarea, select')) return;
    // Enter and Space on a button or a link are its own.
    if (key === 'Enter' && target instanceof Element && target.closest('button, a, summary')) return;
    if (this.carriesOut(view, key)) event.preventDefault();
  };

  private carriesOut(view: InspectView, key: string): boolean {
    const at = this.at(view);
    if (at.is === 'result' && key === 'Enter') {
      this.querySelector<HTMLElement>('.foot asf-primary button')?.click();
      return true;
    }
    if (at.is !== 'question') return false;
    const outcome = view.asked[at.index]?.outcomes[Number(key) - 1];
    if (outcome) void this.answer(view, at.index, outcome.code);
    else if (key === 'Enter') this.next(view, at.index);
    else if (key === 'Backspace') this.previous(view, at.index);
    else if (key === 's' || key === 'S') void this.skip(view, at.index);
    else if (key === 'p' || key === 'P') this.file?.click();
    else return false;
    return true;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-judge': PlaceJudge } }
