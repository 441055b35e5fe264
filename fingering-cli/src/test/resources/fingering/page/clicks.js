// Clicks 200 notes of the page, one after another, and each time another way to play the note. Returns the times from a
// click to the next picture on the screen, in milliseconds.
(async () => {
  const CLICKS = 200;
  const PATIENCE = 15000;
  const sleep = (time) => new Promise((resolve) => setTimeout(resolve, time));
  // A task that is set in a frame runs when the frame is drawn.
  const drawn = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
  const until = (done) => new Promise((resolve, reject) => {
    const start = performance.now();
    const look = () => {
      if (done()) {
        resolve();
      } else if (performance.now() - start > PATIENCE) {
        reject(new Error("no answer"));
      } else {
        setTimeout(look, 1);
      }
    };
    look();
  });
  const revision = () => document.getElementById("revision").value;
  const clickNote = (frame) => {
    const box = frame.getBoundingClientRect();
    const at = {bubbles: true, clientX: box.x + box.width / 2, clientY: box.y + box.height / 2, button: 0};
    frame.closest("svg").dispatchEvent(new PointerEvent("pointerdown", at));
    frame.closest("svg").dispatchEvent(new MouseEvent("click", at));
  };
  // The lines below the screen come later.
  await until(() => !document.querySelector(".system:empty"));
  const notes = document.querySelectorAll("rect.moment").length;
  const times = {note: [], way: [], plan: []};
  let seed = 7;
  for (let i = 0; i < CLICKS; i++) {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    const frame = document.querySelector(`rect.moment[data-moment="${seed % notes}"]`);
    frame.closest(".system").scrollIntoView({block: "center"});
    await drawn();
    document.getElementById("note").replaceChildren();
    let start = performance.now();
    clickNote(frame);
    await until(() => document.querySelector("#note h2"));
    await drawn();
    times.note.push(performance.now() - start);
    const way = document.querySelector("#note .ways button[aria-pressed=false]:not(:disabled)");
    if (way) {
      const before = revision();
      start = performance.now();
      way.click();
      await until(() => revision() !== before || document.querySelector("#trouble p"));
      await drawn();
      times.way.push(performance.now() - start);
      await sleep(300);
    }
    if (i % 2 === 0) {
      // Another plan changes almost every line on the screen.
      const other = document.querySelector(".switch input:not(:checked)");
      const before = revision();
      start = performance.now();
      other.click();
      await until(() => revision() !== before);
      await drawn();
      times.plan.push(performance.now() - start);
      await sleep(500);
    }
  }
  return JSON.stringify({notes, times});
})()
