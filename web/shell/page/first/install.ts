/** What a browser hands over when the app can be installed. */
interface InstallOffer extends Event { prompt(): Promise<unknown> }

let offer: InstallOffer | null = null;
export const installing = new EventTarget();

function isOffer(event: Event): event is InstallOffer {
  return 'prompt' in event && typeof event.prompt === 'function';
}

window.addEventListener('beforeinstallprompt', (event) => {
  if (!isOffer(event)) return;
  event.preventDefault();
  offer = event;
  installing.dispatchEvent(new Event('offered'));
});

/** Whether the browser can install at a tap. */
export function canInstall(): boolean {
  return offer !== null;
}

export function install(): void {
  void offer?.prompt();
  offer = null;
  installing.dispatchEvent(new Event('offered'));
}

/**
 * On Apple's phones and tablets a tab is cleared after seven days and what is in it does not follow to the home screen: there
 * the app has to be installed before the first record.
 */
export function mustInstallFirst(): boolean {
  const { userAgent, maxTouchPoints } = navigator;
  const isApple = /iPhone|iPad|iPod/.test(userAgent) || (/Macintosh/.test(userAgent) && maxTouchPoints > 1);
  return isApple && !matchMedia('(display-mode: standalone)').matches && Reflect.get(navigator, 'standalone') !== true;
}
