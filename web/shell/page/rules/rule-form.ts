import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { newId } from '../../bridge/desk';
import type { Change, Relation, RuleLine } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { textOf } from '../field-text';
import { formKept } from '../form-kept';
import * as journal from '../journal';
import '../kit/choice';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import { write } from '../sheet/write';
import { words } from '../words';
import { draftOfRule, EMPTY_RULE, readRule, RELATIONS, type RuleDraft, type RuleErrors } from './rule-draft';
import './rule-side';
import { sidesOf } from './sides';

/** A rule put together, or one that is there changed: what, how it goes, with what. Tells `asf-put` once it is put down. */
@customElement('asf-rule-form')
export class RuleForm extends LightElement {
  /** The one that is changed; a new one without. */
  @property({ attribute: false }) rule?: RuleLine | undefined;
  @state() private draft: RuleDraft = EMPTY_RULE;
  @state() private errors: RuleErrors = {};
  private readonly parts = new Live(this, 'parts', () => ({ ask: 'parts', group: 'none' }));
  private readonly head = new Live(this, 'head', () => ({ ask: 'head' }));

  private get key(): string {
    return `rule/${this.rule?.record.id ?? 'new'}`;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.draft = formKept(this.key, this.rule ? draftOfRule(this.rule) : EMPTY_RULE);
  }

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
    journal.typing(this.key, JSON.stringify(this.draft));
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
    if (!(await this.store(changes))) return;
    journal.typed(this.key);
    this.draft = EMPTY_RULE;
    this.tell('asf-put', null);
  };

  private async store(changes: Change[]): Promise<boolean> {
    const say = words().rules;
    if (!this.rule) return (await carryOut({ do: 'create', id: newId(), kind: 'rule', changes }, say.done)).ok;
    const { record } = this.rule;
    // What only a rule with a price has does not stay behind.
    const rest: Change[] = record.values.cash && !changes.some((change) => 'cash' in change) ? [{ clear: 'cash' }] : [];
    return write(record, [...changes, ...rest], say.changed);
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-rule-form': RuleForm } }
