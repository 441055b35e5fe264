// The ticks of a tempo ladder: the browser keeps them for the next time.
"use strict";
(() => {
  const head = document.querySelector("header").textContent;
  const ticks = [...document.querySelectorAll(".days input")];
  const name = (tick) => `${head} ${tick.ariaLabel}`;

  // A browser may refuse to keep anything for a file.
  try {
    for (const tick of ticks) {
      tick.checked = localStorage.getItem(name(tick)) !== null;
      tick.addEventListener("change", () => {
        if (tick.checked) {
          localStorage.setItem(name(tick), "");
        } else {
          localStorage.removeItem(name(tick));
        }
      });
    }
  } catch (refused) {
    return;
  }
})();
