// The script of the live page: sending files, the width of the window, and a server that is gone.
"use strict";
(() => {
  const body = document.body;
  const form = document.getElementById("drop");
  const most = 64 * 1024 * 1024;

  const say = (sentence) => {
    const place = document.getElementById("trouble");
    const line = document.createElement("p");
    line.textContent = sentence;
    place.replaceChildren(line);
  };

  const send = async (file) => {
    if (file.size > most) {
      say(body.dataset.large);
      return;
    }
    const reading = document.getElementById("reading");
    reading.hidden = false;
    try {
      const answer = await fetch("/scores", {
        method: "POST",
        headers: {"X-Page": body.dataset.token, "X-Name": encodeURIComponent(file.name)},
        body: file,
      });
      if (answer.status === 201) {
        location.assign(answer.headers.get("Location"));
      } else {
        document.getElementById("trouble").innerHTML = await answer.text();
      }
    } catch (gone) {
      say(body.dataset.gone);
    }
    reading.hidden = true;
  };

  if (form) {
    const chooser = document.getElementById("file");
    chooser.addEventListener("change", () => {
      if (chooser.files.length > 0) {
        send(chooser.files[0]);
      }
    });
    form.addEventListener("submit", (event) => event.preventDefault());
  }

  // A file dropped anywhere is meant for the page, not for the browser.
  document.addEventListener("dragover", (event) => {
    event.preventDefault();
    body.classList.add("over");
  });
  document.addEventListener("dragleave", () => body.classList.remove("over"));
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    body.classList.remove("over");
    if (event.dataTransfer.files.length > 0) {
      send(event.dataTransfer.files[0]);
    }
  });

  body.addEventListener("htmx:configRequest", (event) => {
    event.detail.parameters.window = String(document.documentElement.clientWidth);
  });
  body.addEventListener("htmx:sendError", () => say(body.dataset.gone));
})();
