import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Group, Route, Standing } from '../../bridge/protocol';
import '../kit/button';
import '../kit/choice';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { ROUTES_IN_ORDER, routeWord } from '../routes/route-word';
import { words } from '../words';
import './pick';
import type { ListState } from './list-state';

const GROUPS: readonly Group[] = ['assembly', 'place', 'route', 'standing', 'none'];
const STANDINGS: readonly Standing[] = ['on', 'off', 'judged', 'decided'];

/** What a list may be narrowed by. */
export type Narrowing = Pick<ListState, 'assembly' | 'place' | 'standing' | 'route' | 'struck'>;
export type FilterChange = Partial<{ [K in 'group' | keyof Narrowing]: ListState[K] | undefined }>;

/** Group by, and show only. Tells `asf-filter` with what changed. */
@customElement('asf-parts-filters')
export class PartsFilters extends LightElement {
  @property({ attribute: false }) group?: Group;
  @property({ attribute: false }) narrowing: Narrowing = { struck: false };
  /** Struck-out parts can be asked for. */
  @property({ type: Boolean }) strikes = false;

  private readonly places = new Live(this, 'places', () => ({ ask: 'places' }));
  private readonly assemblies = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));

  override render(): TemplateResult {
    const say = words().parts;
    const { assembly = '', place = '', standing = '', route = '', struck } = this.narrowing;
    return html`<div class="filters">
      ${this.group === undefined ? nothing : html`<asf-choice compact columns="3" .label=${say.group} .options=${GROUPS.map((value) => ({ value, word: say.groups[value] }))} .value=${this.group}
        @asf-change=${(event: CustomEvent<{ value: Group }>) => { this.change({ group: event.detail.value }); }}></asf-choice>`}
      <fieldset class="filters-only"><legend class="choice-label">${say.only}</legend><div class="filters-picks">
        ${this.pick(say.fields.assembly, say.anyAssembly, assembly, this.assemblyOptions(), (value) => ({ assembly: value }))}
        ${this.pick(say.fields.place, say.anyPlace, place, this.placeOptions(), (value) => ({ place: value }))}
        ${this.pick(say.fields.standing, say.anyStanding, standing, STANDINGS.map((value) => [value, words().standings[value]]), (value) => ({ standing: value as Standing | undefined }))}
        ${this.pick(say.fields.route, say.anyRoute, route, ROUTES_IN_ORDER.map((value) => [value, routeWord(value)]), (value) => ({ route: value as Route | undefined }))}
      </div></fieldset>
      ${this.strikes ? html`<asf-choice compact columns="2" .label=${say.which} .options=${[{ value: 'present', word: say.present }, { value: 'struck', word: say.struck }]} .value=${struck ? 'struck' : 'present'}
        @asf-change=${(event: CustomEvent<{ value: string }>) => { this.change({ struck: event.detail.value === 'struck' }); }}></asf-choice>` : nothing}
      ${assembly || place || standing || route || struck ? html`<asf-button compact word=${say.showAll} @click=${() => { this.change({ assembly: undefined, place: undefined, standing: undefined, route: undefined, struck: false }); }}></asf-button>` : nothing}
    </div>`;
  }

  private pick(label: string, any: string, value: string, options: readonly (readonly [string, string])[], change: (value: string | undefined) => FilterChange): TemplateResult {
    return html`<asf-pick .label=${label} .options=${[['', any] as const, ...options]} .value=${value}
      @asf-change=${(event: CustomEvent<{ value: string }>) => { this.change(change(event.detail.value || undefined)); }}></asf-pick>`;
  }

  private assemblyOptions(): (readonly [string, string])[] {
    return (this.assemblies.view?.assemblies ?? []).map(({ record, side, depth }) => [record.id, `${'\u2003'.repeat(depth)}${record.values.name ?? words().parts.noName}${side ? ` ${words().sides[side]}` : ''}`]);
  }

  private placeOptions(): (readonly [string, string])[] {
    return (this.places.view?.places ?? []).map(({ record, depth }) => [record.id, `${'\u2003'.repeat(depth)}${record.values.name ?? words().parts.noName}`]);
  }

  private change(change: FilterChange): void {
    this.tell<FilterChange>('asf-filter', change);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-parts-filters': PartsFilters } }
