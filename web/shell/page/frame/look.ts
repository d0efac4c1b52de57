import { preference } from '../journal';

/** Puts the choices of this device on the page: the theme, and the hand it is held in. */
export function followPreferences(): void {
  const { dataset } = document.documentElement;
  const apply = (): void => {
    const theme = preference('theme');
    if (theme === 'light' || theme === 'dark') dataset['theme'] = theme;
    else delete dataset['theme'];
    dataset['hand'] = preference('hand') === 'left' ? 'left' : 'right';
  };
  apply();
  document.addEventListener('asf-preference', apply);
}
