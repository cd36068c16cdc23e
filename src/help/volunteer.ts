import { type Page, plain } from './frame';

/** One thing to try, and what is to be seen. */
interface Trial {
  readonly name: string;
  readonly act: string;
  readonly seen: string;
}

/** What shows whether Solebench does in the suite what its maker's documentation and users' reports put in doubt. */
const TRIALS: readonly Trial[] = [
  {
    name: 'Load',
    act: 'Load manifest.xml as the guide describes under Start, and open the pane.',
    seen: 'The button Solebench stands on the Home tab with its icon. The pane shows within ten seconds and says nothing of what is missing; else write down what it says.',
  },
  {
    name: 'Time',
    act: 'In an empty workbook press Load the demo run. Take the time until no cell of Run to Ticket shows #BUSY! or #NAME?; scroll and type in Sheet1 meanwhile.',
    seen: 'Less than a minute. Excel takes what you type all the time, and does not say that the add-in was restarted or does not answer.',
  },
  {
    name: 'Plan',
    act: 'Look at Run, Checks and Ticket.',
    seen: 'Pairage has its sums, Order a price in each row, Ticket its steps; on Checks nothing is to be put right but what is Betony’s or the run’s own, and Heel control holds.',
  },
  {
    name: 'Blank cell',
    act: 'With Z99 blank, type =SOLEBENCH.LAYERS(45,7) and =SOLEBENCH.LAYERS(45,7,Z99) into two cells. With a decimal comma, write semicolons between the arguments.',
    seen: 'Both show 7.',
  },
  {
    name: 'Blank rows',
    act: 'On Run, blank one number in Pairage, then put it back. On Bottom stock, blank the minimum of a stock.',
    seen: 'Checks has no new slip because of a blank, and none names a 0 that nobody entered.',
  },
  {
    name: 'Words',
    act: 'Type =SOLEBENCH.LAYERS(45,"thin"), then begin =SOLEBENCH.SIZECONVERT(42, in another cell.',
    seen: '#VALUE!, and the sign beside the cell says what is wrong with thickness. Excel offers EU, UK and the others, where it can.',
  },
  {
    name: 'Own reference',
    act: 'In Sheet1 type =SUM(StylesTable[#All]), =COUNTA(PairageTable[Style]) and =Run!A1. Press Load the demo run again.',
    seen: 'It asks nothing. The three formulas answer as before; none shows #REF!.',
  },
  {
    name: 'Undo',
    act: 'Type something into Sheet1, press Blank tables, say yes if you are asked, then press Ctrl+Z until something comes back.',
    seen: 'Write down how often it had to be pressed, or that Excel undid nothing; and whether the question before said so.',
  },
  {
    name: 'Reopen',
    act: 'Rename Run to June. Tick “Load the functions whenever this workbook opens”, save, close Excel, open the workbook, wait, then press Load the demo run.',
    seen: 'Before the pane is opened, the cells are worked out. After loading, June holds the run, and there is no second Run.',
  },
  {
    name: 'Closed pane',
    act: 'Close the pane and change a number of pairs; take the time until Order follows. Do something else for 30 minutes with another window in front, then change it again.',
    seen: 'It follows both times. Write down both times, and whether any cell stays #BUSY! until the pane is opened.',
  },
  {
    name: 'Picture',
    act: 'In the pane, under Build, press Save, then Copy and paste into a cell or a letter, then Into sheet.',
    seen: 'Write down for each whether a file, a picture on the clipboard, a picture in the sheet came of it, and what the pane said.',
  },
  {
    name: 'Paper',
    act: 'Under Paper press Save as PDF, open it in a window of its own, and open the page in a browser.',
    seen: 'Write down which of the three came to a document that can be printed.',
  },
  {
    name: 'Looks',
    act: 'Switch Excel between its light and dark themes, the system between light and dark, and on Windows to a contrast theme, with the pane open. Press Dark or Light at its foot.',
    seen: 'The pane follows the system and your choice, at the latest when it is opened again, and can be read throughout.',
  },
  {
    name: 'Search',
    act: 'Under Cutting, search the whole run with the longest effort for a minute and stop it. Type in the sheet meanwhile.',
    seen: 'Typing goes on. If Excel says that the add-in uses much of the processor, write down its words; the best found so far stays.',
  },
  {
    name: 'Console',
    act: 'In Excel on the web, open the browser’s console (F12) before the workbook opens, and do steps 2 and 4 again.',
    seen: 'Copy what is red and names solebench, functions.js, taskpane.js or the policy.',
  },
];

/** The list for whoever tries Solebench inside the suite: to be ticked, noted on, and copied as text. */
export function volunteer(): Page {
  const body = `<p>Nobody has yet tried Solebench inside Excel itself. If you do, go through these ${TRIALS.length} steps, tick what is as it says, and note what is not. It takes about an hour, half of it waiting. What you tick and write stays in this browser; nothing is sent. Copy it as text and hand it to whoever serves Solebench.</p>
<form id="trials">
<p class="row">${field('Excel and its version', 'version')} ${field('System and its version', 'system')}</p>
<ol>
${TRIALS.map(trial).join('\n')}
</ol>
<p><button type="button" id="copy">Copy as text</button> <button type="button" id="empty">Begin anew</button> <span id="done" role="status"></span></p>
<textarea id="text" readonly rows="12" hidden aria-label="The list as text"></textarea>
</form>`;
  return { file: 'volunteer.html', title: 'For a volunteer in Excel', body, script: 'ticked.js' };
}

function field(words: string, name: string): string {
  return `<label>${plain(words)} <input name="${name}" autocomplete="off" spellcheck="false"></label>`;
}

function trial({ name, act, seen }: Trial, at: number): string {
  const n = at + 1;
  return `<li data-trial="${n}. ${plain(name)}"><label><input type="checkbox" name="as-said-${n}"> <b>${plain(name)}.</b> ${plain(act)}</label>
<p>${plain(seen)}</p>
<label>What differs <textarea name="differs-${n}" rows="1"></textarea></label></li>`;
}
