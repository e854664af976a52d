/** The picture by keyboard: arrows go from block to block and from column to column. */

/**
 * Up and down within a column, left and right between columns; Enter chooses (as on any button).
 */
export function onColumnKey(event, column, does) {
  const step = { ArrowUp: -1, ArrowDown: 1, ArrowLeft: -1, ArrowRight: 1 }[event.key];
  if (!step || event.altKey || event.ctrlKey || event.metaKey) return;
  const list = event.currentTarget;
  if (event.key === "ArrowUp" || event.key === "ArrowDown") {
    const stops = [...list.querySelectorAll(".block, .who")];
    const at = stops.indexOf(document.activeElement);
    stops[Math.min(stops.length - 1, Math.max(0, at + step))]?.focus();
  } else {
    const all = [...list.parentElement.children];
    const next = all[all.indexOf(list) + step];
    if (!next) return;
    const top = document.activeElement.getBoundingClientRect().top;
    nearest([...next.querySelectorAll(".block, .who")], top)?.focus();
  }
  event.preventDefault();
}

/** The element whose top is nearest to a height. */
function nearest(elements, top) {
  let best;
  let least = Infinity;
  for (const each of elements) {
    const off = Math.abs(each.getBoundingClientRect().top - top);
    if (off < least) [best, least] = [each, off];
  }
  return best;
}
