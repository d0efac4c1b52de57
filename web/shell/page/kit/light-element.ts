import { LitElement } from 'lit';

/**
 * The ground of every element of the kit: rendered into the page itself, so that one sheet of styles, one focus order and
 * every testing tool see it as plain HTML.
 */
export abstract class LightElement extends LitElement {
  // What the element draws goes before what was written between its tags.
  protected override createRenderRoot(): HTMLElement {
    // A mark of its own is needed: lit keeps its books on that node, and the first child may keep its own there.
    if (!this.renderOptions.renderBefore) {
      const mark = document.createComment('');
      this.insertBefore(mark, this.firstChild);
      this.renderOptions.renderBefore = mark;
    }
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    document.addEventListener('asf-speech', this.speechChanged);
  }

  override disconnectedCallback(): void {
    document.removeEventListener('asf-speech', this.speechChanged);
    super.disconnectedCallback();
  }

  /** Focus goes to the part of the element that takes it. */
  override focus(options?: FocusOptions): void {
    const inner = this.querySelector<HTMLElement>('button, a[href], input, select, textarea, [tabindex]');
    if (inner) inner.focus(options);
    else super.focus(options);
  }

  protected tell<T>(name: string, detail: T): void {
    this.dispatchEvent(new CustomEvent<T>(name, { detail, bubbles: true, composed: true }));
  }

  private readonly speechChanged = (): void => { this.requestUpdate(); };
}
