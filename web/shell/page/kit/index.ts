/** The whole kit at once. */
import './button';
import './head';
import './icon';
import './index-bar';
import './key';
import './leader';
import './primary';
import './row';
import './section';
import './tag';
import './working';
