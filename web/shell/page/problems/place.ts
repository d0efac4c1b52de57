import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Change, Hint, Problem } from '../../bridge/protocol';
import { carryOut } from '../carry-out';
import { KeepingWord } from '../frame/keeping-word';
import '../kit/button';
import '../kit/empty';
import '../kit/field';
import '../kit/head';
import '../kit/icon';
import '../kit/section';
import { LightElement } from '../kit/light-element';
import { Live } from '../live';
import type { Address } from '../places';
import '../sheet/conflict';
import '../styles/problems.css';
import '../styles/sheet.css';
import { words } from '../words';
import { readNumber } from '../words/read';
import { Naming, type Named } from './naming';

/** Everything that needs a person: what it is, what is safe, what to do, and the way to settle it. */
@customElement('asf-place-problems')
export class PlaceProblems extends LightElement {
  @property({ attribute: false }) address?: Address;
  /** New tags being typed, by part. */
  @state() private tags: Readonly<Record<string, string>> = {};
  @state() private wrong = '';
  private readonly live = new Live(this, 'problems', () => ({ ask: 'problems' }));
  private readonly naming = new Naming(this);
  private readonly keeping = new KeepingWord(this);

  override render(): TemplateResult {
    const say = words().problems;
    const { view } = this.live;
    const problems = (view?.problems ?? []).filter(({ code }) => code !== 'conflict');
    const conflicts = view?.conflicts ?? [];
    const n = problems.length + conflicts.length;
    return html`<asf-head .name=${say.title} .second=${view ? say.second(n) : ''} back="#/job" .cells=${[this.keeping.cell]}></asf-head>
      <div class="body problems-body">
        ${view && n === 0 ? html`<asf-empty .first=${say.none.first} .then=${say.none.then}></asf-empty>` : nothing}
        ${conflicts.map((conflict) => html`<asf-conflict .conflict=${conflict} .whose=${this.whose(conflict.id)}></asf-conflict>`)}
        <ul>${problems.map((problem) => html`<li class="problem">${this.problem(problem)}</li>`)}</ul></div>`;
  }

  private problem(problem: Problem): TemplateResult {
    const say = words().problems;
    return html`<asf-icon name=${problem.severity === 'error' ? 'proved-bad' : 'caution'}></asf-icon>
      <div class="problem-words"><p class="problem-happened">${say.happened(problem)}</p>
        ${this.where(problem)}
        <p class="reckoned">${say.safe(problem)} ${say.todo(problem)}</p>
        <div class="problem-ways">${this.ways(problem)}</div></div>`;
  }

  /** The records it is about, each with the way to it. */
  private where({ place }: Problem): TemplateResult | typeof nothing {
    const ids = [place.id, ...(place.others ?? [])].filter((id) => id !== undefined);
    const named = ids.map((id) => this.naming.of(id)).filter(({ name }) => name);
    return named.length ? html`<ul class="problem-where">${named.map((one) => html`<li>${link(one)}</li>`)}</ul>` : nothing;
  }

  private whose(id: string): TemplateResult | string {
    return link(this.naming.of(id));
  }

  private ways(problem: Problem): TemplateResult[] {
    const ids = [problem.place.id, ...(problem.place.others ?? [])].filter((id) => id !== undefined);
    const ways = problem.hints.map((hint) => this.way(hint, problem, ids));
    // Where no hint leads on, its history shows how it came about.
    const [first] = ids;
    if (first) ways.push(html`<asf-button compact icon="history" word=${words().problems.go.history} href=${`#/history/${first}`}></asf-button>`);
    return ways.filter((way): way is TemplateResult => way !== nothing);
  }

  private way(hint: Hint, { place, code }: Problem, ids: readonly string[]): TemplateResult | typeof nothing {
    const say = words().problems;
    switch (hint) {
      case 'retag-one': return html`${ids.map((id) => this.retag(id))}`;
      case 'move-one-out': return html`${ids.map((id) => this.moveOut(id))}`;
      case 'bring-in-other': case 'fetch-again': return html`<asf-button compact icon="bring" word=${say.go.bring} href="#/hand-over"></asf-button>`;
      case 'bring-back-or-move': return this.bringBack(code, place.id);
      case 'choose-again': case 'enter-in-job-currency': return this.toRoutes(place.id);
      case 'drop-rule': case 'tighten-first': return html`<asf-button compact icon="refit" word=${say.go.refit} href="#/refit"></asf-button>`;
      case 'settle-values': case 'correct-value': case 'use-newer': case 'ask-reckoning': case 'measure-rolling': return nothing;
    }
  }

  private retag(id: string): TemplateResult {
    const say = words().problems;
    const { name } = this.naming.of(id);
    return html`<form class="problem-retag" @submit=${(event: Event) => { event.preventDefault(); void this.putTag(id); }}>
      <asf-field kind="number" .label=${`${say.retag}: ${name}`} .value=${this.tags[id] ?? ''} .error=${this.wrong === id ? say.retagWrong : ''} @input=${(event: Event) => { if (event.target instanceof HTMLInputElement) { this.tags = { ...this.tags, [id]: event.target.value }; this.wrong = ''; } }}></asf-field>
      <asf-button compact kind="submit" word=${words().sheet.named.put} label="${words().sheet.named.put}: ${name}"></asf-button></form>`;
  }

  private async putTag(id: string): Promise<void> {
    const tag = readNumber(this.tags[id] ?? '');
    if (tag === null || !Number.isInteger(tag) || tag < 1) {
      this.wrong = id;
      return;
    }
    await this.change(id, { tag }, words().problems.retagged(String(tag).padStart(4, '0')));
  }

  private moveOut(id: string): TemplateResult {
    const say = words().problems;
    const { name, address } = this.naming.of(id);
    const isPlace = address.startsWith('#/stores');
    return html`<asf-button compact icon="move" .word=${say.moveOut(name)} @click=${() => { void this.change(id, { clear: isPlace ? 'within' : 'inside' }, say.movedOut(name)); }}></asf-button>`;
  }

  private bringBack(code: Problem['code'], id: string | undefined): TemplateResult | typeof nothing {
    const named = this.naming.of(id);
    return code === 'in-struck-out' && named.address ? html`<asf-button compact icon="next" word=${words().problems.go.part} href=${named.address}></asf-button>` : nothing;
  }

  private toRoutes(id: string | undefined): TemplateResult | typeof nothing {
    const { address } = this.naming.of(id);
    return address.startsWith('#/part/') ? html`<asf-button compact icon="route" word=${words().problems.go.routes} href=${address.replace('#/part/', '#/routes/')}></asf-button>` : nothing;
  }

  private async change(id: string, change: Change, message: string): Promise<void> {
    await carryOut({ do: 'change', ids: [id], changes: [change] }, message);
  }
}

function link({ name, address }: Named): TemplateResult | string {
  return name && address ? html`<a href=${address}>${name}</a>` : name;
}

declare global { interface HTMLElementTagNameMap { 'asf-place-problems': PlaceProblems } }
