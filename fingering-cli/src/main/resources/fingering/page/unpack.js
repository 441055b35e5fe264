// Puts the music that this file holds packed in its place.
"use strict";
(async () => {
  const packed = document.querySelector(".packed");
  if (!packed || !window.DecompressionStream) {
    return;
  }
  const signs = atob(packed.lastElementChild.textContent);
  const bytes = Uint8Array.from(signs, (sign) => sign.charCodeAt(0));
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate"));
  packed.outerHTML = await new Response(unpacked).text();
  const sound = document.querySelector(".played #sound");
  if (sound) {
    window.fingeringPlayer.take(sound.textContent);
  }
  document.querySelector(".short")?.classList.replace("short", "narrow-only");
})();
