// The plainest page that shows results as one types: what a general library
// needs from the key to the picture.

import { garage } from './garage.js';
import { peer, typedQueries } from './search.js';

/** Once what was drawn is on the screen. */
export function shown() {
  return new Promise((resolve) => {
    requestAnimationFrame(() => {
      const channel = new MessageChannel();
      channel.port1.onmessage = () => resolve(performance.now());
      channel.port2.postMessage(0);
    });
  });
}

export async function paintedKeystrokes(name, queries, count) {
  const by = new Map(garage(count).map((part) => [part.id, part]));
  const list = document.createElement('ul');
  document.body.append(list);
  const spent = [];
  for (const typed of typedQueries(queries)) {
    for (let length = 1; length <= typed.length; length++) {
      await new Promise((resolve) => setTimeout(resolve, 30));
      const from = performance.now();
      const found = peer(name)(typed.slice(0, length)).slice(0, 15);
      list.replaceChildren(...found.map((id) => line(by.get(id))));
      spent.push((await shown()) - from);
    }
  }
  list.remove();
  return spent;
}

function line({ tag, name, number }) {
  const item = document.createElement('li');
  item.textContent = `${tag} ${name} ${number}`;
  return item;
}
