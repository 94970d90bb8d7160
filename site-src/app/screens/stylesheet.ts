// Style sheets that only some screens need.

/** Puts a style sheet into effect that the page names as data-NAME, unless it is already. */
export function sheet(name: string): Promise<void> {
  const href = document.documentElement.dataset[name];
  if (!href || document.querySelector(`link[href="${href}"]`)) return Promise.resolve();
  return new Promise((ok, no) => {
    const link = document.createElement('link');
    link.rel = 'stylesheet';
    link.href = href;
    link.onload = () => ok();
    link.onerror = () => {
      link.remove();
      no(new Error(href));
    };
    document.head.append(link);
  });
}
