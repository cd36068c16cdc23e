/** The office suite's own components, as its maker keeps them: importing one defines its element. */
import '@fluentui/web-components/button.js';
import '@fluentui/web-components/progress-bar.js';
import '@fluentui/web-components/tab.js';
import '@fluentui/web-components/tablist.js';
import { FASTElementDefinition, Observable } from '@microsoft/fast-element';

/** The kinds of elements that are defined here. */
const COMPONENTS = ['fluent-button', 'fluent-progress-bar', 'fluent-tab', 'fluent-tablist'] as const;

/**
 * Every element asks to be told of changes in how its kind is made, and never takes that back: with it all would be held
 * that its listeners know, a plan and more for each button that was taken away. The kinds do not change.
 */
function letElementsGo(kind: CustomElementConstructor): void {
  const definition = FASTElementDefinition.getByType(kind);
  if (definition) Observable.getNotifier(definition).subscribe = () => undefined;
}

for (const name of COMPONENTS) customElements.whenDefined(name).then(letElementsGo).catch(reportError);
