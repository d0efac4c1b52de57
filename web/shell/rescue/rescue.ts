// The rescue page needs neither wasm nor the app: it reads the storage as it
// lies there and saves it to a file.

import { rescue as words } from '../page/words/rescue.ts';
import { lineOf } from './job-line.ts';
import { save } from './save.ts';
import { Stored } from './stored.ts';

const place = document.querySelector('#rescue') ?? document.body;
const said = element('p', words.looking);
said.setAttribute('role', 'status');
place.append(element('h1', words.title), element('p', words.lead), said, wayBack());

void begin();

async function begin(): Promise<void> {
  try {
    const stored = await Stored.open();
    if (stored) await show(stored);
    else said.textContent = words.nothing;
  } catch (error) {
    said.textContent = words.closed(reason(error));
  }
}

async function show(stored: Stored): Promise<void> {
  const jobs = await stored.jobs();
  const list = element('ul');
  for (const job of jobs) {
    const { name, entries, last } = await lineOf(stored, job);
    list.append(element('li', words.job(name, entries ?? { single: job.entries.length, bundles: job.chunks.length }, last)));
  }
  list.append(element('li', words.photos((await stored.blobs()).size)));
  const damaged = (await stored.quarantined()).length;
  if (damaged > 0) list.append(element('li', words.damaged(damaged)));
  const button = element('button', words.prepare);
  button.addEventListener('click', () => void prepare(stored, button));
  said.textContent = '';
  said.before(list, button);
}

async function prepare(stored: Stored, button: HTMLButtonElement): Promise<void> {
  button.disabled = true;
  try {
    const { files, unread } = await save(stored, (done, all) => {
      said.textContent = words.working(done, all);
    });
    said.textContent = unread > 0 ? `${words.done} ${words.unread(unread)}` : words.done;
    said.before(...files.map(handle));
    button.remove();
  } catch (error) {
    said.textContent = words.failed(reason(error));
    button.disabled = false;
  }
}

/** The second tap. In an app on the home screen a download may lead nowhere: there the file is shared. */
function handle(file: File): HTMLElement {
  const installed = matchMedia('(display-mode: standalone)').matches;
  const shared = installed ? shareable(file) : undefined;
  if (shared) {
    const share = element('button', words.share(shared.name));
    share.addEventListener('click', () => {
      // Closing the sheet is no failure.
      navigator.share({ files: [shared] }).catch(() => undefined);
    });
    return share;
  }
  const link = element('a', words.save(file.name, file.size));
  link.className = 'save';
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  if (!('standalone' in navigator && navigator.standalone === true)) return link;
  // Here it opens over this page: what to do then is said first.
  const both = element('div');
  both.className = 'over';
  both.append(element('p', words.opensOver), link);
  return both;
}

/** The file, or the same bytes as a kind that more share sheets take. */
function shareable(file: File): File | undefined {
  const as = (type: string, name = file.name): File => new File([file], name, { type });
  return [file, as('application/octet-stream'), as('text/plain', `${file.name}.txt`)].find((one) => navigator.canShare?.({ files: [one] }) === true);
}

function wayBack(): HTMLElement {
  const link = element('a', words.back);
  link.className = 'back';
  link.href = './';
  return link;
}

function element<Name extends keyof HTMLElementTagNameMap>(name: Name, text = ''): HTMLElementTagNameMap[Name] {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}

function reason(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}
