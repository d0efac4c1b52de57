import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { PartLine } from '../../bridge/protocol';
import { openedFrom } from '../back-of';
import { textOf } from '../field-text';
import '../kit/button';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/tag';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { partName } from '../parts/part-row';
import { standingWord, tagFigures } from '../parts/tag-figures';
import { Pictures } from '../pictures';
import { words } from '../words';

/** So many are shown; whoever knows more of it types more. */
const SHOWN = 60;

/** Finds a part by tag, name or photo. */
@customElement('asf-where-find')
export class WhereFind extends LightElement {
  @state() private sought = '';
  private readonly found = new Live(this, 'parts', () => ({ ask: 'parts', find: this.sought.trim(), group: 'none', count: SHOWN }));
  // A whole code, as on the tag: the check character is no part of the number.
  private readonly coded = new Live(this, 'tag', () => (/\d/.test(this.sought) ? { ask: 'tag', text: this.sought.trim() } : null));
  private readonly pictures = new Pictures(this);

  override render(): TemplateResult {
    const say = words().where;
    const { view } = this.found;
    return html`<asf-head .name=${say.title} .second=${view ? say.second(view.total) : ''} back="#/stores"></asf-head>
      <div class="body where-find">
        <asf-field kind="find" icon="find" hide-label .label=${say.find} .placeholder=${say.find} .value=${this.sought} @input=${this.typed}></asf-field>
        <asf-button icon="scan" word=${say.scan} href=${openedFrom('#/scan?mode=open', 'where')}></asf-button>
        <p class="unseen" role="status">${view && this.sought.trim() ? say.foundCount(this.rows(view.rows).length + Math.max(0, view.found - view.rows.length)) : ''}</p>
        ${view ? this.grid(this.rows(view.rows), view.found) : nothing}</div>`;
  }

  private rows(found: readonly PartLine[]): readonly PartLine[] {
    const coded = this.coded.view?.read.read === 'code' && /\d/.test(this.sought) ? this.coded.view.parts.map(({ line }) => line) : [];
    return [...coded, ...found.filter(({ id }) => !coded.some((one) => one.id === id))];
  }

  private grid(rows: readonly PartLine[], total: number): TemplateResult {
    const say = words().where;
    if (rows.length === 0 && this.sought.trim()) return html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>`;
    if (rows.length === 0) return html`<asf-empty .first=${say.noParts.first} .then=${say.noParts.then}><asf-button icon="teardown" word=${say.noParts.go} href="#/teardown"></asf-button></asf-empty>`;
    return html`<ul class="where-grid">${rows.map((line) => html`<li>${this.tile(line)}</li>`)}</ul>${total > rows.length ? html`<p class="second">${say.more(total - rows.length)}</p>` : nothing}`;
  }

  private tile(line: PartLine): TemplateResult {
    const picture = line.photo ? this.pictures.small(line.photo) : '';
    return html`<a class="where-tile" href=${`#/where/${line.id}`}>${picture ? html`<img class="where-photo" src=${picture} alt="" loading="lazy" decoding="async">` : html`<span class="where-photo"></span>`}
      <asf-tag .number=${tagFigures(line.tag)} .standing=${line.standing} .standingWord=${standingWord(line)} size="36" ?missing=${line.missing} ?irreplaceable=${line.irreplaceable}></asf-tag>
      <span class="where-name">${partName(line)}</span><span class="second">${line.place.at(-1) ?? standingWord(line)}</span></a>`;
  }

  private readonly typed = (event: Event): void => {
    this.sought = textOf(event);
    this.found.soon();
    this.coded.soon();
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-where-find': WhereFind } }
