import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Relation } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { words } from '../words';
import { EMPTY_RULE, readRule, RELATIONS, type RuleDraft, type RuleErrors } from './rule-draft';
import './rule-side';
import { sidesOf } from './sides';

const KEY = 'rule/new';

/** A rule put together: what, how it goes, with what. Tells `asf-put` once it is put down. */
@customElement('asf-rule-form')
export class RuleForm extends LightElement {
  @state() private draft: RuleDraft = formKept(KEY, EMPTY_RULE);
  @state() private errors: RuleErrors = {};
  private readonly parts = new Live(this, 'parts', () => ({ ask: 'parts', group: 'none' }));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  override render(): TemplateResult {
    const say = words().rules;
    const { draft, errors } = this;
    const options = sidesOf(this.parts.view?.rows ?? [], this.head.view?.vehicles ?? []);
    return html`<form class="rule-form" novalidate @submit=${this.put}>
      <asf-rule-side .label=${say.subject} .error=${errors.subject ?? ''} .value=${draft.subject} .quote=${draft.subjectQuote} .options=${options}
        @asf-side=${(event: CustomEvent<{ value: string; quote: string }>) => { this.keep({ subject: event.detail.value, subjectQuote: event.detail.quote }); }}></asf-rule-side>
      <asf-choice columns="3" .label=${say.relation} .options=${RELATIONS.map((value) => ({ value, word: say.relations[value] }))} .value=${draft.relation} @asf-change=${(event: CustomEvent<{ value: Relation }>) => { this.keep({ relation: event.detail.value }); }}></asf-choice>
      <asf-rule-side .label=${say.other} .error=${errors.other ?? ''} .value=${draft.other} .quote=${draft.otherQuote} .options=${options}
        @asf-side=${(event: CustomEvent<{ value: string; quote: string }>) => { this.keep({ other: event.detail.value, otherQuote: event.detail.quote }); }}></asf-rule-side>
      ${draft.relation === 'goes-with' ? html`<asf-field kind="money" .label=${say.price} .hint=${say.priceHint} .currency=${this.currency} .value=${draft.price} .error=${errors.price ?? ''} max="40" @input=${(event: Event) => { this.keep({ price: textOf(event) }); }}></asf-field>` : nothing}
      <p class="reckoned">${say.counts}</p>
      <div class="form-put"><asf-primary small kind="submit" .verb=${say.put} icon="check"></asf-primary></div></form>`;
  }

  private get currency(): string {
    return this.head.view?.settings.currency ?? 'GBP';
  }

  private keep(change: Partial<RuleDraft>): void {
    this.draft = { ...this.draft, ...change };
    this.errors = {};
    journal.typing(KEY, JSON.stringify(this.draft));
  }

  private readonly put = async (event: Event): Promise<void> => {
    event.preventDefault();
    const { changes, errors } = readRule(this.draft, this.currency);
    this.errors = errors;
    if (Object.keys(errors).length > 0) {
      // Each side draws its own word of what is wrong.
      await Promise.all([this.updateComplete, ...[...this.querySelectorAll('asf-rule-side')].map((side) => side.updateComplete)]);
      await new Promise((soon) => { requestAnimationFrame(soon); });
      this.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
      return;
    }
    const { ok } = await carryOut({ do: 'create', id: newId(), kind: 'rule', changes }, words().rules.done);
    if (!ok) return;
    journal.typed(KEY);
    this.draft = EMPTY_RULE;
    this.tell('asf-put', null);
  };
}

declare global { interface HTMLElementTagNameMap { 'asf-rule-form': RuleForm } }
