import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { desk } from '../../bridge/desk';
import type { Id, Kind } from '../../bridge/protocol';
import { tagFigures } from '../parts/tag-figures';
import { ruleSaid } from '../rules/rule-said';
import { words } from '../words';

/** What a record is called, and where it is shown. */
export interface Named { name: string; address: string }

/** Where what is said about a part is shown, if not on its sheet. */
const SHOWN: Partial<Record<Kind, string>> = { quote: '#/routes/', choice: '#/routes/', cover: '#/routes/', finding: '#/judge/', reading: '#/judge/', limit: '#/judge/' };
const UNKNOWN: Named = { name: '', address: '' };

/** Names of records by their ids, for places that meet records of every kind. */
export class Naming implements ReactiveController {
  private names = new Map<Id, Named>();
  private asked = new Set<Id>();
  private listed = false;

  constructor(private readonly host: ReactiveControllerHost) {
    host.addController(this);
  }

  hostConnected(): void {
    desk.addEventListener('changed', this.anew);
  }

  hostDisconnected(): void {
    desk.removeEventListener('changed', this.anew);
  }

  of(id: Id | undefined): Named {
    if (!id) return UNKNOWN;
    const named = this.names.get(id);
    if (!named && !this.asked.has(id)) void this.ask(id);
    return named ?? UNKNOWN;
  }

  private readonly anew = (): void => {
    this.asked.clear();
    this.listed = false;
    this.names = new Map();
    this.host.requestUpdate();
  };

  private async ask(id: Id): Promise<void> {
    this.asked.add(id);
    try {
      await this.list();
      if (!this.names.has(id)) await this.askPart(id);
      if (!this.names.has(id)) await this.askPhoto(id);
      if (!this.names.has(id)) await this.askHome(id);
    } catch {
      // The desk tells of trouble; it stays unnamed.
    }
    this.host.requestUpdate();
  }

  /** Everything that a job has few of. */
  private async list(): Promise<void> {
    if (this.listed) return;
    this.listed = true;
    const [places, assemblies, head, suppliers, rules, gearing] = await Promise.all([desk.ask({ ask: 'places' }), desk.ask({ ask: 'assemblies' }), desk.ask({ ask: 'head' }), desk.ask({ ask: 'suppliers' }), desk.ask({ ask: 'rules' }), desk.ask({ ask: 'gearing' })]);
    if (places.view === 'places') for (const { record, path } of places.places) this.names.set(record.id, { name: path.join(' · '), address: `#/stores/${record.id}` });
    if (assemblies.view === 'assemblies') {
      for (const { record } of assemblies.assemblies) this.names.set(record.id, { name: record.values.name ?? '', address: `#/assemblies/${record.id}` });
      for (const { id, values } of assemblies.vehicles) this.names.set(id, { name: values.name ?? '', address: '#/vehicles' });
    }
    if (suppliers.view === 'suppliers') {
      for (const { record, tiers } of suppliers.suppliers) {
        const [name, address] = [record.values.name ?? '', `#/suppliers/${record.id}`];
        this.names.set(record.id, { name, address });
        for (const { id } of tiers) this.names.set(id, { name: `${words().problems.thing.tier}: ${name}`, address });
      }
    }
    if (rules.view === 'rules') for (const rule of rules.rules) this.names.set(rule.record.id, { name: ruleSaid(rule).whole, address: '#/rules' });
    if (gearing.view === 'gearing') for (const { record } of gearing.sets) this.names.set(record.id, { name: `${words().problems.thing.gearing}: ${record.values.name ?? ''}`, address: '#/gearing' });
    if (head.view === 'head') this.names.set(head.job.id, { name: head.job.values.name ?? '', address: '#/settings' });
  }

  private async askPart(id: Id): Promise<void> {
    const view = await desk.ask({ ask: 'part', part: id });
    if (view.view !== 'part') return;
    const { line } = view;
    this.names.set(id, { name: `${tagFigures(line.tag)} ${line.name || words().parts.noName}`, address: `#/part/${id}` });
  }

  private async askPhoto(id: Id): Promise<void> {
    const view = await desk.ask({ ask: 'photo', photo: id });
    if (view.view === 'photo') this.names.set(id, { name: words().photo.title, address: `#/photo/${id}` });
  }

  /** What has no page of its own is named by what it hangs on, and shown where that part of it is seen. */
  private async askHome(id: Id): Promise<void> {
    const view = await desk.ask({ ask: 'history', id });
    if (view.view !== 'history' || !view.kind || !view.home) return;
    const { kind, home } = view;
    if (!this.names.has(home)) await this.askPart(home);
    if (!this.names.has(home)) await this.askPhoto(home);
    const named = this.names.get(home);
    if (named) this.names.set(id, { name: `${words().problems.thing[kind]}: ${named.name}`, address: named.address.replace('#/part/', SHOWN[kind] ?? '#/part/') });
  }
}
