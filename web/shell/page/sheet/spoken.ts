import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk } from '../../bridge/desk';
import type { RecordView } from '../../bridge/protocol';
import '../kit/button';
import { LightElement } from '../kit/light-element';
import { words } from '../words';
import { length } from '../words/format';

/** A spoken note, played back. Its stretches are joined in their order; they were recorded as one. */
@customElement('asf-spoken')
export class Spoken extends LightElement {
  @property({ attribute: false }) slices: readonly RecordView[] = [];
  @state() private playing = false;
  @state() private unreadable = false;
  private audio: HTMLAudioElement | undefined;
  private address = '';

  override disconnectedCallback(): void {
    this.stop();
    URL.revokeObjectURL(this.address);
    this.address = '';
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().sheet.notes;
    const seconds = this.slices.reduce((sum, { values }) => sum + (values.lasts ?? 0), 0) / 1000;
    return html`<div class="spoken"><asf-button icon=${this.playing ? 'stop' : 'play'} word=${this.playing ? say.stop : say.play} label="${this.playing ? say.stop : say.play}, ${say.spoken}" @click=${this.turn}></asf-button>
      <span>${say.spoken}${seconds > 0 ? `, ${length(seconds)}` : nothing}</span></div>${this.unreadable ? html`<p role="alert">${say.unreadable}</p>` : nothing}`;
  }

  private readonly turn = async (): Promise<void> => {
    if (this.playing) {
      this.stop();
      return;
    }
    try {
      this.address ||= URL.createObjectURL(await this.sound());
      this.audio = new Audio(this.address);
      this.audio.addEventListener('ended', () => { this.stop(); });
      this.playing = true;
      await this.audio.play();
    } catch {
      this.unreadable = true;
      this.stop();
    }
  };

  private async sound(): Promise<Blob> {
    const stretches = await Promise.all(this.slices.map(({ values }) => (values.blob ? desk.photo(values.blob) : null)));
    const type = this.slices[0]?.values.media_type ?? '';
    return new Blob(stretches.filter((one) => one !== null), { type });
  }

  private stop(): void {
    this.audio?.pause();
    this.audio = undefined;
    this.playing = false;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-spoken': Spoken } }
