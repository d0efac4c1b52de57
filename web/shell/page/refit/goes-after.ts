import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Circle, Id, PartLine, RecordView, StepLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import '../kit/button';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { Once } from '../once';
import '../parts/pick';
import { tagFigures } from '../parts/tag-figures';
import { Naming } from '../problems/naming';
import { strikeOut } from '../strike-out';
import { words } from '../words';
import { mayComeFirst } from './goes-first';

/** What goes on after what: rules beyond the reverse of removal, as far as they say something of this assembly. */
@customElement('asf-goes-after')
export class GoesAfter extends LightElement {
  @property() assembly: Id = '';
  @property() name = '';
  @property({ attribute: false }) steps: readonly StepLine[] = [];
  @property({ attribute: false }) rules: readonly RecordView[] = [];
  @property({ attribute: false }) circles: readonly Circle[] = [];
  @state() private adding = false;
  @state() private of = '';
  @state() private other = '';
  @state() private wrong = '';
  private readonly parts = new Live(this, 'parts', () => (this.adding ? { ask: 'parts', group: 'none' } : null));
  private readonly assemblies = new Live(this, 'assemblies', () => ({ ask: 'assemblies' }));
  private readonly naming = new Naming(this);
  private readonly once = new Once();

  override render(): TemplateResult {
    const say = words().refit.rules;
    return html`<asf-section .label=${say.title} .count=${this.rules.length ? '' : say.none}>
      ${this.circles.map((circle) => html`<p class="reckoned">${words().refit.circles.said(circle.parts.map((id) => this.called(id)), circle)}</p>`)}
      <ul class="rf-rules">${this.rules.map((rule) => html`<li class="rf-rule">${this.rule(rule)}</li>`)}</ul>
      ${this.adding ? this.form() : html`<p class="second">${say.lead}</p><asf-button compact plain icon="add" word=${say.add} @click=${() => { this.adding = true; this.of = this.assembly; this.parts.soon(); }}></asf-button>`}</asf-section>`;
  }

  private rule(rule: RecordView): TemplateResult {
    const say = words().refit.rules;
    const [one, other] = [this.called(rule.values.of), this.called(rule.values.other)];
    return html`<span>${say.said(one, other)}</span><asf-button compact plain icon="strike" word=${say.strike} label="${say.strike}: ${say.said(one, other)}" @click=${() => { void strikeOut(rule, say.struck); }}></asf-button>`;
  }

  private called(id: Id | undefined): string {
    return this.naming.of(id).name || words().refit.noName;
  }

  private form(): TemplateResult {
    const say = words().refit.rules;
    const own = this.steps.map(({ line }) => [line.id, `${tagFigures(line.tag)} ${line.name || words().parts.noName}`] as const);
    const lines = this.assemblies.view?.assemblies ?? [];
    const named = (id: Id): string => { const line = lines.find(({ record }) => record.id === id); return say.assembly([line?.record.values.name ?? words().refit.noName, line?.side ? words().sides[line.side] : ''].filter(Boolean).join(' ')); };
    const others = [...lines.filter(({ record }) => record.id !== this.assembly).map(({ record }) => [record.id, named(record.id)] as const), ...(this.parts.view?.rows ?? []).filter((line) => line.standing !== 'on' && this.mayComeFirst(line)).map((line) => [line.id, `${tagFigures(line.tag)} ${line.name || words().parts.noName}`] as const)];
    return html`<form class="place-form" novalidate @submit=${this.put}>
      <asf-pick .label=${say.this} .options=${[[this.assembly, named(this.assembly)] as const, ...own]} .value=${this.of} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.take(event.detail.value); }}></asf-pick>
      <asf-pick .label=${say.after} .error=${this.wrong} .options=${[['', say.pick] as const, ...others]} .value=${this.other} @asf-change=${(event: CustomEvent<{ value: string }>) => { this.other = event.detail.value; this.wrong = ''; }}></asf-pick>
      <div class="pair"><asf-button kind="submit" icon="check" word=${say.put}></asf-button><asf-button word=${words().kit.close} @click=${() => { this.adding = false; }}></asf-button></div></form>${nothing}`;
  }

  private mayComeFirst(line: Pick<PartLine, 'id' | 'assembly'>): boolean {
    return mayComeFirst(line, this.of, this.assembly, this.steps);
  }

  private take(of: Id): void {
    [this.of, this.wrong] = [of, ''];
    // What was chosen before is no longer offered: it must not be put down unseen.
    const lines = [...(this.parts.view?.rows ?? []), ...this.steps.map(({ line }) => line)];
    if (lines.some((line) => line.id === this.other && !this.mayComeFirst(line))) this.other = '';
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const say = words().refit.rules;
    const { of, other } = this;
    this.wrong = !of || !other ? say.needsBoth : of === other ? say.same : '';
    if (this.wrong) return;
    await this.once.run('put', undefined, async () => {
      const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'goes-after', changes: [{ of }, { other }] }, say.done);
      if (ok) [this.adding, this.other] = [false, ''];
      return ok;
    });
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-goes-after': GoesAfter } }
