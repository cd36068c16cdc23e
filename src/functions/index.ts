/** Entry of functions.js: importing a file associates its functions, in calls that the metadata plugin appends. */
import './bench';
import './bends';
import './buy';
import './heights';
import './lasts';
import './layout-search';
import './outlines';
import './plan';
import './sheets';
import './sizes';
import './skives';
