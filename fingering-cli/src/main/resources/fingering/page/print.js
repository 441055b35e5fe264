// The script of a sheet that the local page shows: its button prints it.
"use strict";
document.getElementById("print").addEventListener("click", () => window.print());
