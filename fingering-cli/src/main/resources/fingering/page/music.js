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
  }

  // Forms are sent by htmx only, also those that it has not seen yet.
  document.addEventListener("submit", (event) => event.preventDefault());

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

  const byId = (id) => document.getElementById(id);
  const music = byId("music");
  const work = byId("work");

  // The lines on screen are answered first.
  const onScreen = () => {
    const below = document.querySelector(".dock").getBoundingClientRect().top;
    const seen = [...document.querySelectorAll(".system")].filter((line) => {
      const box = line.getBoundingClientRect();
      return box.bottom > 0 && box.top < below;
    });
    return seen.length === 0 ? {} : {first: seen[0].id, last: seen[seen.length - 1].id};
  };

  body.addEventListener("htmx:configRequest", (event) => {
    const sent = event.detail.parameters;
    sent.window = String(document.documentElement.clientWidth);
    if (music) {
      sent.revision = byId("revision").value;
      Object.assign(sent, onScreen());
    }
  });
  body.addEventListener("htmx:sendError", () => say(body.dataset.gone));

  if (!music) {
    return;
  }

  const address = work.dataset.address;
  let moment = null;
  let measures = null;
  let anchor = null;
  let picking = false;
  let slurFrom = null;

  const post = (what, values) =>
    htmx.ajax("POST", `${address}/${what}`, {source: work, swap: "none", values});

  // The panel of a note may show another one before the answer comes, so its forms do not send themselves.
  byId("note").addEventListener("submit", (event) => {
    event.preventDefault();
    const values = Object.fromEntries(new FormData(event.target));
    if (event.submitter && event.submitter.name) {
      values[event.submitter.name] = event.submitter.value;
    }
    post(event.target.dataset.post, values);
  });

  // Frames around notes and measures. They are drawn again after every answer.
  const framed = new Set();
  const frame = (element, kind) => {
    if (element) {
      element.classList.add(kind);
      framed.add(element);
    }
  };
  const frameOf = (m) => music.querySelector(`rect.moment[data-moment="${m}"]`);
  const listed = (name) => (byId("changed").dataset[name] || "").split(" ").filter(Boolean);
  const mark = () => {
    framed.forEach((element) => element.classList.remove("chosen", "changed", "locked", "within", "slurring"));
    framed.clear();
    const changed = listed("moments");
    const locked = listed("locked");
    if (changed.length + locked.length > 0) {
      // One walk through the music for all of them: another plan may change a thousand notes.
      const frames = new Map();
      music.querySelectorAll("rect.moment").forEach((one) => frames.set(one.dataset.moment, one));
      changed.forEach((m) => frame(frames.get(m), "changed"));
      locked.forEach((m) => frame(frames.get(m), "locked"));
    }
    if (moment !== null) {
      frame(frameOf(moment), "chosen");
    }
    if (slurFrom !== null) {
      frame(frameOf(slurFrom), "slurring");
    }
    if (measures) {
      for (let m = measures.from; m <= measures.to; m++) {
        frame(byId(`m${m}`), "within");
      }
    }
  };

  // What is under the pointer: the nearest note of the line, and the measure.
  const under = (event) => {
    const picture = event.target.closest && event.target.closest("#music svg");
    if (!picture) {
      return null;
    }
    const at = new DOMPoint(event.clientX, event.clientY)
      .matrixTransform(picture.getScreenCTM().inverse());
    const distance = (box) =>
      Math.max(box.x.baseVal.value - at.x, at.x - box.x.baseVal.value - box.width.baseVal.value, 0);
    const nearest = (boxes) =>
      [...boxes].reduce((best, box) => (best && distance(best) <= distance(box) ? best : box), null);
    const note = nearest(picture.querySelectorAll("rect.moment"));
    const measure = nearest(picture.querySelectorAll("rect.target"));
    return {
      moment: note && distance(note) < 40 ? Number(note.dataset.moment) : null,
      measure: measure ? Number(measure.id.slice(1)) : null,
      number: measure ? measure.dataset.number : "",
    };
  };

  const measureOf = (m) => {
    const box = frameOf(m);
    return box ? Number(box.dataset.measure) : null;
  };

  const showNote = () => {
    if (moment === null) {
      htmx.trigger("#note", "htmx:abort");
      byId("note").replaceChildren();
      return;
    }
    htmx.ajax("GET", `${address}/note`,
      {source: byId("note"), target: "#note", swap: "innerHTML", values: {moment}});
  };

  const choose = (m, asks) => {
    if (m !== null && measures) {
      chooseMeasures(null);
    }
    moment = m;
    anchor = m === null ? null : measureOf(m);
    mark();
    clearTimeout(choose.later);
    if (asks) {
      showNote();
    } else {
      choose.later = setTimeout(showNote, 150);
    }
  };

  const numberOf = (m) => {
    const box = byId(`m${m}`);
    return box ? box.dataset.number : String(m);
  };

  const chooseMeasures = (from, to) => {
    const form = byId("range");
    if (from !== null && moment !== null) {
      const start = anchor;
      choose(null, true);
      anchor = start;
    }
    measures = from === null ? null : {from: Math.min(from, to), to: Math.max(from, to)};
    form.hidden = measures === null;
    if (measures) {
      form.elements.from.value = measures.from;
      form.elements.to.value = measures.to;
      const one = measures.from === measures.to;
      byId("span").textContent = (one ? form.dataset.one : form.dataset.some)
        .replace("%1", numberOf(measures.from)).replace("%2", numberOf(measures.to));
    }
    document.dispatchEvent(new CustomEvent("measures", {detail: measures}));
    mark();
  };

  let pressed = null;
  let dragged = false;
  music.addEventListener("pointerdown", (event) => {
    if (event.button === 0) {
      pressed = under(event);
      dragged = false;
    }
  });
  music.addEventListener("pointermove", (event) => {
    if (!pressed || event.pointerType === "touch" || event.buttons !== 1) {
      return;
    }
    const now = under(event);
    if (now && (dragged || now.measure !== pressed.measure)) {
      dragged = true;
      chooseMeasures(pressed.measure, now.measure);
    }
  });
  music.addEventListener("click", (event) => {
    const now = under(event);
    const drag = dragged;
    dragged = false;
    pressed = null;
    if (drag || !now) {
      return;
    }
    if (picking || event.shiftKey) {
      const start = anchor !== null && (event.shiftKey || measures) ? anchor : now.measure;
      anchor = start;
      chooseMeasures(start, now.measure);
    } else if (now.moment !== null) {
      choose(now.moment, true);
    }
  });

  byId("pick").addEventListener("click", (event) => {
    picking = !picking;
    anchor = null;
    event.target.setAttribute("aria-pressed", String(picking));
    if (!picking) {
      chooseMeasures(null);
    }
  });

  byId("range").addEventListener("click", (event) => {
    const key = event.target.dataset.key;
    if (key) {
      const value = event.target.dataset.value || byId(event.target.dataset.field).value;
      post("demand", {from: measures.from, to: measures.to, key, value});
    }
  });

  const close = (what) => {
    beginSlur(null);
    if (what === "note") {
      choose(null, true);
    } else {
      chooseMeasures(null);
    }
    music.focus();
  };
  byId("panel").addEventListener("click", (event) => {
    if (event.target.dataset.close) {
      close(event.target.dataset.close);
    }
  });

  // Keys in the music.
  const first = () => Number((music.querySelector("rect.moment") || {dataset: {moment: 0}}).dataset.moment);
  const step = (by) => {
    const next = moment === null ? first() : moment + by;
    if (frameOf(next)) {
      choose(next, false);
      show();
    }
  };
  const lineOfNote = () => {
    const chosen = moment === null ? null : frameOf(moment);
    return chosen ? chosen.closest(".system").getBoundingClientRect() : null;
  };
  const heightAbovePanel = () =>
    window.innerHeight - document.querySelector(".dock").getBoundingClientRect().height;
  const inSight = () => {
    const line = lineOfNote();
    return line !== null && line.bottom > 0 && line.top < heightAbovePanel();
  };
  const show = () => {
    const line = lineOfNote();
    if (line && (line.top < 0 || line.bottom > heightAbovePanel())) {
      window.scrollBy(0, line.top - Math.max(0, (heightAbovePanel() - line.height) / 2));
    }
  };
  const stepLine = (by) => {
    const box = moment === null ? null : frameOf(moment);
    if (!box) {
      step(0);
      return;
    }
    let line = box.closest(".system");
    do {
      line = by > 0 ? line.nextElementSibling : line.previousElementSibling;
    } while (line && !line.querySelector("rect.moment"));
    if (line) {
      const x = box.x.baseVal.value;
      const boxes = [...line.querySelectorAll("rect.moment")];
      const far = (one) => Math.abs(one.x.baseVal.value - x);
      choose(Number(boxes.reduce((a, b) => (far(b) < far(a) ? b : a)).dataset.moment), false);
      show();
    }
  };
  const widen = (by) => {
    if (anchor === null) {
      anchor = moment === null ? measureOf(first()) : measureOf(moment);
    }
    const end = measures ? (measures.from === anchor ? measures.to : measures.from) + by : anchor;
    if (byId(`m${end}`)) {
      chooseMeasures(anchor, end);
    }
  };
  // A slur is begun at one note and ended at another, in any order.
  const beginSlur = (m) => {
    slurFrom = m;
    byId("slurring").textContent = m === null ? "" : byId("slurring").dataset.begun;
    mark();
  };
  const slur = () => {
    if (moment === null || slurFrom === moment) {
      beginSlur(null);
    } else if (slurFrom === null) {
      beginSlur(moment);
    } else {
      post("slur", {moment: Math.min(slurFrom, moment), to: Math.max(slurFrom, moment)});
      beginSlur(null);
    }
  };
  const strings = ["", "I", "II", "III", "IV"];
  const keys = {
    ArrowRight: () => step(1),
    ArrowLeft: () => step(-1),
    ArrowDown: () => stepLine(1),
    ArrowUp: () => stepLine(-1),
    Escape: () => (slurFrom !== null ? beginSlur(null) : close(measures ? "range" : "note")),
    s: slur,
    l: () => byId("lock") && byId("lock").click(),
    Delete: () => moment !== null && post("free", {moment}),
  };
  music.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    const digit = /^(?:Digit|Numpad)([0-4])$/.exec(event.code);
    let done = true;
    if (digit && moment !== null && !(event.shiftKey && digit[1] === "0")) {
      post("fix", {moment, way: event.shiftKey ? strings[digit[1]] : `/${digit[1]}`});
    } else if (event.key.toLowerCase() === "t" && moment !== null) {
      post("fix", {moment, way: "/T"});
    } else if (event.shiftKey && (event.key === "ArrowRight" || event.key === "ArrowLeft")) {
      widen(event.key === "ArrowRight" ? 1 : -1);
    } else if (!event.shiftKey && keys[event.key]) {
      keys[event.key]();
    } else {
      done = false;
    }
    if (done) {
      event.preventDefault();
    }
  });
  document.addEventListener("keydown", (event) => {
    const typing = event.target.closest && event.target.closest("input:not([type=radio]), textarea, select");
    if (!(event.ctrlKey || event.metaKey) || typing) {
      return;
    }
    const key = event.key.toLowerCase();
    const what = key === "y" || (key === "z" && event.shiftKey) ? "redo" : key === "z" ? "undo" : "";
    if (what) {
      event.preventDefault();
      post(what, {});
    }
  });

  // What appears above the music must not push it away from the pointer.
  let place = 0;
  let wasInSight = false;
  body.addEventListener("htmx:beforeSwap", () => {
    wasInSight = inSight();
    place = music.childElementCount > 0 ? music.getBoundingClientRect().top : 0;
  });

  // The fields follow what an undo, another window or the file on disk has changed.
  const follow = () => {
    for (const name of ["part", "instrument", "student", "measures", "tempo"]) {
      const field = byId("choice").elements[name];
      const value = byId("changed").dataset[name];
      if (value !== undefined && field !== document.activeElement && field.value !== value) {
        field.value = value;
      }
    }
  };

  body.addEventListener("htmx:afterRequest", (event) => {
    const path = event.detail.pathInfo.requestPath;
    if (path.startsWith(`${address}/note`) && moment !== null) {
      // The ways to play a note must not cover it. For a reader who has scrolled away from it, the page stays still.
      if (wasInSight) {
        show();
      }
      return;
    }
    if (!path.startsWith(address)) {
      return;
    }
    mark();
    // What was refused stays in its field until the next change, whatever is read in between.
    if (event.detail.xhr.status === 200 && (event.detail.requestConfig.verb === "post" || path.endsWith("/plans"))) {
      follow();
    }
    if (place !== 0 && event.detail.requestConfig.verb === "post") {
      window.scrollBy(0, music.getBoundingClientRect().top - place);
    }
    if (event.detail.requestConfig.verb === "post" && event.detail.successful && moment !== null) {
      showNote();
    }
  });
})();
