import { html, nothing, type TemplateResult } from 'lit';
import '../kit/button';
import '../kit/icon';
import type { IconName } from '../kit/icon-drawings';
import '../kit/tag';
import { words } from '../words';
import { nameOfThing, tagOf, type Sign, type Thing } from './session';

const ICONS: Record<Sign['state'], IconName> = { saving: 'timer', done: 'proved', amiss: 'not-proved', wrong: 'proved-bad', asked: 'find' };

/** The large sign on the picture: what was read, what was done. It reads itself out. */
export function signPlate(sign: Sign | null, ready: string): TemplateResult {
  return html`<div class="scan-sign scan-sign-${sign?.state ?? 'ready'}" role="status">
    ${sign ? html`<asf-icon class="scan-sign-icon" name=${ICONS[sign.state]} size="48"></asf-icon>${sign.tag ? html`<asf-tag class="scan-sign-tag" number=${sign.tag} size="56" quiet></asf-tag>` : nothing}
      <p class="scan-sign-said">${sign.tag ? html`<span class="unseen">${sign.tag} </span>` : nothing}${sign.said}</p>${sign.todo ? html`<p class="scan-sign-todo">${sign.todo}</p>` : nothing}`
    : html`<p class="scan-sign-said">${ready}</p>`}</div>`;
}

/** Which of several things it is. */
export function thingButton(thing: Thing, word: string, press: () => void): TemplateResult {
  const tag = tagOf(thing);
  const name = nameOfThing(thing);
  return html`<asf-button icon=${thing.kind === 'part' ? 'parts' : 'box'} word=${word || (tag ? `${tag}, ${name}` : words().scan.thePlace(name, thing.kind === 'place' ? thing.place.parts_within : 0))} @click=${press}></asf-button>`;
}
