import { html, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { Route } from '../../bridge/protocol';
import { textOf } from '../field-text';
import * as journal from '../journal';
import '../kit/button';
import '../kit/choice';
import '../kit/field';
import '../kit/primary';
import { LightElement } from '../kit/light-element';
import '../parts/pick';
import { ROUTES_IN_ORDER, routeWord } from '../routes/route-word';
import { words } from '../words';

/** Name in the journal of what was typed and not put down. */
export const OWN_FAMILY = 'judge/own-family';

/** A family as it is made. */
export interface MadeFamily { name: string; single_use: boolean; pair: boolean; safety_critical: boolean; route?: Route }
type Mark = 'single_use' | 'pair' | 'safety_critical';

/** A family of one's own. Tells `asf-made` with what was said, `asf-back` when it is given up. */
@customElement('asf-own-family')
export class OwnFamily extends LightElement {
  @state() private name = '';
  @state() private marks: readonly Mark[] = [];
  @state() private route: Route | '' = '';
  @state() private wrong = '';

  override connectedCallback(): void {
    super.connectedCallback();
    const kept = draftOf(journal.typedBefore(OWN_FAMILY));
    [this.name, this.marks, this.route] = [kept.name, kept.marks, kept.route];
  }

  override firstUpdated(): void {
    this.querySelector('input')?.focus({ preventScroll: true });
  }

  override render(): TemplateResult {
    const say = words().judge.family.form;
    const options = [{ value: 'single_use', word: say.singleUse, second: say.singleUseSecond }, { value: 'pair', word: say.pair, second: say.pairSecond }, { value: 'safety_critical', word: say.safety, second: say.safetySecond }] as const;
    const routes = [['', say.noRoute] as const, ...ROUTES_IN_ORDER.map((route) => [route, routeWord(route)] as const)];
    return html`<h2 class="judge-ask" tabindex="-1">${say.title}</h2>
      <form class="judge-form" @submit=${this.made}>
        <asf-field .label=${say.name} .value=${this.name} .error=${this.wrong} max="300" @input=${(event: Event) => { this.name = textOf(event); this.wrong = ''; this.keep(); }}></asf-field>
        <asf-choice many columns="1" .label=${say.ask} .options=${options} .values=${this.marks} @asf-change=${(event: CustomEvent<{ values: Mark[] }>) => { this.marks = event.detail.values; this.keep(); }}></asf-choice>
        <asf-pick .label=${say.route} .options=${routes} .value=${this.route} @asf-change=${(event: CustomEvent<{ value: Route | '' }>) => { this.route = event.detail.value; this.keep(); }}></asf-pick>
        <asf-primary small kind="submit" icon="check" verb=${say.go}></asf-primary>
        <asf-button word=${say.back} @click=${() => { journal.typed(OWN_FAMILY); this.tell('asf-back', null); }}></asf-button></form>`;
  }

  private keep(): void {
    journal.typing(OWN_FAMILY, JSON.stringify({ name: this.name, marks: this.marks, route: this.route } satisfies Draft));
  }

  private readonly made = (event: Event): void => {
    event.preventDefault();
    const name = this.name.trim();
    if (!name) { this.wrong = words().judge.family.form.needed; return; }
    const is = (mark: Mark): boolean => this.marks.includes(mark);
    this.tell<MadeFamily>('asf-made', { name, single_use: is('single_use'), pair: is('pair'), safety_critical: is('safety_critical'), ...(this.route && { route: this.route }) });
  };
}

interface Draft { name: string; marks: readonly Mark[]; route: Route | '' }
const EMPTY: Draft = { name: '', marks: [], route: '' };

function draftOf(text: string | null): Draft {
  try {
    const kept: unknown = JSON.parse(text ?? 'null');
    return typeof kept === 'object' && kept !== null ? { ...EMPTY, ...kept } : EMPTY;
  } catch {
    return EMPTY;
  }
}

declare global { interface HTMLElementTagNameMap { 'asf-own-family': OwnFamily } }
