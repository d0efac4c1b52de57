import './styles/all.css';
import './styles/app.css';
import './app';
// The browser offers to install once, early: it has to be heard whatever place is shown.
import './first/install';
import { keepFocus } from './frame/focus-kept';
import { followInput } from './frame/input';
import { followPreferences } from './frame/look';
import { watchForUpdates } from './update';

followPreferences();
followInput();
keepFocus();
watchForUpdates();
