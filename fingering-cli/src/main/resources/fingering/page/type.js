// The script of the page for typing: the music follows the text, faults lead to it, and it is saved.
"use strict";
(() => {
  const page = document.getElementById("type");
  const box = document.getElementById("abc");
  const music = document.getElementById("staff");
  const field = (name) => page.elements.namedItem(name);
  let safe = page.dataset.unsaved === "true" ? "" : box.value;
  let measures = [];
  let drawing = false;

  const put = (id, html) => {
    document.getElementById(id).innerHTML = html;
  };
  const post = (path, fields) =>
    fetch(page.dataset.address + path, {
      method: "POST",
      headers: {"X-Page": document.body.dataset.token},
      body: new URLSearchParams(fields),
    });
  const gone = () => {
    put("trouble", "<p></p>");
    document.querySelector("#trouble p").textContent = page.dataset.gone;
  };

  // The music. One request at a time: what is typed during a request is drawn next, and no answer is late.
  const known = () => [...music.children].map((line) => line.dataset.hash);
  const draw = async () => {
    if (drawing) {
      return;
    }
    drawing = true;
    music.setAttribute("aria-busy", "true");
    let sent;
    do {
      sent = box.value;
      const width = music.clientWidth;
      try {
        const answer = await post("/draw", {text: sent, width, known: known().join(" ")});
        const html = await answer.text();
        put("trouble", answer.ok ? "" : html);
        if (answer.ok) {
          show(html, sent);
        }
      } catch (failed) {
        gone();
      }
    } while (sent !== box.value);
    drawing = false;
    music.removeAttribute("aria-busy");
  };

  const show = (html, sent) => {
    const answer = document.createElement("template");
    answer.innerHTML = html;
    const heard = answer.content.getElementById("heard").textContent;
    if (document.getElementById("heard").textContent !== heard) {
      document.getElementById("heard").textContent = heard;
    }
    document.getElementById("faults").replaceWith(answer.content.getElementById("faults"));
    const lines = answer.content.getElementById("lines");
    const wanted = [...lines.children];
    const stay = new Set(wanted.map((line) => line.dataset.hash));
    const before = new Map([...music.children].map((line) => [line.dataset.hash, line]));
    wanted.forEach((line, i) => {
      const next = line.firstElementChild ? line : before.get(line.dataset.hash);
      const now = music.children[i];
      if (now && now !== next && !stay.has(now.dataset.hash)) {
        now.replaceWith(next);
      } else if (now !== next) {
        music.insertBefore(next, now || null);
      }
    });
    [...music.children].slice(wanted.length).forEach((line) => line.remove());
    measures = lines.dataset.measures.split(" ").filter(Boolean).map((m) => m.split(":").map(Number));
    safe = lines.dataset.unsaved === "false" ? sent : safe;
    if (sent !== safe) {
      put("saved", "");
    }
    const misfits = lines.dataset.misfits.split(" ").map((index) => "m" + index);
    music.querySelectorAll(".target").forEach((frame) => frame.classList.toggle("misfit", misfits.includes(frame.id)));
    here();
  };

  // Places: the measure at the cursor is marked in the music; faults and measures lead to the text.
  const here = () => {
    const lines = box.value.slice(0, box.selectionStart).split("\n");
    const [line, column] = [lines.length, lines[lines.length - 1].length + 1];
    const index = measures.findLastIndex((m) => m[0] < line || (m[0] === line && m[1] <= column));
    music.querySelectorAll(".here").forEach((frame) => frame.classList.remove("here"));
    const frame = index < 0 ? null : document.getElementById("m" + index);
    if (frame) {
      frame.classList.add("here");
      const [seen, whole] = [frame.getBoundingClientRect(), music.getBoundingClientRect()];
      if (music.scrollHeight > music.clientHeight && (seen.top < whole.top || seen.bottom > whole.bottom)) {
        music.scrollTop += seen.top - whole.top - 30;
      }
    }
  };
  const go = (line, column) => {
    const before = box.value.split("\n").slice(0, line - 1).join("\n");
    const at = before.length + (line > 1 ? 1 : 0) + column - 1;
    box.setSelectionRange(at, at);
    box.blur();
    box.focus();
  };
  page.addEventListener("click", (event) => {
    const place = event.target.closest("[data-line]");
    const frame = music.contains(event.target)
      && document.elementsFromPoint(event.clientX, event.clientY).find((at) => at.matches(".target"));
    if (place) {
      go(Number(place.dataset.line), Number(place.dataset.column));
    } else if (frame && measures[frame.id.slice(1)]) {
      go(...measures[frame.id.slice(1)]);
    }
  });
  document.addEventListener("selectionchange", () => document.activeElement === box && here());

  box.addEventListener("input", draw);
  window.addEventListener("resize", draw);

  page.addEventListener("submit", async (event) => {
    event.preventDefault();
    const text = box.value;
    try {
      const answer = await post("/save", {text, name: field("name").value || field("title").value});
      const html = await answer.text();
      put("named", answer.ok ? "" : html);
      put("saved", answer.ok ? html : "");
      field("name").value = field("name").value || field("title").value;
      field("name").toggleAttribute("aria-invalid", !answer.ok);
      safe = answer.ok ? text : safe;
    } catch (failed) {
      gone();
    }
  });
  window.addEventListener("beforeunload", (event) => {
    if (box.value !== safe) {
      event.preventDefault();
    }
  });

  // The open strings are there to be typed over.
  const notes = box.value.lastIndexOf("\n", box.value.trimEnd().length - 1) + 1;
  box.focus();
  box.setSelectionRange(notes, box.value.trimEnd().length);
  draw();
})();
