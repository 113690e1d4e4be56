// Asks for the guide while the page's own scripts still load: on a slow line that is half a second.
(() => {
  const token = /^\/g\/([^/?#]+)/.exec(location.pathname)?.[1];
  if (!token) return;
  globalThis.setfairGuide = fetch(`/api/guide/${token}`, { credentials: "same-origin" });
  globalThis.setfairGuide.catch(() => undefined);
  // a browser reads its tables of dates and numbers on first use; the processor has nothing to do yet
  setTimeout(() => {
    new Intl.DateTimeFormat("en-GB", {
      timeZone: "Europe/London",
      dateStyle: "full",
      timeStyle: "short",
    }).format();
    new Intl.NumberFormat("en-GB").format(1);
    new Intl.PluralRules("en-GB").select(1);
  }, 0);
})();
