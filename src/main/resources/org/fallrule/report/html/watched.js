/** A page whose plan is being edited is written anew: it shows the new state when nobody is using it, at the same place and choice. */
if (document.documentElement.hasAttribute("data-watched")) {
  setInterval(() => {
    if (!document.hidden && !document.hasFocus()) location.reload();
  }, 1500);
  document.addEventListener("visibilitychange", () => {
    if (!document.hidden) location.reload();
  });
}
