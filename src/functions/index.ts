/** Entry of functions.js: importing a file associates its functions, in calls that the metadata plugin appends. */
import './heights';
