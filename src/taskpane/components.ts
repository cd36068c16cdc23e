/** The office suite's own components, as its maker keeps them: importing one defines its element. */
import '@fluentui/web-components/button.js';
import '@fluentui/web-components/progress-bar.js';
import '@fluentui/web-components/tab.js';
import '@fluentui/web-components/tablist.js';
