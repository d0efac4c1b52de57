import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { desk } from '../../bridge/desk';
import type { PartLine, PartsGroup } from '../../bridge/protocol';
import '../kit/button';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import type { HeadCell } from '../kit/head';
import { LightElement } from '../kit/light-element';
import { Pictures } from '../pictures';
import { words } from '../words';
import './filters';
import type { FilterChange } from './filters';
import { groupSide, groupTitle } from './group-title';
import './keys';
import { keepListState, listState, queryOf } from './list-state';
import { stretches, topOfRow, wholeHeight, type Stretch } from './list-window';
import { partRow } from './part-row';
import { RowsInSight } from './rows-in-sight';
import { PartRows } from './rows';
import './selection';

/** The list of parts. Tells `asf-open` with the part when `panes` is set, where its sheet lies beside the list. */
@customElement('asf-parts-list')
export class PartsList extends LightElement {
  @property({ type: Boolean }) panes = false;
  /** The part whose sheet lies beside it. */
  @property() current = '';
  @state() private filtering = false;
  @state() private selecting = false;
  @state() private selected: ReadonlySet<string> = new Set();
  @state() private keysShown = false;

  /** The row that arrow keys start from. */
  private at = listState().at;
  private returned = false;
  private readonly rows = new PartRows(this, () => queryOf(listState()));
  private readonly pictures = new Pictures(this);
  private readonly sight: RowsInSight = new RowsInSight(this, () => this.querySelector('.parts-all'));

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('keydown', this.pressed);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('keydown', this.pressed);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().parts;
    return html`${this.head()}
      <div class="body parts-body">
        ${this.filtering ? html`<asf-parts-filters strikes .group=${listState().group} .narrowing=${listState()} @asf-filter=${this.filter}></asf-parts-filters>` : nothing}
        ${this.rows.summary ? this.found() : nothing}
      </div>
      <div class="foot foot-ruled parts-foot">
        ${this.selecting ? html`<asf-parts-selection .ids=${this.selected} .found=${this.rows.summary?.found ?? 0} ?struck=${listState().struck} @asf-all=${this.selectAll} @asf-none=${() => { this.selected = new Set(); }}></asf-parts-selection>` : html`
        <asf-field kind="find" icon="find" hide-label label=${say.find} placeholder=${say.findIn} .value=${listState().find} @input=${this.seek}></asf-field>`}
      </div>
      <asf-parts-keys .open=${this.keysShown} @asf-close=${() => { this.keysShown = false; }}></asf-parts-keys>`;
  }

  private head(): TemplateResult {
    const say = words().parts;
    const { summary } = this.rows;
    const cells: HeadCell[] = [
      { id: 'decide', word: words().decide.title, href: '#/decide' },
      { id: 'group', word: say.group, pressed: this.filtering },
      { id: 'select', word: this.selecting ? say.doneSelecting : say.select, pressed: this.selecting },
    ];
    const second = summary ? say.second(summary.found, summary.total, say.by[listState().group]) : '';
    return html`<asf-head .name=${listState().struck ? say.struck : say.title} .second=${html`<span role="status">${second}</span>`} .cells=${cells}
      @asf-cell=${(event: CustomEvent<{ id: string }>) => { if (event.detail.id === 'group') this.filtering = !this.filtering; else this.toggleSelecting(); }}></asf-head>`;
  }

  private found(): TemplateResult {
    const { summary } = this.rows;
    if (!summary || summary.found === 0) return this.empty();
    const [top, bottom] = this.sight.band;
    const drawn = stretches(this.groups(), top, bottom, this.heights());
    this.rows.want(drawn[0]?.from ?? 0, drawn.at(-1)?.to ?? 0);
    return html`<div class="parts-all" .style=${`height:${wholeHeight(this.groups(), this.heights())}px`}>
      ${repeat(drawn, ({ index }) => index, (stretch) => this.stretch(stretch))}</div>`;
  }

  private stretch({ group, index, from, to, top, withHead }: Stretch<PartsGroup>): TemplateResult {
    const say = words().parts;
    const headless = listState().group === 'none';
    const shown = Array.from({ length: to - from }, (_, i) => from + i);
    return html`<section class="parts-group" .style=${`transform:translateY(${top}px)`} aria-label=${headless ? say.list : nothing} aria-labelledby=${headless ? nothing : `parts-group-${index}`}>
      ${headless ? nothing : html`<div class=${withHead ? 'parts-head' : 'unseen'}><div class="section-head"><h2 class="section-label" id="parts-group-${index}">${groupTitle(group, listState().group)} ${groupSide(group)}</h2>
        <span class="section-count">${listState().find ? say.foundCount(group.count) : say.groupCount(group.count)}</span></div></div>`}
      <ul class="parts-rows">${repeat(shown, (row) => this.rows.row(row)?.id ?? row, (row) => html`<li class="parts-item" aria-setsize=${group.count} aria-posinset=${row - group.from + 1} data-row=${row}>${this.row(row, group)}</li>`)}</ul>
    </section>`;
  }

  private row(index: number, group: PartsGroup): TemplateResult | typeof nothing {
    const line = this.rows.row(index);
    if (!line) return nothing;
    const look = {
      picture: line.photo ? this.pictures.small(line.photo) : '', selecting: this.selecting, chosen: this.selected.has(line.id), current: this.panes && line.id === this.current,
      tellSide: listState().group === 'assembly' && line.side !== group.side,
    };
    return html`<div @click=${(event: MouseEvent) => { this.clicked(event, index, line); }}>${partRow(line, { ...look, href: `#/part/${line.id}` })}</div>`;
  }

  private clicked(event: MouseEvent, index: number, line: PartLine): void {
    this.at = index;
    if (this.selecting) this.toggle(line.id);
    else {
      keepListState({ at: index, part: line.id });
      if (this.panes && !event.metaKey && !event.ctrlKey) {
        event.preventDefault();
        this.tell('asf-open', { part: line.id });
      }
    }
  }

  private toggle(id: string): void {
    const next = new Set(this.selected);
    if (!next.delete(id)) next.add(id);
    this.selected = next;
  }

  private toggleSelecting(): void {
    this.selecting = !this.selecting;
    this.selected = new Set();
  }

  private readonly selectAll = async (): Promise<void> => {
    const view = await desk.ask({ ask: 'parts', ...queryOf(listState()) });
    if (view.view === 'parts') this.selected = new Set(view.rows.map(({ id }) => id));
  };

  private readonly filter = (event: CustomEvent<FilterChange>): void => { this.change(event.detail); };

  private readonly seek = (event: Event): void => {
    if (event.target instanceof HTMLInputElement) this.change({ find: event.target.value });
  };

  private change(change: Parameters<typeof keepListState>[0]): void {
    keepListState({ ...change, at: 0 });
    this.at = 0;
    this.selected = new Set();
    this.rows.anew();
    this.requestUpdate();
    this.querySelector('.parts-body')?.scrollIntoView({ block: 'start' });
  }

  private empty(): TemplateResult {
    const say = words().parts;
    const { find, struck, assembly, place, standing, route } = listState();
    if (find) return html`<asf-empty .first=${say.nothingFound(find).first} .then=${say.nothingFound(find).then}></asf-empty>`;
    if (struck) return html`<asf-empty .first=${say.noneStruck.first} .then=${say.noneStruck.then}></asf-empty>`;
    if (assembly || place || standing || route) return html`<asf-empty .first=${say.nothingLeft.first} .then=${say.nothingLeft.then}></asf-empty>`;
    return html`<asf-empty .first=${say.none.first} .then=${say.none.then}><asf-primary .verb=${say.none.go} icon="teardown" @click=${() => { location.hash = '#/teardown'; }}></asf-primary></asf-empty>`;
  }

  private groups(): PartsGroup[] {
    const { summary } = this.rows;
    if (!summary) return [];
    return summary.groups.length > 0 ? summary.groups : [{ title: '', count: summary.found, from: 0 }];
  }

  private heights(): RowsInSight['heights'] {
    return listState().group === 'none' ? { ...this.sight.heights, head: 0 } : this.sight.heights;
  }

  // ---- keys ----

  private readonly pressed = (event: KeyboardEvent): void => {
    const typing = event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || document.querySelector('dialog[open]')) return;
    if (typing && event.key === 'Escape' && event.target instanceof HTMLElement && this.contains(event.target)) event.target.blur();
    const inField = typing && event.target instanceof HTMLElement && event.target.closest('.parts-foot') !== null;
    if (typing && !(inField && (event.key === 'ArrowDown' || event.key === 'Enter'))) return;
    const outside = event.target instanceof Node && event.target !== document.body && !this.contains(event.target);
    if (this.act(event.key, outside)) event.preventDefault();
  };

  private act(key: string, outside: boolean): boolean {
    switch (key) {
      case '/': this.querySelector<HTMLInputElement>('.parts-foot input')?.focus(); return true;
      case '?': this.keysShown = true; return true;
      case 'Escape': if (this.selecting) this.toggleSelecting(); else this.filtering = false; return false;
    }
    if (outside) return false;
    switch (key) {
      case 'ArrowDown': this.go(this.focusedRow() === null ? this.at : this.at + 1); return true;
      case 'ArrowUp': this.go(this.at - 1); return true;
      case 'Home': this.go(0); return true;
      case 'End': this.go((this.rows.summary?.found ?? 1) - 1); return true;
      case 'PageDown': this.go(this.at + 8); return true;
      case 'PageUp': this.go(this.at - 8); return true;
      case 'g': case 'G': this.filtering = !this.filtering; return true;
      case 's': case 'S': void this.selectByKey(); return true;
      case 'm': case 'M': this.querySelector('asf-parts-selection')?.move(); return this.selecting;
      case 'Enter': return this.openFirst();
    }
    return false;
  }

  /** Links become buttons: the focus goes along with its row. */
  private async selectByKey(): Promise<void> {
    const wasOnRow = this.focusedRow() !== null;
    this.toggleSelecting();
    await this.updateComplete;
    if (wasOnRow) await this.focusRow(this.at, false);
  }

  /** Enter in the find field opens the best match. */
  private openFirst(): boolean {
    if (this.focusedRow() !== null || !document.activeElement?.closest('.parts-foot')) return false;
    this.go(0);
    return true;
  }

  private focusedRow(): Element | null {
    const active = document.activeElement;
    return active && this.contains(active) ? active.closest('.parts-item') : null;
  }

  private go(index: number): void {
    const last = (this.rows.summary?.found ?? 0) - 1;
    this.at = Math.max(0, Math.min(last, index));
    const all = this.querySelector('.parts-all');
    if (last < 0 || !all) return;
    keepListState({ at: this.at });
    this.showRow(this.at);
    void this.focusRow(this.at);
  }

  /** Brings a row into sight, whether it is drawn yet or not. */
  private showRow(index: number): void {
    const drawn = this.querySelector(`.parts-item[data-row="${index}"]`);
    if (drawn) drawn.scrollIntoView({ block: 'nearest' });
    else this.scrollTo_(topOfRow(this.groups(), index, this.heights()));
  }

  private scrollTo_(top: number): void {
    const all = this.querySelector('.parts-all');
    if (!all) return;
    const pane = this.closest('.parts-pane');
    const box = pane && getComputedStyle(pane).overflowY === 'auto' ? pane : document.scrollingElement;
    box?.scrollBy({ top: all.getBoundingClientRect().top + top - innerHeight / 3 });
  }

  private async focusRow(index: number, opens = true): Promise<void> {
    for (let tries = 0; tries < 20; tries += 1) {
      const target = this.querySelector<HTMLElement>(`.parts-item[data-row="${index}"] .row`);
      if (target) {
        target.focus();
        target.scrollIntoView({ block: 'nearest' });
        const line = this.rows.row(index);
        if (line && opens && this.panes && !this.selecting) this.tell('asf-open', { part: line.id });
        return;
      }
      await new Promise((resolve) => { requestAnimationFrame(resolve); });
    }
  }

  override updated(changed: PropertyValues): void {
    super.updated(changed);
    this.sight.soon();
    if (this.returned || !this.rows.summary) return;
    this.returned = true;
    // Back to where the list was left.
    if (this.at > 3) requestAnimationFrame(() => { this.showRow(this.at); });
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-parts-list': PartsList } }
