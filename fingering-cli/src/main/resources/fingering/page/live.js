// Tells the server that a page is open, and the reader that the program has ended.
"use strict";
(() => {
  const body = document.body;
  const place = document.getElementById("gone");
  const others = new BroadcastChannel("server");
  let gone = false;
  let typed = false;

  const show = (ended) => {
    if (gone !== ended) {
      gone = ended;
      place.textContent = ended ? place.dataset.gone : "";
    }
  };
  const tell = (ended) => {
    show(ended);
    others.postMessage(ended);
  };
  others.addEventListener("message", (event) => show(event.data));

  const listen = () =>
    new Promise(() => {
      const stream = new EventSource("/events");
      let failed = false;
      stream.addEventListener("open", () => {
        failed = false;
        tell(false);
      });
      stream.addEventListener("end", () => {
        stream.close();
        tell(true);
      });
      stream.addEventListener("error", () => {
        if (stream.readyState === EventSource.CLOSED) {
          // Refused: either the server has enough streams, or it is another one.
          fetch("/live.js").then((answer) => tell(!answer.ok), () => tell(true));
        } else if (failed) {
          tell(true);
        }
        failed = true;
      });
    });

  // A browser has six connections to a server, and a stream takes one for good. So one page holds the stream for all
  // pages of the browser; when it is closed, the next one does.
  if (navigator.locks) {
    navigator.locks.request("stream", listen);
  } else {
    listen();
  }

  body.addEventListener("htmx:sendError", () => show(true));

  // The browser asks before it drops what was typed and never arrived.
  body.addEventListener("input", () => {
    typed = true;
  });
  body.addEventListener("htmx:afterRequest", (event) => {
    if (event.detail.successful) {
      typed = false;
    }
  });
  window.addEventListener("beforeunload", (event) => {
    if (gone && typed && navigator.userActivation?.hasBeenActive) {
      event.preventDefault();
    }
  });
})();
