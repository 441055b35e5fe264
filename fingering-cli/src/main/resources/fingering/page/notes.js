// The fields and buttons of the page for typing: they write ABC notation into its box.
"use strict";
(() => {
  const page = document.getElementById("type");
  const box = document.getElementById("abc");
  const field = (name) => page.elements.namedItem(name);
  const changed = () => box.dispatchEvent(new Event("input"));

  // Buttons. Typing them leaves the browser's own undo in order.
  const note = /((?:![^!\n]*!|"[^"\n]*"|[.~uvHLMOPST](?=[^\n]))*)(\[[^\]:|\n]*\]|[_^=]{0,2}[A-Ga-gxz][,']*)(\d*\/*\d*)(-?)|!.*?!|".*?"|\[\w:.*?\]/g;
  const type = (from, to, text) => {
    box.focus();
    box.setSelectionRange(from, to);
    if (!document.execCommand("insertText", false, text)) {
      box.setRangeText(text, from, to, "end");
      changed();
    }
  };
  const noteBefore = (at) => {
    const from = box.value.lastIndexOf("\n", at - 1) + 1;
    const line = box.value.slice(from).split("\n", 1)[0];
    const found = /^([A-Za-z]:|%)/.test(line) ? [] : [...line.matchAll(note)].filter((m) => m[2] && from + m.index < at);
    const last = found[found.length - 1];
    const end = last ? from + last.index + last[0].length : 0;
    return last && /^[\s)]*$/.test(box.value.slice(end, Math.max(at, end)))
      ? {from: from + last.index, to: end, marks: last[1], head: last[2], length: last[3], tie: last[4]} : null;
  };
  const times = (length, factor) => {
    const [, over, slashes, under] = length.match(/^(\d*)(\/*)(\d*)/);
    const value = Number(over || 1) / Number(under || 2 ** slashes.length);
    const dotted = factor === 1.5 && Number.isInteger(Math.log2(value / 3));
    const now = dotted ? value / 1.5 : value * factor;
    const parts = [1, 2, 4, 8, 16, 32, 64].find((part) => Number.isInteger(now * part)) || 64;
    return (now * parts === 1 ? "" : String(now * parts)) + (parts === 1 ? "" : now * parts === 1 && parts === 2 ? "/" : "/" + parts);
  };
  const octave = (head, up) => {
    const [, sign, letter, marks] = head.match(/^([_^=]*)(.)(.*)$/);
    const other = up ? letter.toLowerCase() : letter.toUpperCase();
    return marks.startsWith(up ? "," : "'")
      ? sign + letter + marks.slice(1)
      : sign + other + (other === letter ? marks + (up ? "'" : ",") : marks);
  };
  const write = (act, sign) => {
    const [from, to] = [box.selectionStart, box.selectionEnd];
    const at = noteBefore(to);
    const single = at && /[A-Ga-g]/.test(at.head) && !at.head.startsWith("[");
    const again = (parts) => {
      const all = {...at, ...parts};
      type(at.from, at.to, all.marks + all.head + all.length + all.tie);
    };
    if (act === "accidental" && single) {
      again({head: (at.head.startsWith(sign) ? "" : sign) + at.head.replace(/^[_^=]+/, "")});
    } else if (act === "octave" && single) {
      again({head: octave(at.head, sign === "1")});
    } else if (act === "length" && at) {
      again({length: times(at.length, Number(sign))});
    } else if (act === "before" && at) {
      again({marks: at.marks.includes(sign) ? at.marks.replace(sign, "") : sign + at.marks});
    } else if (act === "after" && at) {
      again({tie: at.tie ? "" : sign});
    } else if (act === "around") {
      const [begin, end] = sign.split(" ");
      const before = box.value.slice(0, from).replace(/\(\d|!<\(!|!>\(!/g, (found) => (found === begin ? found : ""));
      const open = before.lastIndexOf(begin) > before.lastIndexOf(end);
      const around = box.value.slice(from, to).match(/^(\s*)(.*?)([\s|]*)$/s);
      type(from, to, from < to ? around[1] + begin + around[2] + end + around[3] : open ? end : begin);
    } else if (act === "insert" || act === "before" || act === "accidental" || act === "after") {
      type(to, to, /\s$/.test(box.value.slice(0, to)) ? sign.trimStart() : sign);
    } else {
      box.focus();
    }
  };
  page.addEventListener("click", (event) => {
    const tool = event.target.closest("[data-act]");
    if (tool) {
      write(tool.dataset.act, tool.dataset.sign);
    }
  });

  // Fields: they write the lines above the notes, and follow them.
  const header = (letter) => box.value.match(new RegExp("^" + letter + ":[ \\t]*(.*)$", "m"));
  const said = (letter) => (header(letter) || ["", ""])[1];
  const set = (letter, value) => {
    const found = header(letter);
    const at = found ? found.index : Math.max(0, box.value.search(/^K:/m));
    const to = at + (found ? found[0].length : 0);
    box.setRangeText(letter + ":" + value + (found ? "" : "\n"), at, to, "preserve");
  };
  const first = /^%%setbarnb +(.*)$/m;
  const keyName = /^([A-G][#b]?)(?: *(m|min|minor|maj|major))?(?= |$)/i;
  const clefName = /(^| )(?:clef=)?(treble|alto|tenor|bass)(?=[ ,]|$)/;
  const menu = (name, value) => {
    field(name).value = value;
    if (field(name).selectedIndex < 0) {
      field(name).value = "";
    }
  };
  const follow = () => {
    const key = said("K").match(keyName);
    const clef = said("K").match(clefName);
    const tempo = said("Q").match(/(\d+\/\d+) *= *(\d+)/) || ["", "", ""];
    field("title").value = said("T");
    menu("instrument", (said("V").match(/name="(.*?)"/) || ["", ""])[1]);
    menu("key", key ? key[1] + (/^mi?n?o?r?$/.test(key[2] || "") && key[2] ? "m" : "") : "");
    menu("clef", clef ? clef[2] : "");
    menu("meter", said("M"));
    menu("unit", said("L"));
    field("first").value = (box.value.match(first) || ["", ""])[1];
    menu("beat", tempo[1]);
    field("speed").value = tempo[2];
  };
  // The open strings fill one measure, as many as do so in equal lengths.
  const openStrings = (strings) => {
    const parts = (text) => text.split("/").map(Number);
    const [[beats, beat], [one, unit]] = [parts(said("M")), parts(said("L"))];
    const units = (beats * unit) / (beat * one);
    const number = [4, 3, 2, 1].find((count) => [1, 2, 3, 4, 6, 8, 12, 16].includes(units / count));
    const names = strings.replace(/[\d|]/g, "").trim().split(" ");
    return number
      ? names.slice(0, number).map((name) => name + (units === number ? "" : units / number)).join(" ") + " |" : strings;
  };
  const chosen = () => field("instrument").options[field("instrument").selectedIndex].dataset;
  const untouched = () =>
    [...field("instrument").options]
      .filter((one) => one.dataset.strings)
      .map((one) => openStrings(one.dataset.strings))
      .find((strings) => box.value.trimEnd().endsWith("\n" + strings)) || "";
  // Changes what is above the notes; open strings that nobody has typed over follow.
  const withStrings = (write) => {
    const old = untouched();
    write();
    if (old && chosen().strings) {
      const at = box.value.lastIndexOf(old);
      box.setRangeText(openStrings(chosen().strings), at, at + old.length, "select");
    }
  };
  const instrument = () => {
    set("V", '1 name="' + field("instrument").value + '"');
    set("K", said("K").replace(clefName, "").trim() + " clef=" + chosen().clef);
  };
  const writers = {
    title: () => set("T", field("title").value),
    instrument: () => withStrings(instrument),
    first: () => {
      const number = "%%setbarnb " + (field("first").value || "1");
      const at = first.test(box.value) ? box.value.search(first) : Math.max(0, box.value.search(/^K:/m));
      const old = (box.value.match(first) || [""])[0];
      box.setRangeText(old ? number : number + "\n", at, at + old.length, "preserve");
    },
    clef: () => set("K", said("K").replace(clefName, "").trim() + " clef=" + field("clef").value),
    key: () => set("K", field("key").value + " " + said("K").replace(keyName, "").trim()),
    meter: () => withStrings(() => set("M", field("meter").value)),
    unit: () => withStrings(() => set("L", field("unit").value)),
    beat: () => set("Q", (field("beat").value || "1/4") + "=" + (field("speed").value || "96")),
    speed: () => writers.beat(),
  };
  page.addEventListener("change", (event) => {
    if (writers[event.target.name]) {
      writers[event.target.name]();
      changed();
    }
  });
  // A title is written as it is typed: no other field shows what is missing in it.
  field("title").addEventListener("input", () => {
    writers.title();
    changed();
  });
  // Enter in a field writes it; only in the name it saves.
  page.addEventListener("keydown", (event) => {
    if (event.key === "Enter" && writers[event.target.name]) {
      event.preventDefault();
      event.target.dispatchEvent(new Event("change", {bubbles: true}));
    }
  });
  box.addEventListener("input", follow);
  follow();
})();
