import { html, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { desk } from '../bridge/desk';
import { Arrival } from './frame/arrival';
import './frame/notices';
import { KeepingWord } from './frame/keeping-word';
import { go, startAt } from './frame/start';
import * as journal from './journal';
import './kit';
import { LightElement } from './kit/light-element';
import { addressOf, places, type Address, type PlaceElement, type PlaceEntry } from './places';
import { words } from './words';

type Showing = 'loading' | 'here' | 'unknown' | 'failed';

/** The frame: index or rail, the place that the address names, and what has to be said above all places. */
@customElement('asfound-app')
export class App extends LightElement {
  @state() private showing: Showing = 'loading';
  @state() private address: Address = addressOf('');

  private readonly keeping = new KeepingWord(this);
  private readonly arrival = new Arrival();
  private place: PlaceElement | null = null;
  private shown = '';

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('hashchange', this.turn);
    void startAt(location.hash).then((hash) => {
      if (location.hash === hash) this.turn();
      else go(hash, true);
    });
  }

  override disconnectedCallback(): void {
    window.removeEventListener('hashchange', this.turn);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const under = this.entry?.under ?? '';
    return html`<div class="frame ${under === '' && this.address.place === 'first' ? 'frame-alone' : ''}">
      <a class="skip" href="#page" @click=${this.skip}>${words().frame.skip}</a>
      <asf-index .current=${under} home="#/job" keeping=${this.keeping.word} .keepingIcon=${this.keeping.icon}></asf-index>
      <main class="frame-page" id="page" tabindex="-1">
        <asf-notices></asf-notices>
        ${this.showing === 'here' ? this.place : this.notShown()}
      </main></div>`;
  }

  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    // While the next place is still loading, the one shown keeps its own address.
    if (this.place?.localName === tagOf(this.address.place)) this.place.address = this.address;
  }

  private get entry(): PlaceEntry | undefined {
    return places[this.address.place];
  }

  private notShown(): TemplateResult {
    const text = words().frame;
    if (this.showing === 'loading') return html`<p class="body second" role="status">${words().first.loading}</p>`;
    if (this.showing === 'unknown') return html`<div class="body"><asf-empty .first=${text.notHere} .then=${text.notHereTodo}></asf-empty></div>`;
    return html`<div class="body"><asf-empty .first=${text.loadFailed} .then=${text.loadFailedTodo}>
        <asf-button word=${text.reload} icon="rotate" @click=${() => { location.reload(); }}></asf-button></asf-empty></div>`;
  }

  private readonly turn = (): void => {
    const job = desk.current();
    const last = this.address;
    this.address = addressOf(location.hash);
    if (job === null && this.entry && !this.entry.withoutJob) { go('#/first', true); return; }
    // With no job open, be it for want of storage, the place to come back to stays as it was.
    if (job !== null) journal.at({ job, hash: location.hash });
    void this.show(last, document.activeElement);
  };

  private async show(last: Address, before: Element | null): Promise<void> {
    const { place, id } = this.address;
    if (this.shown === place && this.showing === 'here') {
      await this.updateComplete;
      if (this.place && this.shown === place) void this.arrival.at(this.place, { before, focus: true, sameRecord: last.id === id });
      return;
    }
    const entry = this.entry;
    this.shown = place;
    if (!entry) { this.showing = 'unknown'; return; }
    try {
      await entry.load();
    } catch {
      if (this.shown === place) this.showing = 'failed';
      return;
    }
    if (this.shown !== place) return;
    const isFirst = this.place === null;
    this.place = makePlace(place, this.address);
    this.showing = 'here';
    this.requestUpdate();
    await this.updateComplete;
    window.scrollTo(0, 0);
    if (this.shown === place) void this.arrival.at(this.place, { before, focus: !isFirst, sameRecord: false });
  }

  private readonly skip = (event: Event): void => {
    event.preventDefault();
    this.querySelector<HTMLElement>('#page')?.focus();
  };
}

function tagOf(place: string): string {
  return `asf-place-${place}`;
}

function makePlace(name: string, address: Address): PlaceElement {
  const element = document.createElement(tagOf(name)) as PlaceElement;
  element.address = address;
  element.classList.add('place');
  return element;
}

declare global { interface HTMLElementTagNameMap { 'asfound-app': App } }
