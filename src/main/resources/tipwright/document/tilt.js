// SPDX-License-Identifier: Apache-2.0
// Shows the row of the table that the slider points at. Every number was worked out by the program; nothing is worked out here.
'use strict';
(() => {
  const table = JSON.parse(document.getElementById('table').textContent);
  const all = (selector) => [...document.querySelectorAll(selector)];
  const main = document.querySelector('main');
  const picture = document.getElementById('machine');
  const slider = document.getElementById('tilt');
  const load = document.getElementById('load');
  const last = table.tilts.length - 1;
  const signed = (value) => (value > 0 ? 'push ' + value : value < 0 ? 'pull ' + -value : '' + value);
  const said = (value, unit, withWord) =>
    value === undefined || value === null ? 'none' : (withWord ? signed(value) : value) + ' ' + unit;

  function show() {
    const row = Number(slider.value);
    const chosen = table.cases[Number(load.value)];
    const units = main.dataset.units;
    for (const part of all('[data-frame]')) {
      const [x, y, turn] = table.frames[part.dataset.frame][row];
      part.setAttribute('transform', `translate(${x} ${y}) rotate(${turn})`);
    }
    for (const pin of all('[data-pin]')) {
      const [x, y] = table.pins[pin.dataset.pin][row];
      pin.setAttribute('transform', `translate(${x} ${-y})`);
    }
    const shapes = chosen.shapes[row] || [];
    for (const part of all('[data-slot]')) {
      part.setAttribute('d', table.shapes[shapes[part.dataset.slot]] || '');
    }
    for (const field of all('[data-force]')) {
      const list = (chosen[field.dataset.force] || table[field.dataset.force])[field.dataset.units];
      field.textContent = said(list[row], field.dataset.unit, field.dataset.signed);
    }
    for (const field of all('[data-length]')) {
      field.textContent = said(table[field.dataset.length][field.dataset.units][row], field.dataset.unit);
    }
    for (const field of all('[data-time]')) {
      field.textContent = said(chosen[field.dataset.time][row], 's');
    }
    document.getElementById('angle').textContent = table.tilts[row] + ' deg';
    document.getElementById('about').textContent = load.selectedOptions[0].dataset.about;
    document.getElementById('upset').hidden = row <= chosen.normal;
    const up = said(chosen.raise[units][row], units === 'us' ? 'lbf' : 'kN', true);
    slider.setAttribute('aria-valuetext', table.tilts[row] + ' deg, going up: ' + up);
  }

  function go(row) {
    slider.value = Math.max(0, Math.min(last, Math.round(row)));
    show();
  }

  // A finger on the picture: its whole width is the whole tilt. Up and down still scrolls the page.
  let from = null;
  picture.addEventListener('pointerdown', (event) => {
    from = { x: event.clientX, row: Number(slider.value) };
    picture.setPointerCapture(event.pointerId);
  });
  picture.addEventListener('pointermove', (event) => {
    if (from) {
      go(from.row + ((event.clientX - from.x) / picture.getBoundingClientRect().width) * last);
    }
  });
  for (const end of ['pointerup', 'pointercancel']) {
    picture.addEventListener(end, () => { from = null; });
  }
  slider.addEventListener('input', show);
  load.addEventListener('change', show);
  for (const button of all('[data-go]')) {
    button.addEventListener('click', () => {
      const to = { first: 0, last: last, hardest: table.cases[Number(load.value)].hardest };
      go(to[button.dataset.go]);
    });
  }
  for (const choice of all('[name=units]')) {
    choice.addEventListener('change', () => {
      main.dataset.units = choice.value;
      show();
    });
  }
  document.documentElement.classList.add('scripted');
  show();
})();
