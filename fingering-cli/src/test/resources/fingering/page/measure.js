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
  const rows = new Map();
  for (const piece of document.querySelectorAll('.piece')) {
    const top = Math.round(piece.getBoundingClientRect().top);
    if (!rows.has(top)) rows.set(top, piece);
  }
  const begins = new Set(rows.values());
  // What stands at the beginning of a row is kept apart and only shown: set it in, to be measured.
  for (const head of document.querySelectorAll('use.head')) {
    const copy = document.querySelector(head.getAttribute('href')).cloneNode(true);
    copy.removeAttribute('id');
    copy.setAttribute('class', 'head');
    head.replaceWith(copy);
  }
  // Letters of one row are one text, each with its own place.
  const letters = (text) => {
    const xs = (text.getAttribute('x') || '').split(' ');
    if (xs.length < 2) return [{box: text.getBoundingClientRect(), words: text.textContent}];
    const matrix = text.getScreenCTM();
    return xs.map((x, i) => {
      const e = text.getExtentOfChar(i);
      const one = new DOMPoint(e.x, e.y).matrixTransform(matrix);
      const two = new DOMPoint(e.x + e.width, e.y + e.height).matrixTransform(matrix);
      return {box: new DOMRect(one.x, one.y, two.x - one.x, two.y - one.y),
        words: text.textContent[i]};
    });
  };
  for (const text of document.querySelectorAll('svg text')) {
    if (text.closest('defs') || text.closest('details:not([open])')) continue;
    const piece = text.closest('.piece');
    // Heads of pieces within a row lie under the piece before them.
    if (piece && text.closest('.head') && !begins.has(piece)) continue;
    const svg = text.closest('svg').getBoundingClientRect();
    const left = text.closest('.head') ? -Infinity : svg.left;
    for (const {box, words} of letters(text)) {
      add(box, words, piece ? piece.id || 'piece' : 'graph', 0.2);
      if (box.left < left - 0.6 || box.right > svg.right + 0.6
          || box.top + box.height * 0.2 < svg.top - 0.6
          || box.bottom - box.height * 0.2 > svg.bottom + 0.6) {
        faults.push(`cut by its picture: '${words}' (${text.getAttribute('class')})`);
      }
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
  // Letters among the notes, against slurs and beams: points along each line, none in a letter.
  let lines = 0;
  for (const piece of document.querySelectorAll('.piece')) {
    const among = [...piece.querySelectorAll('.tuplet, .tr, .octave')];
    if (!among.length) continue;
    const boxes = among.map(letter => {
      const box = letter.getBoundingClientRect();
      // Letters without a descender fill the middle half of their line.
      return {l: box.left + 1, r: box.right - 1, t: box.top + box.height * 0.28,
        b: box.bottom - box.height * 0.25, words: letter.textContent};
    });
    for (const path of piece.querySelectorAll('path.curve, path.beam, path.stem')) {
      if (path.closest('.head')) continue;
      const matrix = path.getScreenCTM(), length = path.getTotalLength();
      lines++;
      for (let at = 0; at <= length; at += 1.5) {
        const point = path.getPointAtLength(at).matrixTransform(matrix);
        const hit = boxes.find(b => point.x > b.l && point.x < b.r && point.y > b.t && point.y < b.b);
        if (hit) {
          faults.push(`'${hit.words}' under a line (${path.getAttribute('class')}, ${piece.id || 'piece'})`);
          break;
        }
      }
    }
    const shapes = [...piece.querySelectorAll('use')]
      .filter(use => !use.closest('.head') && !/g-(paper|staff)/.test(use.getAttribute('href')))
      .map(use => ({box: use.getBoundingClientRect(), name: use.getAttribute('href')}));
    for (const heads of piece.querySelectorAll('path.heads')) {
      const matrix = heads.getScreenCTM();
      for (const [, x, y] of heads.getAttribute('d').matchAll(/[ML](-?[\d.]+) ?(-?[\d.]+)/g)) {
        const point = new DOMPoint(+x, +y).matrixTransform(matrix);
        shapes.push({box: new DOMRect(point.x - 5, point.y - 4, 10, 8), name: 'a head'});
      }
    }
    for (const {box, name} of shapes) {
      const hit = boxes.find(b => Math.min(box.right, b.r) - Math.max(box.left, b.l) > 1
          && Math.min(box.bottom, b.b) - Math.max(box.top, b.t) > 1);
      if (hit) faults.push(`'${hit.words}' over ${name} (${piece.id || 'piece'})`);
    }
  }
  if (document.documentElement.scrollWidth > width) {
    faults.push(`the page is ${document.documentElement.scrollWidth} wide in ${width}`);
  }
  if (!texts.length) faults.push('no text was measured');
  return JSON.stringify({width, lines, texts: texts.length, rows: rows.size, faults: faults.slice(0, 30)});
})()
