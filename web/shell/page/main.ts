import { LitElement, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { watchForUpdates } from './update.ts';

@customElement('asfound-app')
export class App extends LitElement {
  // Light DOM: plain style sheets, and nothing hidden from a test or a reader.
  protected override createRenderRoot(): this {
    return this;
  }

  protected override render(): unknown {
    return html`<main><h1>asfound</h1></main>`;
  }
}

watchForUpdates();
