import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Command, CostView, QuoteCost } from '../../bridge/protocol';
import { backOf } from '../back-of';
import { carryOut } from '../carry-out';
import '../cautions/cautions';
import { strikeOut } from '../strike-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/primary';
import '../kit/route-key';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { noteOpen, openBefore } from '../reopening';
import { tagInHand } from '../parts/tag-in-hand';
import type { Address } from '../places';
import { today } from '../today';
import '../rules/breaches';
import { stanceChoice } from '../suppliers/stance';
import '../styles/routes.css';
import '../styles/sheet.css';
import { words } from '../words';
import { hours, money } from '../words/format';
import '../certainty/certainty';
import './bars';
import { choosing } from './choosing';
import { decision, overtaken } from './decision';
import { sorted } from './figure-words';
import { flips } from './flips';
import './kit';
import './quote-form';
import { routeWord, unusedRoute } from './route-word';
import './who-dialog';
import { whoDecides } from './who-dialog';
import { working } from './working';

const PLACE = 'routes';

/** The quotes of a part side by side, and the decision. */
@customElement('asf-place-routes')
export class PlaceRoutes extends LightElement {
  @property({ attribute: false }) address?: Address;
  @state() private picked = '';
  /** Which quote the form is open for; 'new' for another. */
  @state() private editing = '';
  @state() private asking = false;

  private readonly cost = new Live(this, 'cost', () => (this.partId ? { ask: 'cost', part: this.partId, today: today() } : null));
  private readonly whole = new Live(this, 'part', () => (this.partId ? { ask: 'part', part: this.partId } : null));
  private readonly keeping = new KeepingWord(this);

  private get partId(): string { return this.address?.id ?? ''; }

  override connectedCallback(): void {
    super.connectedCallback();
    const [part, quote = ''] = openBefore(PLACE).split('/');
    if (part === this.partId) this.editing = quote;
    document.addEventListener('keydown', this.pressed);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.pressed);
    noteOpen(PLACE, '');
    super.disconnectedCallback();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('address') || !this.hasUpdated || this.cost.view?.part === this.partId) return;
    this.picked = '';
    this.edit('');
    this.cost.anew();
    this.whole.anew();
  }

  override render(): TemplateResult {
    const { view } = this.cost;
    return html`${this.head()}
      <div class="body routes-body"><asf-cautions step="route" .partId=${this.partId}></asf-cautions><asf-breaches .partId=${this.partId}></asf-breaches>${view ? this.body(view) : nothing}</div>
      ${view ? this.foot(view) : nothing}
      <asf-dialog .open=${this.isOpen(view)} .label=${words().costing.form.title} .body=${view && this.isOpen(view) ? this.form(view) : nothing} @asf-close=${() => { this.edit(''); }}></asf-dialog>
      <asf-who-dialog .open=${this.asking} @asf-close=${() => { this.asking = false; }} @asf-who=${(event: CustomEvent<{ who: string }>) => { this.asking = false; void this.choose(event.detail.who); }}></asf-who-dialog>`;
  }

  private head(): TemplateResult {
    const line = this.whole.view?.line;
    return html`<asf-head sheet class="head-words-tight" .name=${line?.name || words().sheet.noName} .second=${line?.assembly_name ?? ''} .tag=${line ? tagInHand(line) : nothing} back=${backOf(this.address, `#/part/${this.partId}`)} .cells=${[this.keeping.cell]}></asf-head>`;
  }

  private body(view: CostView): TemplateResult {
    const say = words().costing;
    if (view.quotes.length === 0) return html`<asf-empty .first=${say.empty.first} .then=${say.empty.then}></asf-empty>`;
    const picked = this.pick(view);
    return html`<div class="columns"><div>${overtaken(view)}<asf-section .label=${say.title} .count=${html`<asf-route-key ?no-brackets=${!view.quotes.some(({ guess }) => guess)} ?again=${view.quotes.some(({ renewals }) => renewals > 0)}></asf-route-key>`}>
        <asf-route-bars .view=${view} .picked=${picked?.id ?? ''} @asf-pick=${(event: CustomEvent<{ id: string }>) => { this.picked = event.detail.id; }}></asf-route-bars>
        <asf-button class="routes-another" icon="add" key="A" word=${say.another} @click=${() => { this.edit('new'); }}></asf-button></asf-section>
      ${flips(view)}<asf-certainty .view=${view}></asf-certainty></div><div>
      ${picked ? html`${working(view, picked)}<div class="pair">
        <asf-button icon="note" word=${say.editWord} label=${say.edit(routeWord(picked.route))} @click=${() => { this.edit(picked.id); }}></asf-button>
        <asf-button icon="strike" word=${say.strike} label="${say.strike}: ${routeWord(picked.route)}" @click=${() => { void strikeOut(picked.record, say.struck); }}></asf-button></div>
        <div class="routes-stance">${stanceChoice(picked.record)}<p class="second">${words().stance.quoteHint}</p></div>` : nothing}
      ${this.kit(view, picked)}
      ${decision(view, () => { void carryOut({ do: 'change', ids: [this.partId], changes: [{ clear: 'chosen' }] }, say.unchosen); })}</div></div>`;
  }

  private kit(view: CostView, picked: QuoteCost | undefined): TemplateResult | typeof nothing {
    const kit = view.kits.find(({ quote }) => quote === picked?.id);
    return kit ? html`<asf-kit .view=${view} .kit=${kit} @asf-choose-all=${(event: CustomEvent<{ parts: string[] }>) => { void this.chooseAll(kit.quote, event.detail.parts); }}></asf-kit>` : nothing;
  }

  /** One kit for every part that it covers and that is not decided otherwise. */
  private async chooseAll(quote: string, parts: readonly string[]): Promise<void> {
    const who = whoDecides();
    const commands = parts.map((part): Command => ({ do: 'choose', id: newId(), quote, part, ...(who && { who }) }));
    await carryOut({ do: 'all', commands }, words().costing.kit.chosenAll(parts.length));
  }

  private foot(view: CostView): TemplateResult | typeof nothing {
    const say = words().costing;
    const picked = this.pick(view);
    if (!picked) return html`<div class="foot"><asf-primary .verb=${say.add} icon="add" key="A" @click=${() => { this.edit('new'); }}></asf-primary></div>`;
    if (view.chosen?.values.quote === picked.id && Math.round(view.chosen.values.expected_then ?? -1) === Math.round(picked.present.minor)) return nothing;
    return html`<div class="foot routes-foot"><asf-primary .verb=${`${say.choose}\n${routeWord(picked.route)}`} .cost=${picked.why ? say.reasons[picked.why] : costWords(picked)} ?disabled=${!picked.allowed} key="C" @click=${() => { this.decide(); }}></asf-primary></div>`;
  }

  private form(view: CostView): TemplateResult {
    const quote = view.quotes.find(({ id }) => id === this.editing);
    return html`<asf-quote-form .view=${view} .quote=${quote} .route=${unusedRoute(view)} @asf-put=${this.putDown}></asf-quote-form>`;
  }

  /** What is to be changed has to be here still: it may have been struck out meanwhile. */
  private isOpen(view: CostView | undefined): boolean {
    return this.editing === 'new' || (view?.quotes.some(({ id }) => id === this.editing) ?? false);
  }

  private edit(quote: string): void {
    this.editing = quote;
    noteOpen(PLACE, quote && `${this.partId}/${quote}`);
  }

  /** The quotes side by side are what comes next, wherever the page was scrolled to. */
  private readonly putDown = (): void => {
    this.edit('');
    this.picked = '';
    this.querySelector('.routes-body')?.scrollTo({ top: 0 });
    window.scrollTo({ top: 0 });
  };

  private pick(view: CostView): QuoteCost | undefined {
    return view.quotes.find(({ id }) => id === this.picked) ?? view.quotes.find(({ id }) => id === view.cheapest) ?? sorted(view)[0];
  }

  private decide(): void {
    const who = whoDecides();
    if (who === null) this.asking = true;
    else void this.choose(who);
  }

  private async choose(who: string): Promise<void> {
    const { view } = this.cost;
    const picked = view && this.pick(view);
    if (!view || !picked) return;
    const { command, parts } = await choosing(view, picked, who);
    await carryOut(command, parts.length > 1 ? words().costing.choosenBoth(routeWord(picked.route), parts.length) : words().costing.choosen(routeWord(picked.route)));
  }

  private readonly pressed = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || document.querySelector('dialog[open]')) return;
    if (event.target instanceof HTMLElement && event.target.matches('input, textarea, select')) return;
    const { view } = this.cost;
    const quote = view && sorted(view)[Number(event.key) - 1];
    if (quote) this.picked = quote.id;
    else if (event.key === 'a' || event.key === 'A') this.edit('new');
    else if ((event.key === 'c' || event.key === 'C') && view && this.pick(view)?.allowed) this.decide();
    else return;
    event.preventDefault();
  };
}

/** What is paid for a route whatever happens. */
function costWords(quote: QuoteCost): string {
  const say = words().costing;
  return [quote.cash ? say.cashOf(money(quote.cash)) : '', quote.own_time > 0 ? say.timeOf(hours(quote.own_time)) : ''].filter(Boolean).join('\n');
}

declare global { interface HTMLElementTagNameMap { 'asf-place-routes': PlaceRoutes } }
