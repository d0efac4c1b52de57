import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { desk, newId } from '../../bridge/desk';
import type { KeptPlan, KeptPlansView, PlanQuery, PlanView } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/button';
import '../kit/field';
import '../kit/primary';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { whoDecides } from '../routes/who-dialog';
import '../sheet/conflict';
import { strikeOut } from '../strike-out';
import { today } from '../today';
import { words } from '../words';
import { dayOfYear, hours, money } from '../words/format';
import { Asked } from './asked';
import { adoptCommands, adopting, keptChanges } from './kept';
import { sinceSaid } from './since-said';

const KEY = 'kept-plan/new';
/** How long entries may still arrive before it is counted again. */
const SETTLE = 400;

/** Keeps the plan of the whole job under a name; what was kept side by side, counted again as the job is today. */
@customElement('asf-kept-plans')
export class KeptPlans extends LightElement {
  @property({ attribute: false }) view: PlanView | undefined;
  /** What that plan was asked with. */
  @property({ attribute: false }) query: PlanQuery = {};
  @state() private name = '';
  @state() private error = '';
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));
  private readonly asked = new Asked(this, 'kept-plans');
  private waiting: ReturnType<typeof setTimeout> | undefined;

  override connectedCallback(): void {
    super.connectedCallback();
    ({ name: this.name } = formKept(KEY, { name: '' }));
    desk.addEventListener('changed', this.soon);
    void this.ask();
  }

  override disconnectedCallback(): void {
    desk.removeEventListener('changed', this.soon);
    clearTimeout(this.waiting);
    super.disconnectedCallback();
  }

  override render(): TemplateResult {
    const say = words().plan.kept;
    const { view, state: found } = this.asked;
    return html`${this.view?.sums ? this.form() : nothing}
      <div role="status">${found === 'failed' ? html`<p class="reckoned">${say.failed}</p>` : found === 'working' && !view ? html`<p class="reckoned">${say.working}</p>` : nothing}</div>
      ${view && view.plans.length > 0 && found !== 'failed' ? this.kept(view) : nothing}`;
  }

  private form(): TemplateResult {
    const say = words().plan.kept;
    return html`<form class="kept-form" novalidate @submit=${this.put}>
      <asf-field .label=${say.as} .hint=${say.hint} .error=${this.error} .value=${this.name} max="80" @input=${(event: Event) => { this.type(textOf(event)); }}></asf-field>
      <asf-button kind="submit" icon="check" word=${say.keep}></asf-button></form>`;
  }

  private kept(view: KeptPlansView): TemplateResult {
    const say = words().plan.kept;
    const { plans } = view;
    const row = (name: string, cell: (plan: KeptPlan) => TemplateResult | string): TemplateResult => html`<tr><th scope="row">${name}</th>${plans.map((plan) => html`<td>${cell(plan)}</td>`)}</tr>`;
    return html`<asf-section .label=${say.title} .count=${String(plans.length)}></asf-section>
      <div class="kept-table" role="region" tabindex="0" aria-label=${say.table}><table class="plan-table"><thead><tr><td></td>${plans.map(({ record }) => html`<th scope="col">${record.values.name}</th>`)}</tr></thead><tbody>
        ${row(say.worth, ({ now, kept }) => beside(money(now.cost), kept.cost && money(kept.cost)))}
        ${row(say.cash, ({ now, kept }) => beside(money(now.cash), kept.cash && money(kept.cash)))}
        ${row(say.ownTime, ({ now, kept }) => beside(hours(now.own_time), kept.own_time === undefined ? undefined : hours(kept.own_time)))}
        ${row(say.limits, ({ now }) => (now.fits ? say.fits : say.broken))}</tbody></table></div>
      <ul class="kept-plans">${plans.map((plan) => html`<li>${this.plan(plan, view)}</li>`)}</ul>`;
  }

  private plan(plan: KeptPlan, { hour_value }: KeptPlansView): TemplateResult {
    const say = words().plan.kept;
    const { record } = plan;
    const { name = '', taken } = record.values;
    const changes = adopting(plan).length;
    return html`${record.conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict} .whose=${name}></asf-conflict>`)}
      <p><b>${name}</b> <span class="second">${taken === undefined ? nothing : say.on(dayOfYear(new Date(taken)))}</span></p>
      <p class="second">${sinceSaid(plan, hour_value).join(' ')}</p>
      <p class="reckoned">${changes > 0 ? say.changes(changes) : say.isChosen}</p>
      <div class="kept-acts">${changes > 0 ? html`<asf-button icon="check" word=${say.adopt} label="${say.adopt}: ${name}" @click=${() => { void adopt(plan); }}></asf-button>` : nothing}
        <asf-button plain icon="strike" word=${say.strike} label="${say.strike}: ${name}" @click=${() => { void strikeOut(record, say.struck); }}></asf-button></div>`;
  }

  private type(name: string): void {
    [this.name, this.error] = [name, ''];
    journal.typing(KEY, JSON.stringify({ name }));
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().plan.kept;
    const name = this.name.trim();
    const settings = this.head.view?.settings;
    const names = this.asked.view?.plans.map(({ record }) => record.values.name?.toLowerCase());
    this.error = !name ? say.nameless : names?.includes(name.toLowerCase()) ? say.twice : '';
    if (this.error) {
      await this.updateComplete;
      this.querySelector<HTMLElement>('.kept-form input')?.focus();
      return;
    }
    if (!this.view || !settings) return;
    // An hour that is worth something else in it is kept with it: its sums hang on that.
    const hourValue = { ...settings.hour_value, minor: this.query.set?.job?.hour_value ?? settings.hour_value.minor };
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'plan', changes: keptChanges(name, this.view, hourValue, Date.now()) }, say.done);
    if (!ok) return;
    journal.typed(KEY);
    this.name = '';
  };

  private readonly soon = (): void => {
    clearTimeout(this.waiting);
    this.waiting = setTimeout(() => { void this.ask(); }, SETTLE);
  };

  private async ask(): Promise<void> {
    await this.asked.ask({ ask: 'kept-plans', today: today() });
  }
}

/** What it is now, and below what it was, where that is another. */
function beside(now: string, then: string | undefined): TemplateResult {
  return html`<b>${now}</b>${then === undefined || then === now ? nothing : html`<br><span class="second">${words().plan.kept.was(then)}</span>`}`;
}

/** All that can be chosen of it with one stroke, so that one undo takes it back. */
async function adopt(plan: KeptPlan): Promise<void> {
  const commands = adoptCommands(plan, newId, whoDecides());
  if (commands.length > 0) await carryOut({ do: 'all', commands }, words().plan.kept.adopted(commands.length));
}

declare global { interface HTMLElementTagNameMap { 'asf-kept-plans': KeptPlans } }
