// Measures where the letters of the page lie; returns what is wrong, a line each.
(() => {
  const faults = [];
  const width = document.documentElement.clientWidth;
  const seen = (box) => box.width > 0.5 && box.height > 0.5;
  const texts = [];
  const add = (box, words, where, trim) => {
    if (!seen(box)) return;
    // The box of a line is higher than its letters: rows may lie closer than that.
    const cut = box.height * trim;
    texts.push({l: box.left, r: box.right, t: box.top + cut, b: box.bottom - cut, words, where});
  };
  for (const text of document.querySelectorAll('svg text')) {
    if (text.closest('defs') || text.closest('details:not([open])')) continue;
    const svg = text.closest('svg').getBoundingClientRect();
    const box = text.getBoundingClientRect();
    if (!seen(box)) continue;
    const words = text.textContent;
    add(box, words, text.closest('.music') ? 'music' : 'graph', 0.2);
    if (box.left < svg.left - 0.6 || box.right > svg.right + 0.6
        || box.top + box.height * 0.2 < svg.top - 0.6
        || box.bottom - box.height * 0.2 > svg.bottom + 0.6) {
      faults.push(`cut by its picture: '${words}' (${text.getAttribute('class')})`);
    }
  }
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode(); node; node = walk.nextNode()) {
    const parent = node.parentElement;
    if (!node.data.trim() || parent.closest('svg') || parent.closest('.skip')
        || parent.closest('.wide thead')
        || (parent.closest('details:not([open])') && !parent.closest('summary'))) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    for (const box of range.getClientRects()) add(box, node.data.trim().slice(0, 30), 'text', 0.2);
  }
  for (const one of texts) {
    if (one.l < -0.5 || one.r > width + 0.5) faults.push(`beyond the page: '${one.words}'`);
  }
  texts.sort((a, b) => a.t - b.t);
  for (let i = 0; i < texts.length; i++) {
    for (let j = i + 1; j < texts.length && texts[j].t < texts[i].b; j++) {
      const a = texts[i], b = texts[j];
      const over = Math.min(a.r, b.r) - Math.max(a.l, b.l);
      const high = Math.min(a.b, b.b) - Math.max(a.t, b.t);
      if (over > 0.6 && high > 0.6) {
        faults.push(`'${a.words}' over '${b.words}' (${a.where}, ${b.where})`);
      }
    }
  }
  // Words among the notes, against the shapes of notation.
  let lines = 0;
  for (const svg of document.querySelectorAll('.music svg')) {
    if (!seen(svg.getBoundingClientRect())) continue;
    lines++;
    const words = [...svg.querySelectorAll('text')].map(text => {
      const box = text.getBoundingClientRect();
      // Letters without a descender fill the middle half of their line.
      return {l: box.left + 1, r: box.right - 1, t: box.top + box.height * 0.28,
        b: box.bottom - box.height * 0.25, words: text.textContent};
    });
    for (const use of svg.querySelectorAll('use')) {
      const box = use.getBoundingClientRect();
      const hit = words.find(b => Math.min(box.right, b.r) - Math.max(box.left, b.l) > 1
          && Math.min(box.bottom, b.b) - Math.max(box.top, b.t) > 1);
      if (hit) faults.push(`'${hit.words}' over ${use.getAttribute('href')}`);
    }
  }
  if (document.documentElement.scrollWidth > width) {
    faults.push(`the page is ${document.documentElement.scrollWidth} wide in ${width}`);
  }
  if (!texts.length) faults.push('no text was measured');
  return JSON.stringify({width, lines, texts: texts.length, faults: faults.slice(0, 30)});
})()
