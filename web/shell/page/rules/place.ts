import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { RuleLine } from '../../bridge/protocol';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/dialog';
import '../kit/empty';
import '../kit/head';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import { noteOpen, openBefore } from '../reopening';
import '../sheet/conflict';
import { strikeOut } from '../strike-out';
import '../styles/routes.css';
import '../styles/sheet.css';
import '../styles/terms.css';
import { today } from '../today';
import { words } from '../words';
import { breachOf } from './breach';
import './rule-form';
import { ruleSaid } from './rule-said';

const PLACE = 'rules';

/** Fit rules, each as a sentence. */
@customElement('asf-place-rules')
export class PlaceRules extends LightElement {
  @property({ attribute: false }) address?: Address;
  /** The rule that is changed; `new` for one more. */
  @state() private editing = openBefore(PLACE);
  private readonly live = new Live(this, 'rules', () => ({ ask: 'rules', today: today() }));
  private readonly keeping = new KeepingWord(this);

  override disconnectedCallback(): void {
    noteOpen(PLACE, '');
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().rules;
    const { view } = this.live;
    const rule = view?.rules.find(({ record }) => record.id === this.editing);
    const open = this.editing === 'new' || rule !== undefined;
    return html`<asf-head .name=${say.title} .second=${view?.rules.length ? String(view.rules.length) : ''} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body sheet-body">${view ? this.list(view.rules) : nothing}</div>
      <div class="foot"><asf-primary .verb=${say.add} icon="add" @click=${() => { this.edit('new'); }}></asf-primary></div>
      <asf-dialog .open=${open} .label=${rule ? say.editTitle : say.add} .body=${open ? html`<asf-rule-form .rule=${rule} @asf-put=${() => { this.edit(''); }}></asf-rule-form>` : nothing} @asf-close=${() => { this.edit(''); }}></asf-dialog>`;
  }

  private list(rules: readonly RuleLine[]): TemplateResult {
    const say = words().rules;
    if (rules.length === 0) return html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>`;
    return html`<ul>${rules.map((rule) => {
      const { before, relation, after, whole } = ruleSaid(rule);
      return html`<li>${rule.record.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict} .whose=${whole}></asf-conflict>`)}
        <div class="rule"><p class="rule-words">${before} <span class="second" aria-hidden="true">·</span> <b>${relation}</b> <span class="second" aria-hidden="true">·</span> ${after}</p>
        <asf-button compact plain icon="note" word=${say.edit} label="${say.edit}: ${whole}" @click=${() => { this.edit(rule.record.id); }}></asf-button>
        <asf-button compact plain icon="strike" word=${say.strike} label="${say.strike}: ${whole}" @click=${() => { void strikeOut(rule.record, say.struck); }}></asf-button>${breachOf(rule)}</div></li>`;
    })}</ul>`;
  }

  private edit(rule: string): void {
    this.editing = rule;
    noteOpen(PLACE, rule);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-place-rules': PlaceRules } }
