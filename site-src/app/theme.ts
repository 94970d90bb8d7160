// Sets the theme before the page is drawn.

export function early() {
  try {
    const theme = localStorage.getItem('sutur-theme');
    if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
  } catch { /* keep the system's */ }
}
