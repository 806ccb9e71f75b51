"use strict";
// Inserts prepared text and coordinates; the only formula is that of the ranking. Without the script the page shows the best compromise.
(() => {
  const byId = id => document.getElementById(id);
  const data = JSON.parse(byId("designs").textContent);
  const texts = [...document.querySelectorAll("[data-t]")].map(element => [element, Number(element.dataset.t)]);
  const attributes = [...document.querySelectorAll("[data-a]")].flatMap(element => element.dataset.a.split(" ").map(mark => {
    const colon = mark.lastIndexOf(":");
    return [element, mark.slice(0, colon), Number(mark.slice(colon + 1))];
  }));
  const select = byId("design");
  const rows = [...byId("order").querySelectorAll("tbody tr")];
  const weights = data.objectives.map((_, o) => byId(`weight-${o}`));
  const fronts = [];
  let order = data.designs.map((_, i) => i);

  const value = (design, slot) => {
    const own = data.designs[design].values[slot];
    return own === null ? null : data.slots[slot][0] + own + data.slots[slot][1];
  };

  const show = design => {
    for (const [element, slot] of texts) element.textContent = value(design, slot);
    for (const [element, name, slot] of attributes) {
      const text = value(design, slot);
      if (text === null) element.removeAttribute(name);
      else element.setAttribute(name, text);
    }
    select.value = String(design);
    document.body.classList.toggle("other", design > 0);
    rows.forEach((row, r) => row.classList.toggle("shown", order[r] === design));
    byId("status").textContent = `Shown: ${data.designs[design].label}`;
  };

  // Distance to the ideal, or TOPSIS, computed as in the workbook and the run. Lower is better.
  const scores = w => {
    const total = w.reduce((sum, weight) => sum + weight, 0);
    return data.designs.map(design => {
      let toBest = 0, toWorst = 0;
      data.objectives.forEach((objective, o) => {
        const size = data.topsis ? objective.norm : objective.worst - objective.best;
        if (objective.best === objective.worst || size === 0) return;
        const best = w[o] / total * ((design.objectives[o] - objective.best) / size);
        const worst = w[o] / total * ((objective.worst - design.objectives[o]) / size);
        toBest += best * best;
        toWorst += worst * worst;
      });
      if (!data.topsis) return Math.sqrt(toBest);
      const both = Math.sqrt(toBest) + Math.sqrt(toWorst);
      return both > 0 ? -Math.sqrt(toWorst) / both : -1;
    });
  };

  const rank = () => {
    const w = weights.map(input => input.value.trim() === "" ? NaN : Number(input.value));
    if (!w.every(weight => weight >= 0 && Number.isFinite(weight)) || !w.some(weight => weight > 0)) {
      byId("ranked").textContent = "Every weight must be 0 or more, and at least one above 0: the order is unchanged.";
      return;
    }
    const score = scores(w);
    order = data.designs.map((_, i) => i).sort((a, b) => score[a] - score[b] || a - b);
    rows.forEach((row, r) => {
      const design = data.designs[order[r]];
      [...row.cells].forEach((cell, c) => { if (c > 0) cell.textContent = design.cells[c]; });
      const place = 1 + score.filter(other => other < score[order[r]]).length;
      const button = row.cells[0].firstElementChild;
      button.textContent = String(place);
      button.setAttribute("aria-label", `Show rank ${place}: ${design.label}`);
      row.classList.toggle("shown", String(order[r]) === select.value);
    });
    const isStudied = w.every((weight, o) => weight === data.objectives[o].weight);
    byId("order-words").hidden = !isStudied;
    byId("ranked").textContent = isStudied ? "" : `Weighted ${weights.map(input => `${input.labels[0].textContent} ${input.value}`).join(", ")}, the best ranked design is ${data.designs[order[0]].label} of the study.`;
  };

  data.designs.forEach((design, i) => {
    if (i > 0) select.append(new Option(design.label, String(i)));
  });
  select.addEventListener("change", () => show(Number(select.value)));
  byId("best").addEventListener("click", () => show(0));
  byId("show-first").addEventListener("click", () => show(order[0]));
  byId("as-studied").addEventListener("click", () => {
    weights.forEach((input, o) => { input.value = String(data.objectives[o].weight); });
    rank();
  });
  for (const input of weights) input.addEventListener("input", rank);
  rows.forEach((row, r) => {
    const button = document.createElement("button");
    button.type = "button";
    row.cells[0].replaceChildren(button);
    button.addEventListener("click", () => show(order[r]));
  });

  // The front: point at a design, or move with the arrow keys; click or Enter shows it.
  const point = (front, design) => {
    for (const other of fronts) {
      const at = other.dots[design];
      other.ring.setAttribute("transform", `translate(${at.x} ${at.y})`);
      other.ring.removeAttribute("display");
      other.readout.hidden = other !== front;
    }
    front.at = design;
    front.readout.textContent = `${data.designs[design].label}. ${headers.map((header, o) => `${header} ${data.designs[design].cells[data.designs[design].cells.length - headers.length + o]}`).join("; ")}`;
  };
  const headers = [...byId("order").querySelectorAll("thead th")].slice(-data.objectives.length).map(cell => cell.textContent);
  for (const figure of document.querySelectorAll("figure.front")) {
    const plot = figure.querySelector(".plot"), svg = plot.querySelector("svg");
    const ring = svg.querySelector(".now").cloneNode(false);
    ring.removeAttribute("data-a");
    ring.setAttribute("class", "pointed");
    ring.setAttribute("display", "none");
    svg.append(ring);
    const dots = [...svg.querySelectorAll(".points circle")].map(dot => ({ x: Number(dot.getAttribute("cx")), y: Number(dot.getAttribute("cy")) }));
    const front = { dots, ring, readout: figure.querySelector(".readout"), at: 0 };
    fronts.push(front);
    plot.tabIndex = 0;
    plot.setAttribute("role", "group");
    plot.setAttribute("aria-label", `${svg.querySelector("title").textContent}. Arrow keys move from design to design, Enter shows one.`);
    front.readout.setAttribute("role", "status");
    const nearest = event => {
      const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
      let found = -1, least = 16;
      dots.forEach((dot, i) => {
        const far = Math.hypot(dot.x - at.x, dot.y - at.y);
        if (far < least) [found, least] = [i, far];
      });
      return found;
    };
    plot.addEventListener("pointermove", event => {
      const design = nearest(event);
      if (design >= 0) point(front, design);
    });
    plot.addEventListener("click", event => {
      const design = nearest(event);
      if (design >= 0) { point(front, design); show(design); }
    });
    plot.addEventListener("focus", () => point(front, Number(select.value)));
    plot.addEventListener("keydown", event => {
      const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
      if (step) point(front, Math.min(dots.length - 1, Math.max(0, front.at + step)));
      else if (event.key === "Enter") show(front.at);
      else return;
      event.preventDefault();
    });
  }

  byId("chooser").hidden = false;
  byId("weights").hidden = false;
  rank();
  show(0);
})();
