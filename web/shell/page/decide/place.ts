import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { CostView, InspectView, PartView, QuoteCost, UndecidedPart } from '../../bridge/protocol';
import { carryOut, takeBack } from '../carry-out';
import '../cautions/cautions';
import '../certainty/certainty';
import { KeepingWord } from '../frame/keeping-word';
import { go } from '../frame/start';
import '../judge/findings';
import { answered } from '../judge/said';
import '../judge/verdict';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/key';
import '../kit/primary';
import '../kit/route-key';
import '../kit/section';
import '../kit/side';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import '../measures/measures';
import type { Measures } from '../measures/measures';
import { settlingSaid } from '../measures/proof-said';
import { Once } from '../once';
import { tagFigures } from '../parts/tag-figures';
import { tagInHand } from '../parts/tag-in-hand';
import type { Address } from '../places';
import '../routes/bars';
import { choosing } from '../routes/choosing';
import { sorted } from '../routes/figure-words';
import { flips } from '../routes/flips';
import '../routes/quote-form';
import { routeWord, unusedRoute } from '../routes/route-word';
import '../routes/who-dialog';
import { whoDecides } from '../routes/who-dialog';
import { working } from '../routes/working';
import { say as aloud } from '../say';
import '../sheet/photos';
import '../styles/decide.css';
import '../styles/judge.css';
import '../styles/routes.css';
import '../styles/sheet.css';
import { today } from '../today';
import { words } from '../words';
import { minorDigits, money, moneyRound } from '../words/format';
import { Queue } from './queue';

/** The undecided one after another, most at stake first: photos, what was found and proved, routes; by keyboard alone on a desk. */
@customElement('asf-place-decide')
export class PlaceDecide extends LightElement {
  @property({ attribute: false }) address!: Address;
  @state() private picked = '';
  @state() private asking = false;
  @state() private quoting = false;
  @state() private keys = false;
  @state() private works = false;
  @query('asf-measures') private measures!: Measures | null;

  private readonly queue = new Queue(this);
  private readonly once = new Once();
  private readonly whole = new Live(this, 'part', () => (this.partId ? { ask: 'part', part: this.partId } : null));
  private readonly inspect = new Live(this, 'inspect', () => (this.partId ? { ask: 'inspect', part: this.partId } : null));
  private readonly cost = new Live(this, 'cost', () => (this.partId ? { ask: 'cost', part: this.partId, today: today() } : null));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly keeping = new KeepingWord(this);
  private last = '';

  private get partId(): string { return this.address.id ?? ''; }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.pressed);
    document.addEventListener('asf-taken-back', this.takenBack);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.pressed);
    document.removeEventListener('asf-taken-back', this.takenBack);
    super.disconnectedCallback();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const [first] = this.queue.parts;
    if (!this.partId && first) queueMicrotask(() => { this.to(first); });
    if (!changed.has('address') || !this.hasUpdated) return;
    this.picked = '';
    this.works = false;
    [this.whole, this.inspect, this.cost].forEach((live) => { live.anew(); });
  }

  override updated(changed: PropertyValues<this>): void {
    super.updated(changed);
    const part = this.whole.view?.line;
    if (!part || part.id !== this.partId || part.id === this.last) return;
    if (this.last) {
      window.scrollTo(0, 0);
      this.querySelector<HTMLElement>('.head-title')?.focus({ preventScroll: true });
    }
    this.last = part.id;
  }

  override render(): TemplateResult {
    const say = words().decide;
    const all = this.queue.parts;
    if (this.queue.view && all.length === 0) return html`<asf-head .name=${say.title} back="#/parts" .cells=${[this.keeping.cell]}></asf-head><div class="body"><asf-empty .first=${say.allDone.first} .then=${say.allDone.then}><asf-button icon="plan" word=${say.allDone.go} href="#/plan"></asf-button></asf-empty></div>`;
    const [whole, inspect, cost] = [this.whole.view, this.inspect.view, this.cost.view];
    if (!this.partId || !whole || !inspect || !cost) return html`<asf-head .name=${say.title} back="#/parts" .cells=${[this.keeping.cell]}></asf-head><div class="body"><p class="reckoned" role="status">${this.queue.failed ? say.slow : say.ranking}</p></div>`;
    return html`${this.bar(whole)}<div class="body decide-body">${this.where(all)}<asf-cautions step="route" .partId=${this.partId}></asf-cautions>
        <div class="decide-columns"><section class="decide-photos" aria-label=${say.photos}><asf-sheet-photos .view=${whole}></asf-sheet-photos>${this.notes(whole)}</section>
        <section class="decide-found"><asf-verdict .view=${inspect} most="3"></asf-verdict><asf-findings .view=${inspect} still></asf-findings><asf-measures .view=${inspect}></asf-measures></section>
        <section class="decide-routes">${this.routes(cost)}</section></div></div>
      <div class="foot decide-foot">${this.foot(inspect, cost)}</div>${this.footKeys()}
      <asf-dialog .open=${this.quoting} .label=${words().costing.form.title} .body=${this.quoting ? html`<asf-quote-form .view=${cost} .route=${unusedRoute(cost)} @asf-put=${() => { this.quoting = false; }}></asf-quote-form>` : nothing} @asf-close=${() => { this.quoting = false; }}></asf-dialog>
      <asf-dialog .open=${this.keys} .label=${say.keys} .body=${this.keyList()} @asf-close=${() => { this.keys = false; }}></asf-dialog>
      <asf-who-dialog .open=${this.asking} @asf-close=${() => { this.asking = false; }} @asf-who=${(event: CustomEvent<{ who: string }>) => { this.asking = false; void this.choose(event.detail.who); }}></asf-who-dialog>`;
  }

  private bar({ line }: PartView): TemplateResult {
    const side = line.side ? html`<asf-side side=${line.side} driver=${this.head.view?.settings.driver_side ?? 'right'}></asf-side>` : nothing;
    return html`<asf-head sheet class="head-words-tight" .name=${line.name || words().sheet.noName} .second=${html`${line.side ? html`<b class="decide-side">${words().sides[line.side]} · </b>` : nothing}${line.assembly_name}<span class="decide-place">${line.place.map((one) => ` · ${one}`)}</span>`} .tag=${tagInHand(line)} .side=${side} back="#/parts" .cells=${[this.keeping.cell]}></asf-head>`;
  }

  private where(all: readonly UndecidedPart[]): TemplateResult {
    const say = words().decide;
    const at = all.findIndex(({ part }) => part === this.partId);
    const row = all[at];
    const stake = row && isMuch(row) ? say.stake(moneyRound(row.regret)) : row?.waits ? say.waits[row.waits] : say.noStake;
    return html`<div class="decide-where"><p><b>${row ? say.of(at + 1, all.length) : say.gone.first}</b> <span class="second">${row ? `${say.first}; ${stake}.` : say.gone.then}</span></p>
      <span class="decide-turn"><asf-button compact icon="back" word=${say.before} key="←" @click=${() => { this.turn(-1); }}></asf-button><asf-button compact icon="next" word=${say.next} key="→" @click=${() => { this.turn(1); }}></asf-button></span></div>`;
  }

  private notes({ notes }: PartView): TemplateResult | typeof nothing {
    const texts = notes.map(({ record }) => record.values.text ?? '').filter(Boolean);
    return texts.length ? html`${texts.map((text) => html`<p class="reckoned">“${text}”</p>`)}` : nothing;
  }

  private routes(view: CostView): TemplateResult {
    const say = words().costing;
    const picked = this.pick(view);
    return html`<asf-section .label=${say.title} .count=${html`<asf-route-key ?no-brackets=${!view.quotes.some(({ guess }) => guess)} ?again=${view.quotes.some(({ renewals }) => renewals > 0)}></asf-route-key>`}>
      ${view.quotes.length ? html`<asf-route-bars .view=${view} .picked=${picked?.id ?? ''} @asf-pick=${(event: CustomEvent<{ id: string }>) => { this.picked = event.detail.id; }}></asf-route-bars>` : html`<p class="reckoned">${say.empty.first}</p>`}
      ${view.quotes.length ? html`<asf-button class="routes-another" icon="add" key="A" word=${say.another} @click=${() => { this.quoting = true; }}></asf-button>` : nothing}</asf-section>
      ${flips(view)}<asf-certainty .view=${view}></asf-certainty>${picked && this.works ? working(view, picked) : nothing}`;
  }

  /** One thing is the next: to measure where proof is what is missing, else to choose. */
  private foot(inspect: InspectView, cost: CostView): TemplateResult {
    const say = words().decide;
    const picked = this.suggested(cost);
    const unproved = inspect.measures.find(({ settling }) => settling);
    const settle = unproved && settlingSaid(unproved);
    const row = this.queue.parts.find(({ part }) => part === this.partId);
    const worth = row && isMuch(row) ? say.worth(moneyRound(row.regret)) : '';
    const open = inspect.together.filter(({ standing }) => standing !== 'decided').length;
    const verb = picked ? (open > 0 ? say.chooseAll(routeWord(picked.route), open + 1) : say.choose(routeWord(picked.route))) : say.addQuote;
    const price = picked ? (picked.why ? words().costing.reasons[picked.why] : picked.cash ? say.cash(money(picked.cash), open + 1) : '') : '';
    const act = (): void => { this.act(cost); };
    return html`${settle ? html`<asf-primary .verb=${settle} .cost=${worth} key="M" @click=${() => { this.measures?.measureMore(); }}></asf-primary>
        <asf-button word=${verb} key="Enter" ?disabled=${picked ? !picked.allowed : false} @click=${act}></asf-button>`
      : html`<asf-primary .verb=${verb} .cost=${price} key="Enter" ?disabled=${picked ? !picked.allowed : false} @click=${act}></asf-primary>`}
      <div class="pair"><asf-button icon="skip" word=${say.later} key="L" @click=${() => { this.putOff(); }}></asf-button><asf-button icon="find" word=${wayToJudge(inspect)} key="F" href=${`#/judge/${this.partId}`}></asf-button></div>`;
  }

  private footKeys(): TemplateResult {
    return html`<div class="decide-keys" aria-hidden="true">${Object.entries(words().decide.keyList).map(([key, what]) => html`<span><asf-key name=${key}></asf-key> ${what}</span>`)}</div>`;
  }

  private keyList(): TemplateResult {
    return html`<dl class="key-list">${Object.entries(words().decide.keyList).map(([key, what]) => html`<div><dt><asf-key name=${key}></asf-key></dt><dd>${what}</dd></div>`)}</dl>`;
  }

  /** What is chosen by the next tap: nothing where only what may not be chosen is there, and nobody pointed at it. */
  private suggested(view: CostView): QuoteCost | undefined {
    const picked = this.pick(view);
    return picked?.allowed || this.picked ? picked : undefined;
  }

  private pick(view: CostView): QuoteCost | undefined {
    return view.quotes.find(({ id }) => id === this.picked) ?? view.quotes.find(({ id }) => id === view.cheapest) ?? sorted(view)[0];
  }

  private to(row: UndecidedPart | undefined): void {
    if (row) go(`#/decide/${row.part}`, true);
  }

  private turn(step: number): void {
    this.to(this.queue.after(this.partId, step));
  }

  private putOff(): void {
    this.to(this.queue.later(this.partId));
  }

  /** The next thing: to choose what is suggested, else to put a quote down. */
  private act(view: CostView): void {
    if (this.suggested(view)) this.decide();
    else this.quoting = true;
  }

  private decide(): void {
    const who = whoDecides();
    if (who === null) this.asking = true;
    else void this.choose(who);
  }

  private async choose(who: string): Promise<void> {
    const { view } = this.cost;
    const picked = view && this.pick(view);
    if (!view || !picked?.allowed) { aloud(words().decide.noRoute); return; }
    await this.once.run('choose', view, () => this.choosePicked(view, picked, who));
  }

  /** Whether it was stored. */
  private async choosePicked(view: CostView, picked: QuoteCost, who: string): Promise<boolean> {
    const { command, parts } = await choosing(view, picked, who);
    const say = words().costing;
    const what = parts.length > 1 ? say.choosenBoth(routeWord(picked.route), parts.length) : say.choosen(routeWord(picked.route));
    // The next part is in hand by the time this is read: it says which one it was.
    const tag = this.whole.view?.line.tag;
    const { ok, entry } = await carryOut(command, tag === undefined ? what : words().decide.done(tagFigures(tag), what));
    if (!ok) return false;
    this.undoable = { entry: entry ?? '', part: view.part };
    this.to(this.queue.decided(parts));
    return true;
  }

  private undoable = { entry: '', part: '' };

  private async undo(): Promise<void> {
    const { entry } = this.undoable;
    if (entry) await takeBack(entry, words().decide.undone);
  }

  /** By whichever way the last choice was taken back: its part is in hand again. */
  private readonly takenBack = ({ detail }: CustomEvent<string>): void => {
    const { entry, part } = this.undoable;
    if (!entry || detail !== entry) return;
    this.undoable = { entry: '', part: '' };
    this.queue.reopened();
    go(`#/decide/${part}`, true);
  };

  private readonly pressed = (event: KeyboardEvent): void => {
    const { key, target } = event;
    // What the notice has carried out is not carried out once more.
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || event.repeat || document.querySelector('dialog[open]')) return;
    if (target instanceof HTMLElement && target.matches('input, textarea, select')) return;
    if (key === 'Enter' && target instanceof Element && target.closest('button, a, summary')) return;
    if (this.carriesOut(key)) event.preventDefault();
  };

  private carriesOut(key: string): boolean {
    const { view } = this.cost;
    const quote = view && sorted(view)[Number(key) - 1];
    if (quote) { this.picked = quote.id; return true; }
    switch (key.length === 1 ? key.toLowerCase() : key) {
      // What is still on its way is not answered.
      case 'Enter': if (view) this.act(view); return true;
      case 'l': this.putOff(); return true;
      case 'ArrowLeft': this.turn(-1); return true;
      case 'ArrowRight': this.turn(1); return true;
      case 'f': go(`#/judge/${this.partId}`); return true;
      case 'm': this.measures?.measureMore(); return true;
      case 'a': this.quoting = true; return true;
      case 'w': this.works = !this.works; return true;
      case 'p': this.querySelector<HTMLAnchorElement>('.sheet-photo')?.click(); return true;
      case 'z': void this.undo(); return true;
      case '?': this.keys = true; return true;
      default: return false;
    }
  }
}

/** What is left to do at its questions. */
function wayToJudge(inspect: InspectView): string {
  const say = words().decide;
  if (inspect.family === undefined || answered(inspect) === 0) return say.finding;
  return inspect.next === undefined ? say.look : say.goOn;
}

/** Whether anything worth telling is at stake: a whole unit of the currency. */
function isMuch({ regret }: UndecidedPart): boolean {
  return regret.minor >= 10 ** minorDigits(regret.currency);
}

declare global { interface HTMLElementTagNameMap { 'asf-place-decide': PlaceDecide } }
