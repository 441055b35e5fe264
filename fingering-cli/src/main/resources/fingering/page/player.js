// Plays the music of a page from the table of note times: tones and clicks on the clock of the
// sound card, and a frame around the notes that sound. Other scripts choose measures by index,
// with the event 'measures' or fingeringPlayer.select(from, to).
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
  const SOUNDS = ["tones", "click", "parts"];
  // The strengths of the partials of a bowed string, roughly (common practice, no source).
  const PARTIALS = [0, 1, 0.55, 0.4, 0.28, 0.2, 0.14, 0.1, 0.07, 0.05, 0.03];

  const field = (name) => player.querySelector(`[data-player="${name}"]`);
  const body = document.body;
  const button = field("play");
  const tapping = "tap" in player.dataset;
  let table = null;
  let chosen = null;

  let context = null;
  let out = null;
  const sounding = new Set();
  // What was handed over: stretches of music, each with its start and speed; the next event; the
  // time of the end, once it is known; and the measure to go on with after a pause.
  let turns = [];
  let next = 0;
  let ending = Infinity;
  let resume = 0;
  let playing = 0;
  let marked = [];
  let shown = -1;
  let system = null;

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
    const within = (time) => time >= opening.start && time < end;
    const at = (start) => (lead + start - opening.start) / 1e6;
    const bars = table.measures
      .slice(first, last + 1)
      .map((bar, i) => ({at: at(bar.start), index: first + i}));
    const clicks = Object.entries(table.clicks).flatMap(([kind, starts]) =>
      starts.filter(within).map((time) => ({at: at(time), kind})),
    );
    for (let early = 0; early < lead; early += opening.beat) {
      clicks.push({at: early / 1e6, kind: early % opening.full === 0 ? "first" : "beat"});
    }
    const marks = table.moments
      .filter((row) => within(row[1]))
      .map(([moment, start, plucked, pitches, lengths]) => ({
        at: at(start),
        until: at(start + Math.max(...lengths)),
        moment,
        plucked,
        notes: pitches.map((midi, i) => ({
          pitch: 440 * 2 ** ((midi - 69) / 12),
          length: Math.min(lengths[i], end - start) / 1e6,
        })),
      }));
    const events = [...clicks, ...marks].sort((one, other) => one.at - other.at);
    return {events, marks, bars, length: at(end)};
  };

  // The sounds

  const gain = (value, target) => {
    const node = new GainNode(context, {gain: value});
    node.connect(target);
    return node;
  };

  const wire = () => {
    const all = gain(1, context.destination);
    const click = gain(0, all);
    const wave = new PeriodicWave(context, {imag: PARTIALS});
    out = {all, click, wave, tones: gain(0, all), parts: gain(0, click)};
    mix();
  };

  const mix = () => {
    for (const name of out ? SOUNDS : []) {
      out[name].gain.setTargetAtTime(field(name).checked ? 1 : 0, context.currentTime, 0.01);
    }
  };

  /** The level, silent at first, of a tone. */
  const voice = (options, when, end, target) => {
    const source = new OscillatorNode(context, options);
    const node = gain(0, target);
    source.connect(node);
    source.start(when);
    source.stop(end);
    sounding.add(source);
    source.onended = () => {
      sounding.delete(source);
      node.disconnect();
    };
    node.gain.setValueAtTime(0, when);
    return node.gain;
  };

  const tone = (pitch, plucked, when, length, loud) => {
    const end = when + (plucked ? Math.min(1.2, Math.max(0.35, length)) : length + 0.015);
    const level = voice({frequency: pitch, periodicWave: out.wave}, when, end + 0.02, out.tones);
    if (plucked) {
      level.linearRampToValueAtTime(1.2 * loud, when + 0.006);
      level.exponentialRampToValueAtTime(0.02 * loud, end - 0.03);
    } else {
      level.linearRampToValueAtTime(loud, when + Math.min(0.035, length / 3));
      level.linearRampToValueAtTime(0.8 * loud, Math.max(when + length / 2, end - 0.06));
    }
    level.linearRampToValueAtTime(0, end);
  };

  const click = (kind, when) => {
    const part = kind === "part";
    const options = {frequency: kind === "first" ? 1760 : 1175};
    const level = voice(options, when, when + 0.07, part ? out.parts : out.click);
    level.linearRampToValueAtTime(part ? 0.1 : 0.25, when + 0.003);
    level.linearRampToValueAtTime(0, when + 0.05);
  };

  const sound = (event, when, speed) => {
    if (event.kind) {
      click(event.kind, when);
    }
    for (const {pitch, length} of event.notes ?? []) {
      tone(pitch, event.plucked, when, length / speed, LOUD / event.notes.length);
    }
  };

  // The clock

  const place = (now, time) => now.at + (time - now.time) * now.rate;
  const start = (time, at, music) =>
    turns.push({time, at, music, rate: field("tempo").value / table.goal});

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
    const at = place(turns[0], time);
    const mark = turns[0].music.marks.findLast((one) => one.at <= at);
    show(mark && at < mark.until && time >= turns[0].time ? mark.moment : -1);
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
    marked = [...document.querySelectorAll(`rect.moment[data-moment="${moment}"]`)];
    marked.forEach((frame) => frame.classList.add("now"));
    shown = moment;
    const line = marked.find((frame) => frame.getClientRects().length > 0)?.closest("svg");
    if (line && line !== system) {
      system = line;
      const box = line.getBoundingClientRect();
      const below = (player.closest(".dock") ?? player).offsetHeight;
      if (box.top < 0 || box.bottom > innerHeight - below) {
        const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
        line.scrollIntoView({block: "start", behavior: still ? "auto" : "smooth"});
      }
    }
  };

  // The buttons

  const play = () => {
    if (playing || !table) {
      return;
    }
    context ??= new AudioContext();
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
    const at = place(turns[0], heard());
    const [opening, ...later] = turns[0].music.bars;
    resume = (later.findLast((bar) => bar.at <= at) || opening).index;
    const old = out.all;
    old.gain.setTargetAtTime(0, context.currentTime, 0.01);
    sounding.forEach((source) => source.stop(context.currentTime + 0.1));
    setTimeout(() => {
      old.disconnect();
      if (!playing) {
        context.suspend();
      }
    }, 200);
    show(-1);
    button.textContent = player.dataset.play;
  };

  const tempo = () => {
    field("mark").textContent = `${table.unit} = ${field("tempo").value}`;
    if (playing) {
      schedule();
      const time = context.currentTime + AHEAD;
      const now = turns[turns.length - 1];
      start(time, place(now, time), now.music);
    }
  };

  // The choice of measures

  const number = (index) => table.measures.find((bar) => bar.measure === index)?.number ?? "";
  const measure = (frame) => Number(frame.id.replace(/\D/g, ""));

  const select = (from, to) => {
    chosen = from < 0 ? null : {from: Math.min(from, to), to: Math.max(from, to)};
    field("from").value = chosen && table ? number(chosen.from) : "";
    field("to").value = chosen && table ? number(chosen.to) : "";
    field("trouble").textContent = "";
    if (tapping) {
      document.querySelectorAll("#music .target").forEach((frame) => {
        const inside = chosen && measure(frame) >= chosen.from && measure(frame) <= chosen.to;
        frame.classList.toggle("chosen", Boolean(inside));
      });
    }
    resume = 0;
    if (playing) {
      pause();
      resume = 0;
      play();
    }
  };

  const typed = () => {
    const [one, other] = ["from", "to"].map((name) => field(name).value.trim());
    const from = one || other;
    const to = other || one;
    const bars = [...table.measures].sort((first, second) => first.measure - second.measure);
    const first = bars.find((bar) => bar.number === from);
    const last = bars.findLast((bar) => bar.number === to);
    if (from && !(first && last)) {
      field("trouble").textContent = player.dataset.unknown.replace("#", first ? to : from);
    } else {
      select(first ? first.measure : -1, last ? last.measure : -1);
    }
  };

  /** A tap chooses a measure, another one the measures from there, and the same one all. */
  const tapped = (event) => {
    const frame = document
      .elementsFromPoint(event.clientX, event.clientY)
      .find((element) => element.classList.contains("target"));
    if (frame) {
      const one = chosen && chosen.from === chosen.to ? chosen.from : -1;
      const same = one === measure(frame);
      select(same ? -1 : one < 0 ? measure(frame) : one, measure(frame));
    }
  };

  // The table

  const take = (text) => {
    table = JSON.parse(text);
    const range = field("tempo");
    range.min = table.slowest + (table.goal % 1);
    range.max = table.goal;
    range.value = table[player.dataset.begin];
    tempo();
    player.hidden = false;
  };

  const load = async () => {
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
  };

  let waiting = 0;
  body.addEventListener("htmx:afterRequest", ({detail: {requestConfig}}) => {
    if (requestConfig.verb === "post" || requestConfig.path.endsWith("/plans")) {
      clearTimeout(waiting);
      waiting = setTimeout(load, 100);
    }
  });
  const toggle = () => (playing ? pause() : play());
  button.addEventListener("click", toggle);
  document.addEventListener("keydown", (event) => {
    const typing = event.target.closest("input, select, textarea, button, a");
    if (event.code === "Space" && event.target.closest("#music") && !typing) {
      event.preventDefault();
      toggle();
    }
  });
  SOUNDS.forEach((name) => field(name).addEventListener("change", mix));
  ["from", "to"].forEach((name) => field(name).addEventListener("change", typed));
  field("tempo").addEventListener("input", tempo);
  if (tapping) {
    document.querySelector("#music .played").addEventListener("click", tapped);
  }
  document.addEventListener("measures", ({detail}) =>
    detail ? select(detail.from, detail.to) : select(-1, -1),
  );
  window.fingeringPlayer = {select, play, pause, take, playing: () => playing > 0};
  const inline = document.getElementById("sound");
  if (inline) {
    take(inline.textContent);
  }
})();
