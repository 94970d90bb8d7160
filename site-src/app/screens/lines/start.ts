// A new step begins at its head: the eye and the focus go to the task line.

export function start() {
  const task = document.querySelector<HTMLElement>('[data-t=task]');
  if (!task) return;
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  scrollTo({ top: 0, behavior: calm ? 'auto' : 'smooth' });
  task.focus({ preventScroll: true });
}
