// Says what a reader would stumble over: wider than the page, text outside its drawing, text on text.
addEventListener('load', () => {
  const said = [];
  const main = document.querySelector('main').getBoundingClientRect();
  const name = (e) => e.tagName.toLowerCase() + ' "' + e.textContent.trim().slice(0, 40) + '"';
  for (const e of document.querySelectorAll('main *')) {
    const r = e.getBoundingClientRect();
    if (r.width > 0 && (r.right > main.right + 1 || r.left < main.left - 1)) {
      said.push('wider than the page: ' + name(e));
    }
  }
  for (const svg of document.querySelectorAll('svg')) {
    const box = svg.getBoundingClientRect();
    const texts = [...svg.querySelectorAll('text')].filter((t) => t.textContent.trim());
    const places = texts.map((t) => t.getBoundingClientRect());
    places.forEach((r, i) => {
      if (r.left < box.left - 1 || r.right > box.right + 1 || r.top < box.top - 1 || r.bottom > box.bottom + 1) {
        said.push('outside its drawing: ' + name(texts[i]));
      }
      for (let k = i + 1; k < places.length; k++) {
        const o = places[k];
        const w = Math.min(r.right, o.right) - Math.max(r.left, o.left);
        const h = Math.min(r.bottom, o.bottom) - Math.max(r.top, o.top);
        // line boxes are taller than the glyphs: only a real overlap counts
        if (w > 0 && h > 0 && w * h > 0.2 * Math.min(r.width * r.height, o.width * o.height)) {
          said.push('text on text: ' + name(texts[i]) + ' and ' + name(texts[k]));
        }
      }
    });
  }
  const pre = document.createElement('pre');
  pre.id = 'probe';
  pre.textContent = said.length === 0 ? 'sound' : said.join('\n');
  document.body.replaceChildren(pre);
});
