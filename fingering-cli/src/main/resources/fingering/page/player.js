// Plays the music of a page from the table of note times: tones and clicks on the clock of the
// sound card, and a frame around the notes that sound. Other scripts choose measures, by index,
// with fingeringPlayer.select(from, to) or the attributes data-from and data-to of the body.
"use strict";
(() => {
  const player = document.getElementById("player");
  if (!player) {
    return;
  }
  // In seconds: how far ahead sounds are handed to the sound card, and how often.
  const AHEAD = 0.2;
  const EVERY = 0.025;
  const LOUD = 0.3;
  // The strengths of the partials of a bowed string, roughly (common practice, no source).
  const PARTIALS = [0, 1, 0.55, 0.4, 0.28, 0.2, 0.14, 0.1, 0.07, 0.05, 0.03];

  const field = (name) => player.querySelector(`[data-player="${name}"]`);
  const body = document.body;
  const button = field("play");
  let table = null;
  let chosen = null;

  let context = null;
  let out = null;
  let playing = 0;
  let turns = [];
  let next = 0;
  let ending = Infinity;
  let resume = 0;
  let marked = [];
  let shown = -1;
  let system = null;
  const sounding = new Set();

  // The measures that are played

  const chosenBars = () => {
    const bars = table.measures;
    const within = (bar) => !chosen || (bar.measure >= chosen.from && bar.measure <= chosen.to);
    let best = null;
    let first = -1;
    bars.forEach((bar, i) => {
      first = !within(bar) ? -1 : first < 0 ? i : first;
      if (first >= 0 && (!best || i - first > best.last - best.first)) {
        best = {first, last: i};
      }
    });
    return best || {first: 0, last: bars.length - 1};
  };

  /** What sounds from one measure to another, in seconds at the tempo of the table. */
  const turn = (first, last, countIn) => {
    const opening = table.measures[first];
    const closing = table.measures[last];
    const lead = countIn ? opening.full + Math.max(0, opening.full - opening.length) : 0;
    const end = closing.start + closing.length;
    const inside = (event) => event.start >= opening.start && event.start < end;
    const at = (start) => (lead + start - opening.start) / 1e6;
    const clicks = table.clicks.filter(inside).map((click) => ({at: at(click.start), click}));
    for (let early = 0; early < lead; early += opening.beat) {
      const beat = early === 0 || early === opening.full ? "first" : "beat";
      clicks.push({at: early / 1e6, click: {kind: beat}});
    }
    const marks = table.moments.filter(inside).map((moment) => ({
      at: at(moment.start),
      until: at(moment.start + Math.max(...moment.notes.map((note) => note[1]))),
      moment: moment.moment,
      plucked: moment.plucked,
      notes: moment.notes.map(([midi, length]) => [
        midi,
        Math.min(length, end - moment.start) / 1e6,
      ]),
    }));
    const events = [...clicks, ...marks].sort((one, other) => one.at - other.at);
    return {first, last, events, marks, lead: lead / 1e6, length: at(end)};
  };

  // The sounds

  const gain = (value) => {
    const node = context.createGain();
    node.gain.value = value;
    return node;
  };

  const wire = () => {
    out = {all: gain(1), tones: gain(0), clicks: gain(0), parts: gain(0)};
    out.all.connect(context.destination);
    out.tones.connect(out.all);
    out.clicks.connect(out.all);
    out.parts.connect(out.clicks);
    out.wave = context.createPeriodicWave(
      new Float32Array(PARTIALS.length),
      new Float32Array(PARTIALS),
    );
    mix();
  };

  const mix = () => {
    if (out) {
      for (const [node, name] of [["tones", "tones"], ["clicks", "click"], ["parts", "parts"]]) {
        const value = field(name).checked ? 1 : 0;
        out[node].gain.setTargetAtTime(value, context.currentTime, 0.01);
      }
    }
  };

  const voice = (frequency, when, end, target) => {
    const source = context.createOscillator();
    const level = gain(0);
    source.frequency.value = frequency;
    source.connect(level);
    level.connect(target);
    source.start(when);
    source.stop(end);
    sounding.add(source);
    source.onended = () => {
      sounding.delete(source);
      level.disconnect();
    };
    level.gain.setValueAtTime(0, when);
    return {source, level: level.gain};
  };

  const bow = (midi, when, length, loud) => {
    const end = when + length + 0.015;
    const {source, level} = voice(440 * 2 ** ((midi - 69) / 12), when, end + 0.02, out.tones);
    source.setPeriodicWave(out.wave);
    level.linearRampToValueAtTime(loud, when + Math.min(0.035, length / 3));
    level.linearRampToValueAtTime(0.8 * loud, Math.max(when + length / 2, end - 0.06));
    level.linearRampToValueAtTime(0, end);
  };

  const pluck = (midi, when, length, loud) => {
    const end = when + Math.min(1.2, Math.max(0.35, length));
    const {source, level} = voice(440 * 2 ** ((midi - 69) / 12), when, end + 0.02, out.tones);
    source.setPeriodicWave(out.wave);
    level.linearRampToValueAtTime(1.2 * loud, when + 0.006);
    level.exponentialRampToValueAtTime(0.02 * loud, end - 0.03);
    level.linearRampToValueAtTime(0, end);
  };

  const tick = (kind, when) => {
    const part = kind === "part";
    const pitch = kind === "first" ? 1760 : 1175;
    const {level} = voice(pitch, when, when + 0.07, part ? out.parts : out.clicks);
    level.linearRampToValueAtTime(part ? 0.1 : 0.25, when + 0.003);
    level.linearRampToValueAtTime(0, when + 0.05);
  };

  const sound = (event, when, rate) => {
    if (event.click) {
      tick(event.click.kind, when);
      return;
    }
    for (const [midi, length] of event.notes) {
      (event.plucked ? pluck : bow)(midi, when, length / rate, LOUD / event.notes.length);
    }
  };

  // The clock

  const rate = () => Number(field("tempo").value) / table.goal;
  const place = (now, time) => now.at + (time - now.time) * now.rate;
  const start = (time, at, music) => turns.push({time, at, rate: rate(), music});

  const schedule = () => {
    const until = context.currentTime + AHEAD;
    while (ending === Infinity) {
      const now = turns[turns.length - 1];
      const music = now.music;
      while (next < music.events.length) {
        const event = music.events[next];
        const when = now.time + (event.at - now.at) / now.rate;
        if (when >= until) {
          return;
        }
        if (when < context.currentTime - EVERY) {
          // The browser slept: go on from here instead of playing all of it at once.
          start(context.currentTime + EVERY, event.at, music);
          break;
        }
        sound(event, Math.max(when, context.currentTime), now.rate);
        next++;
      }
      const end = now.time + (music.length - now.at) / now.rate;
      if (next === music.events.length) {
        if (end >= until) {
          return;
        }
        if (field("loop").checked) {
          const {first, last} = chosenBars();
          start(end, 0, turn(first, last, false));
          next = 0;
        } else {
          ending = end;
        }
      }
    }
  };

  const heard = () => context.currentTime - (context.outputLatency || context.baseLatency || 0);

  const draw = () => {
    if (!playing) {
      return;
    }
    const time = heard();
    while (turns.length > 1 && turns[1].time <= time) {
      turns.shift();
    }
    const now = turns[0];
    const at = place(now, time);
    const music = now.music;
    let low = 0;
    let high = music.marks.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (music.marks[middle].at <= at) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    const mark = music.marks[low - 1];
    show(mark && at < mark.until && time >= now.time ? mark.moment : -1);
    if (time > ending) {
      pause();
      resume = 0;
    } else {
      requestAnimationFrame(draw);
    }
  };

  const show = (moment) => {
    if (moment === shown && (moment < 0 || (marked.length > 0 && marked[0].isConnected))) {
      return;
    }
    marked.forEach((frame) => frame.classList.remove("now"));
    marked =
      moment < 0 ? [] : [...document.querySelectorAll(`rect.moment[data-moment="${moment}"]`)];
    marked.forEach((frame) => frame.classList.add("now"));
    shown = moment;
    const seen = marked.find((frame) => frame.getClientRects().length > 0);
    const line = seen && seen.closest("svg");
    if (line && line !== system) {
      system = line;
      const box = line.getBoundingClientRect();
      if (box.top < 0 || box.bottom > innerHeight - player.offsetHeight) {
        const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
        line.scrollIntoView({block: "start", behavior: still ? "auto" : "smooth"});
      }
    }
  };

  // The buttons

  const play = async () => {
    if (playing || !(table || (await load()))) {
      return;
    }
    context = context || new AudioContext();
    context.resume();
    wire();
    const {first, last} = chosenBars();
    const from = resume > first && resume <= last ? resume : first;
    turns = [];
    next = 0;
    ending = Infinity;
    system = null;
    start(context.currentTime + 0.1, 0, turn(from, last, field("count-in").checked));
    playing = setInterval(schedule, EVERY * 1000);
    button.textContent = player.dataset.pause;
    schedule();
    requestAnimationFrame(draw);
  };

  const pause = () => {
    if (!playing) {
      return;
    }
    clearInterval(playing);
    playing = 0;
    const {music} = turns[0];
    const time = table.measures[music.first].start / 1e6 + place(turns[0], heard()) - music.lead;
    const bars = table.measures.slice(0, music.last + 1);
    resume = Math.max(music.first, bars.filter((bar) => bar.start / 1e6 <= time).length - 1);
    const old = out.all;
    old.gain.setTargetAtTime(0, context.currentTime, 0.01);
    sounding.forEach((source) => source.stop(context.currentTime + 0.1));
    setTimeout(() => old.disconnect(), 200);
    show(-1);
    button.textContent = player.dataset.play;
  };

  const toggle = () => (playing ? pause() : play());

  const again = () => {
    resume = 0;
    if (playing) {
      pause();
      resume = 0;
      play();
    }
  };

  const tempo = () => {
    field("mark").textContent = `${table.unit} = ${field("tempo").value}`;
    if (playing) {
      schedule();
      const time = context.currentTime + AHEAD;
      const now = turns[turns.length - 1];
      if (ending === Infinity && time > now.time) {
        start(time, place(now, time), now.music);
      } else if (ending === Infinity) {
        now.rate = rate();
      }
    }
  };

  // The choice of measures

  const select = (from, to) => {
    chosen = from < 0 ? null : {from: Math.min(from, to), to: Math.max(from, to)};
    const number = (index) => {
      const bar = table && table.measures.find((one) => one.measure === index);
      return bar ? bar.number : "";
    };
    field("from").value = chosen ? number(chosen.from) : "";
    field("to").value = chosen ? number(chosen.to) : "";
    field("trouble").textContent = "";
    if ("tap" in player.dataset) {
      document.querySelectorAll(".target").forEach((frame) => {
        const measure = Number(frame.id.replace(/\D/g, ""));
        const inside = chosen && measure >= chosen.from && measure <= chosen.to;
        frame.classList.toggle("chosen", Boolean(inside));
      });
    }
    again();
  };

  const typed = () => {
    const numbers = ["from", "to"].map((name) => field(name).value.trim());
    const from = numbers[0] || numbers[1];
    const to = numbers[1] || numbers[0];
    const bars = table.measures.slice().sort((one, other) => one.measure - other.measure);
    const first = bars.find((bar) => bar.number === from);
    const last = bars.reverse().find((bar) => bar.number === to);
    if (from === "") {
      select(-1, -1);
    } else if (first && last) {
      select(first.measure, last.measure);
    } else {
      field("trouble").textContent = player.dataset.unknown.replace("#", first ? to : from);
    }
  };

  const tapped = (event) => {
    const frame = document
      .elementsFromPoint(event.clientX, event.clientY)
      .find((element) => element.classList.contains("target"));
    if (!frame) {
      return;
    }
    const measure = Number(frame.id.replace(/\D/g, ""));
    const one = chosen && chosen.from === chosen.to;
    if (one && chosen.from === measure) {
      select(-1, -1);
    } else {
      select(one ? chosen.from : measure, measure);
    }
  };

  // The table

  const take = (text) => {
    const known = table;
    table = JSON.parse(text);
    const range = field("tempo");
    range.min = table.slowest;
    range.max = table.goal;
    range.value = known ? Math.min(range.value, table.goal) : table[player.dataset.begin];
    tempo();
    player.hidden = false;
  };

  const load = async () => {
    const inline = document.getElementById("sound");
    if (inline) {
      take(inline.textContent);
      return true;
    }
    try {
      const known = table ? table.key : "";
      const answer = await fetch(`${player.dataset.sound}?known=${known}`);
      if (answer.status === 200) {
        const text = await answer.text();
        pause();
        take(text);
        select(-1, -1);
      }
    } catch (gone) {
      field("trouble").textContent = body.dataset.gone;
    }
    return Boolean(table);
  };

  let waiting = 0;
  body.addEventListener("htmx:afterSettle", () => {
    clearTimeout(waiting);
    waiting = setTimeout(load, 100);
  });
  button.addEventListener("click", toggle);
  document.addEventListener("keydown", (event) => {
    const typing = event.target.closest("input, select, textarea, button, a");
    if (event.code === "Space" && event.target.closest(".music") && !typing) {
      event.preventDefault();
      toggle();
    }
  });
  ["tones", "click", "parts"].forEach((name) => field(name).addEventListener("change", mix));
  ["from", "to"].forEach((name) => field(name).addEventListener("change", typed));
  field("tempo").addEventListener("input", tempo);
  if ("tap" in player.dataset) {
    document.querySelectorAll(".music").forEach((one) => one.addEventListener("click", tapped));
  }
  new MutationObserver(() => {
    if (table) {
      const {from = "-1", to = from} = body.dataset;
      select(Number(from), Number(to));
    }
  }).observe(body, {attributeFilter: ["data-from", "data-to"]});
  window.fingeringPlayer = {select, play, pause, playing: () => playing > 0};
  if (document.getElementById("sound")) {
    load();
  }
})();
