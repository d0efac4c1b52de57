import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/head';
import '../kit/icon';
import '../kit/section';
import type { IconName } from '../kit/icon-drawings';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { places, type Address } from '../places';
import '../styles/first.css';
import { words } from '../words';
import { number } from '../words/format';

interface Under { place: string; word: string; icon: IconName; second?: string }

/** What lies under the job's name. */
@customElement('asf-place-job')
export class JobPlace extends LightElement {
  @property({ attribute: false }) address!: Address;
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words();
    const head = this.head.view;
    const second = head ? say.first.jobCounts(head.parts, head.photos) : '';
    return html`<asf-head .name=${head?.job.values.name ?? say.first.unnamed} .second=${second} back="#/teardown" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body">
        <asf-section .label=${say.first.ofJob}><nav aria-label=${say.first.ofJob}>${this.ofJob(head?.problems ?? 0).map(link)}</nav></asf-section>
        <asf-section .label=${say.first.ofDevice}><nav aria-label=${say.first.ofDevice}>${this.ofDevice().map(link)}</nav></asf-section>
      </div>`;
  }

  private ofJob(problems: number): Under[] {
    const say = words();
    return [
      { place: 'assemblies', word: say.first.assemblies, icon: 'teardown' },
      { place: 'where', word: say.where.title, icon: 'find' },
      { place: 'vehicles', word: say.places.vehicles, icon: 'vehicle' },
      { place: 'suppliers', word: say.places.suppliers, icon: 'supplier' },
      { place: 'rules', word: say.rules.title, icon: 'split' },
      { place: 'bought', word: say.bought.title, icon: 'box' },
      { place: 'paste', word: say.paste.title, icon: 'list' },
      { place: 'hand-over', word: say.places.handOver, icon: 'share' },
      { place: 'cautions', word: say.cautions.title, icon: 'caution' },
      { place: 'problems', word: say.first.problems, icon: 'not-proved', ...(problems > 0 && { second: number(problems) }) },
      { place: 'tags-sheet', word: say.first.tagsSheet, icon: 'printer' },
      { place: 'settings', word: say.places.settings, icon: 'settings' },
    ];
  }

  private ofDevice(): Under[] {
    const say = words();
    return [
      { place: 'safe-keeping', word: say.places.safeKeeping, icon: 'kept', second: this.keeping.word },
      { place: 'self-test', word: say.first.selfTest, icon: 'check' },
      { place: 'first', word: say.first.otherJob, icon: 'list' },
    ];
  }
}

function link({ place, word, icon, second }: Under): TemplateResult | typeof nothing {
  // A place that is not built is not offered.
  if (!places[place]) return nothing;
  return html`<a class="under-link" href="#/${place}"><asf-icon name=${icon}></asf-icon><span>${word}</span><span class="second">${second ?? ''}</span></a>`;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-job': JobPlace } }
