import './styles/all.css';
import './styles/app.css';
import './app';
import { followPreferences } from './frame/look';
import { watchForUpdates } from './update';

followPreferences();
watchForUpdates();
