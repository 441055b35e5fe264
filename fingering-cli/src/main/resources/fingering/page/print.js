// Buttons of the local page that print it.
"use strict";
document.addEventListener("click", event => {
  if (event.target.closest("#print, [data-print]")) window.print();
});
