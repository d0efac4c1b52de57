import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import '../kit/icon';
import '../kit/stamp';
import { LightElement } from '../kit/light-element';
import { say } from '../say';
import { words } from '../words';
import { length } from '../words/format';
import { SpokenNote, type Slice } from './spoken-note';

/** Shorter than this is a tap: the note then runs until the next one. */
const TAP = 400;

/** Hold to speak, with a finger or with a key; a short tap holds it until the next tap. */
@customElement('asf-hold-to-speak')
export class HoldToSpeak extends LightElement {
  /** Makes the id of a note when one begins; nothing while no note can be taken. */
  @property({ attribute: false }) begin: () => string | null = () => null;
  @property({ attribute: false }) slice: (slice: Slice) => void = () => undefined;
  /** How many slices of the note are safe. */
  @property({ type: Number }) safe = 0;
  @state() private since = 0;
  @state() private now = 0;

  private readonly note = new SpokenNote((slice) => { this.slice(slice); });
  private held: 'no' | 'down' | 'locked' = 'no';
  private pressed = 0;
  private timer: ReturnType<typeof setInterval> | undefined;

  constructor() {
    super();
    this.note.addEventListener('hearing', () => { this.heard(); });
  }

  override disconnectedCallback(): void {
    this.end();
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const { hearing } = this.note;
    const text = words().speak;
    const isOn = hearing === 'hearing' || hearing === 'starting';
    const word = { quiet: text.hold, starting: text.starting, hearing: text.speaking(length((this.now - this.since) / 1000)), refused: text.refused, none: text.none }[hearing];
    return html`<button type="button" class="second-button" aria-pressed=${isOn ? 'true' : 'false'} ?disabled=${!SpokenNote.isOffered}
      @pointerdown=${this.pointerDown} @pointerup=${this.up} @pointercancel=${this.cancel} @lostpointercapture=${this.up}
      @keydown=${this.keyDown} @keyup=${this.keyUp} @blur=${this.cancel} @click=${this.clicked} @contextmenu=${(event: Event) => { event.preventDefault(); }}>
      <asf-icon name=${isOn ? 'stop' : 'speak'}></asf-icon><span>${SpokenNote.isOffered ? word : text.none}</span>${
        isOn || this.safe > 0 ? html`<asf-stamp class="key-end" state=${this.safe > 0 ? 'kept' : 'saving'}></asf-stamp>` : nothing}</button>`;
  }

  private readonly pointerDown = (event: PointerEvent): void => {
    if (!event.isPrimary || event.button !== 0) return;
    if (event.currentTarget instanceof Element) event.currentTarget.setPointerCapture(event.pointerId);
    this.down();
  };

  private readonly keyDown = (event: KeyboardEvent): void => {
    if (event.key !== ' ' && event.key !== 'Enter') return;
    event.preventDefault();
    if (!event.repeat) this.down();
  };

  private readonly keyUp = (event: KeyboardEvent): void => {
    if (event.key !== ' ' && event.key !== 'Enter') return;
    event.preventDefault();
    this.up();
  };

  // A press by assistive technology comes as a bare click: it turns the note on and off.
  private readonly clicked = (event: MouseEvent): void => {
    if (event.detail !== 0 || performance.now() - this.pressed < 1000) return;
    if (this.held === 'no') { this.down(); this.held = 'locked'; } else this.end();
  };

  private down(): void {
    this.pressed = performance.now();
    if (this.held === 'locked') { this.end(); return; }
    const note = this.begin();
    if (note === null) return;
    this.held = 'down';
    void this.note.start(note);
  }

  private readonly up = (): void => {
    if (this.held !== 'down') return;
    if (performance.now() - this.pressed < TAP) { this.held = 'locked'; return; }
    this.end();
  };

  private readonly cancel = (): void => { if (this.held === 'down') this.end(); };

  private end(): void {
    this.held = 'no';
    this.pressed = performance.now();
    this.note.stop();
  }

  private heard(): void {
    clearInterval(this.timer);
    if (this.note.hearing === 'hearing') {
      this.since = performance.now();
      this.now = this.since;
      this.timer = setInterval(() => { this.now = performance.now(); }, 500);
      say(words().speak.started);
    } else if (this.note.hearing !== 'starting') this.held = 'no';
    this.requestUpdate();
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-hold-to-speak': HoldToSpeak } }
