/** Says of a due date whether it has passed: the build must not depend on the clock, the reader's browser may. */

const DAY = 86_400_000;
/** Days ahead from which a date counts as near. */
const NEAR = 30;

/** Adds a word to each `time[data-due]` under `root` that lies in the past or within 30 days of `now`. */
export function markDue(root: ParentNode, now: Date): void {
  const today = Date.UTC(now.getFullYear(), now.getMonth(), now.getDate());
  for (const time of root.querySelectorAll<HTMLTimeElement>('time[data-due]')) {
    const day = Date.parse(`${time.dateTime}T00:00:00Z`);
    if (Number.isNaN(day)) continue;
    const days = Math.round((day - today) / DAY);
    if (days > NEAR) continue;
    const word = document.createElement('span');
    word.className = days < 0 ? 'late' : 'soon';
    word.textContent = days < 0 ? 'overdue' : days === 0 ? 'today' : `in ${days}\u00a0${days === 1 ? 'day' : 'days'}`;
    time.append(' ', word);
  }
}
