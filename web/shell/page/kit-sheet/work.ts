import { html, type TemplateResult } from 'lit';

const TOTALS = [
  { route: 'Repair here', cash: 1800, ownTime: 4000, risk: 3400, low: 7600, high: 11700, total: '£92', how: 'about', cheapest: true },
  { route: 'Buy', cash: 10100, ownTime: 500, risk: 0, total: '£106', how: 'sure', cheapest: false },
  { route: 'Send out', cash: 9600, ownTime: 1000, risk: 800, low: 10400, high: 13000, total: '£114', how: 'wild', cheapest: false },
] as const;

/** The pieces a screen is made of. */
export function work(openDialog: () => void, openUndo: () => void): TemplateResult {
  return html`<div class="sheet-columns">
    <div>${sides()}${routes()}${lists()}</div>
    <div>${targets(openDialog, openUndo)}${fields()}${messages()}</div></div>`;
}

const sides = (): TemplateResult => html`
  <asf-section .label=${'Side'} .count=${'from the driver’s seat'}>
    <asf-side side="left" end="front" driver="right" big></asf-side><br><asf-side side="right" end="rear" driver="left" big></asf-side>
    <div class="sheet-run"><asf-side side="left" end="front"></asf-side><asf-key-plan at="front"></asf-key-plan><asf-key-plan at="rear"></asf-key-plan><asf-key-plan at="right"></asf-key-plan></div>
  </asf-section>
  <asf-section .label=${'Kept'} .count=${'tick only after the commit'}>
    <div class="sheet-run">${(['kept', 'saving', 'failed'] as const).map((state) => html`<asf-photo .state=${state} label=${state} opens></asf-photo>`)}
      <asf-stamp state="kept" size="68"></asf-stamp><b>Everything is kept</b></div>
    <asf-room .used=${1.4e9} .total=${11.2e9} more="room for about 9,000 photos more"></asf-room>
  </asf-section>`;

const routes = (): TemplateResult => html`
  <asf-section .label=${'Routes'} .count=${html`<asf-route-key></asf-route-key>`}>
    ${TOTALS.map((one, i) => html`<asf-route-bar .route=${one.route} .cash=${one.cash} .ownTime=${one.ownTime} .risk=${one.risk} .low=${'low' in one ? one.low : undefined}
      .high=${'high' in one ? one.high : undefined} .scale=${13600} .total=${one.total} .how=${one.how} .cheapest=${one.cheapest} .key=${String(i + 1)}
      .parts=${{ cash: '£18', ownTime: '£40', risk: '£34', low: '£76', high: '£117' }}></asf-route-bar>`)}
    <asf-route-bar route="Use again" total="£16 if proved" reason="waits for proof: not proved counts as bad" key="–"></asf-route-bar>
    <asf-route-bar route="Repair here" struck reason="safety-critical: no welding or bending" key="–"></asf-route-bar>
    <p class="reckoned">Cheapest as long as repairing takes <b>under 2.7 h</b>; you said <span class="about">about 2 h</span>. The strip is a <span class="wild">wild guess 9 h</span>.</p>
    <asf-working .label=${'Repair here, risk: £34'}>
      <asf-leader .label=${'buy instead'} .value=${'£106'}></asf-leader>
      <asf-leader .label=${html`strip again, <span class="about">about 1.5 h</span> at £20`} .value=${'£30'}></asf-leader>
      <asf-leader .label=${html`<span class="about">about 25</span> in 100 of £136`} .value=${'£34'} result></asf-leader></asf-working>
  </asf-section>`;

const lists = (): TemplateResult => html`
  <asf-section .label=${html`Front hub LEFT`} .count=${'4 found'}>
    <asf-row .number=${'0144'} .standing=${'decided'} .name=${html`Outer <mark>bear</mark>ing`} .second=${'Box 07 · Buy'} .photo=${''} href="#/parts/0144"></asf-row>
    <asf-row .number=${'0151'} .marks=${{ missing: true }} .name=${'Grease cap'} .second=${html`<b>missing, seen here 2 Oct</b>`} .photo=${''} selecting></asf-row>
    <asf-row .number=${'0171'} .standing=${'out'} .name=${'Half shaft bearing'} .second=${'to press off, since 3 Nov'} .photo=${''} selecting chosen></asf-row>
    <asf-row .number=${'0186'} .standing=${'judged'} .name=${'Shoes: reline as an axle set'} .second=${'lifts the batch over the minimum'} .end=${'−£58'} compact href="#/parts/0186"></asf-row>
  </asf-section>
  <asf-section .label=${'Last job file'} .count=${html`<span class="flag">reminder due</span>`}>
    <asf-leader .label=${'made'} .value=${'16 Nov, 9 days ago'}></asf-leader><asf-leader .label=${'photos since'} .value=${'87'} big opens></asf-leader></asf-section>`;

const targets = (openDialog: () => void, openUndo: () => void): TemplateResult => html`
  <asf-section .label=${'Targets'} .count=${'64, 96, 128 px'}>
    <asf-choice .label=${'Name'} hide-label columns="3" value="hub" .options=${[{ value: 'outer', word: 'Outer bearing' }, { value: 'hub', word: 'Hub' }, { value: 'cap', word: 'Grease cap' }]}></asf-choice>
    <div class="pair"><asf-button icon="speak" word="Hold to speak"></asf-button><asf-button icon="stuck" word="Stuck, later" pressed="true"></asf-button></div>
    <div class="sheet-low"><asf-button column icon="add" word="next"></asf-button><asf-shutter></asf-shutter><asf-next-tag number="0148"></asf-next-tag></div>
    <div class="primary-and-second"><asf-primary verb="Scan next" icon="scan"></asf-primary><asf-button column icon="move" word="Move the box"></asf-button></div>
    <asf-primary small verb="Take all four" key="A"></asf-primary>
    <asf-primary small verb="Measure first" cost="no limit yet" disabled></asf-primary>
    <div class="pair"><asf-button compact word="Open a dialog" @click=${openDialog} key="D"></asf-button><asf-button compact word="Strike out" icon="strike" @click=${openUndo}></asf-button></div>
    <asf-confidence value="about"></asf-confidence>
    <asf-choice many .label=${'Marks'} columns="2" .values=${['single']} .options=${[{ value: 'single', word: 'single use' }, { value: 'nla', word: 'cannot be bought', second: 'keep as pattern' }]}></asf-choice>
  </asf-section>`;

const fields = (): TemplateResult => html`
  <asf-section .label=${'Fields'}>
    <asf-field label="Find" kind="find" icon="find" value="bear" placeholder="tag, name, note, place"></asf-field>
    <asf-field label="Cash" kind="money" value="18.50" hint="What the supplier asks, with postage."></asf-field>
    <asf-field label="Own time" kind="hours" value="2:15" error="Write hours like 2.5 or 2:15."></asf-field>
    <asf-field label="Note" kind="area" value="Ring turned on the seat."></asf-field>
  </asf-section>`;

const messages = (): TemplateResult => html`
  <asf-message kind="alert" .happened=${'The storage of this phone is full.'} .safe=${'All 412 photos with a tick are safe.'} .todo=${'Make room on the phone, then try again.'}><asf-button icon="camera" word="Try again"></asf-button></asf-message>
  <asf-message .happened=${'A newer asfound is ready.'} .safe=${'Nothing changes until you say so.'}></asf-message>
  <asf-empty .first=${'Start with the vehicle.'} .then=${'After that, a photo and a tag number are a full record.'}><asf-primary verb="Start a job" cost="a name is enough"></asf-primary></asf-empty>
  <div class="sheet-run"><asf-icon name="proved" word="proved good"></asf-icon><asf-icon name="not-proved" word="not proved"></asf-icon><asf-icon name="proved-bad" word="proved bad"></asf-icon></div>`;
