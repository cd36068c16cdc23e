/** Entry of help/find.js: leaves in the list what has all the words that are typed. */

const field = document.querySelector<HTMLInputElement>('#find');
const found = document.querySelector<HTMLElement>('#found');
const entries = [...document.querySelectorAll<HTMLElement>('#functions > div')];

function show(): void {
  const query = field?.value.trim() ?? '';
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  let count = 0;
  for (const entry of entries) {
    const fits = words.every((word) => entry.dataset['words']?.includes(word));
    entry.hidden = !fits;
    if (fits) count++;
  }
  if (!found) return;
  found.textContent =
    count === 0
      ? `No function is about “${query}”. Try another word, such as skive, size or order.`
      : count === entries.length
        ? `${count} functions`
        : `${count} of ${entries.length} functions`;
}

field?.addEventListener('input', show);
// A browser that comes back to the page may have kept what was typed.
show();
