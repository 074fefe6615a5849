"use strict";
// Puts in place what the server has made. What stands on the page is kept here: the answers that
// differ from the folder, what is ticked and tried. All of it but names and addresses stands in the
// part of the address after #, which no browser sends.
(() => {
  const token = document.querySelector("meta[name=page-token]").content;
  const PERSONAL = new Set();
  const state = { view: "visit", home: null, language: "", units: "", fields: {}, extras: {}, tries: {} };
  let version = "";
  let touched = new Set();
  let saved = true;

  const byId = (id) => document.getElementById(id);
  const form = () => byId("form");

  // ---- what is asked ----

  function values(more) {
    const all = new URLSearchParams();
    for (const name of ["view", "home", "language", "units"]) all.set(name, state[name] ?? "");
    for (const [name, value] of Object.entries(state.fields)) all.set("field." + name, value);
    for (const name of Object.keys(state.extras)) all.set("extra." + name, "yes");
    for (const [name, value] of Object.entries(state.tries)) all.set(name, value);
    for (const [name, value] of Object.entries(more ?? {})) all.set(name, value);
    return all;
  }

  async function ask(path, more) {
    const options = { method: "POST", headers: { "X-Page-Token": token }, body: values(more) };
    try {
      return await fetch(path, options);
    } catch (ended) {
      tell(byId("page").dataset.lost);
      throw ended;
    }
  }

  // ---- the address ----

  function fragment() {
    const all = values();
    for (const name of PERSONAL) all.delete("field." + name);
    for (const [name, value] of [...all]) if (value === "" && !name.startsWith("field.")) all.delete(name);
    return "#" + all;
  }

  function read(hash) {
    const all = new URLSearchParams(hash.slice(1));
    const home = all.get("home") ?? "";
    const kept = home === state.home
      ? Object.entries(state.fields).filter(([name]) => PERSONAL.has(name)) : [];
    Object.assign(state, {
      view: all.get("view") ?? "visit", home, language: all.get("language") ?? "",
      units: all.get("units") ?? "", fields: Object.fromEntries(kept), extras: {}, tries: {},
    });
    for (const [name, value] of all) {
      if (name.startsWith("field.")) state.fields[name.slice(6)] = value;
      if (name.startsWith("extra.")) state.extras[name.slice(6)] = true;
      if (name.startsWith("try.")) state.tries[name] = value;
    }
  }

  function keep() {
    history.replaceState(null, "", fragment());
    const link = byId("link");
    if (link) link.value = location.href;
  }

  // ---- whole views ----

  async function show(step) {
    document.body.dataset.settled = "no";
    const response = await ask("/show");
    if (!response.ok) return tell(await response.text());
    const shown = await response.json();
    const page = new DOMParser().parseFromString(shown.body, "text/html").body.firstChild;
    byId("page").replaceWith(page);
    document.title = shown.title;
    document.documentElement.lang = shown.language;
    if (step) history.pushState(null, "", fragment());
    begin(shown.wrong);
    tell(shown.said);
    if (state.view === "compare") answer();
    else document.body.dataset.settled = "yes";
    return undefined;
  }

  function begin(wrong) {
    version = byId("page").dataset.version;
    for (const field of document.querySelectorAll("[data-personal=yes]")) PERSONAL.add(field.name);
    keep();
    mark(wrong ?? {});
  }

  async function go(change) {
    Object.assign(state, change);
    await show(true);
    byId("main").focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }

  // ---- answers ----

  let asking = false;
  let again = false;

  /**
   * Asks at once; while an answer is on its way, only the newest question waits. The simulated year
   * takes longer, so it is asked for once no other question waits.
   */
  async function answer() {
    keep();
    again = true;
    if (asking) return;
    asking = true;
    document.body.dataset.settled = "no";
    try {
      while (again) {
        again = false;
        await asked({});
        if (!again && state.view === "compare") await asked({ also: "year" });
      }
    } finally {
      asking = false;
      document.body.dataset.settled = "yes";
    }
  }

  async function asked(more) {
    const response = await ask("/answer", more);
    if (!response.ok) tell(await response.text());
    else if (!again) place(await response.json());
  }

  function place(answered) {
    for (const [name, html] of Object.entries(answered.parts)) {
      const part = byId("part-" + name);
      if (part) put(part, html);
    }
    for (const [name, text] of Object.entries(answered.shown)) {
      const output = byId(name + "-shown") ?? byId(name);
      if (output) output.textContent = text;
      if (byId(name)?.type === "range") byId(name).setAttribute("aria-valuetext", text);
    }
    mark(answered.wrong);
    tell(answered.said);
  }

  /** Opened details stay open; the rest is as the server made it. */
  function put(part, html) {
    const open = [...part.querySelectorAll("details")].map((each) => each.open);
    part.innerHTML = html;
    [...part.querySelectorAll("details")].forEach((each, i) => { each.open = open[i] ?? false; });
  }

  /** What is wrong stands beside its field, once something was typed there or the home is known. */
  function mark(wrong) {
    for (const field of document.querySelectorAll("#form [data-stored]")) {
      const said = byId(field.id + "-wrong");
      const due = state.home !== "" || touched.has(field.name) || field.value !== "";
      const text = due ? wrong[field.name] ?? "" : "";
      if (said.textContent !== text) said.textContent = text;
      if (text) field.setAttribute("aria-invalid", "true");
      else field.removeAttribute("aria-invalid");
      if (text) field.closest("details")?.setAttribute("open", "");
    }
  }

  function tell(said) {
    const place = byId("said");
    if (place.textContent !== said) place.textContent = said ?? "";
  }

  function changed(field) {
    saved = false;
    touched.add(field.name);
    if (field.value.trim() === field.dataset.stored) delete state.fields[field.name];
    else state.fields[field.name] = field.value;
    whole(field.name);
    const box = byId(field.id + "-untested");
    if (box) box.checked = field.value.trim() === "";
    if (byId("saved").textContent !== "") byId("saved").textContent = "";
    answer();
  }

  /** Fixtures are one cell: all are sent where one differs. */
  function whole(name) {
    if (!name.startsWith("fixtures_")) return;
    const all = [...document.querySelectorAll("[name^=fixtures_]")];
    const differs = all.some((each) => each.value.trim() !== each.dataset.stored);
    for (const each of all) {
      if (differs) state.fields[each.name] = each.value;
      else delete state.fields[each.name];
    }
  }

  // ---- saving and taking away ----

  async function save() {
    for (const field of document.querySelectorAll("#form [data-stored]")) touched.add(field.name);
    const response = await ask("/save", { version });
    const told = await response.json();
    version = told.version;
    if (response.ok) {
      saved = true;
      touched = new Set();
      Object.assign(state, { home: told.home, fields: {} });
      await show(false);
    } else {
      mark(told.wrong);
    }
    byId("saved").textContent = told.said;
    byId("saved").className = response.ok ? "done" : "wrong";
    if (response.status === 422) document.querySelector("[aria-invalid]")?.focus();
  }

  async function take(button) {
    button.disabled = true;
    try {
      const response = await ask("/document/" + button.dataset.document, { unit: byId("unit")?.value ?? "" });
      if (!response.ok) {
        tell((await response.json()).said);
        return;
      }
      const name = /filename\*=UTF-8''(.*)$/.exec(response.headers.get("Content-Disposition"));
      const link = document.createElement("a");
      link.href = URL.createObjectURL(await response.blob());
      link.download = decodeURIComponent(name[1]);
      link.click();
      setTimeout(() => URL.revokeObjectURL(link.href), 10000);
    } finally {
      button.disabled = false;
    }
  }

  async function copy() {
    const link = byId("link");
    link.select();
    try {
      await navigator.clipboard.writeText(link.value);
      tell(byId("copy").dataset.copied);
    } catch (refused) {
      link.focus();
    }
  }

  // ---- what people do ----

  document.addEventListener("input", (event) => {
    const at = event.target;
    if (at.type === "range") {
      if (at.value === at.dataset.told) delete state.tries[at.name];
      else state.tries[at.name] = at.value;
      answer();
    } else if (at.name?.startsWith("extra.")) {
      const id = at.name.slice(6);
      if (at.checked) state.extras[id] = true;
      else delete state.extras[id];
      answer();
    } else if (at.dataset.untested) {
      const field = byId(at.dataset.untested);
      if (at.checked) field.value = "";
      else field.focus();
      if (at.checked) changed(field);
    } else if (at.dataset.stored !== undefined) {
      changed(at);
    }
  });

  document.addEventListener("change", (event) => {
    const at = event.target;
    if (at.id === "home") go({ home: at.value, fields: {}, tries: {}, extras: {} });
    if (at.id === "language") go({ language: at.value });
    if (at.id === "units") go({ units: at.value });
  });

  document.addEventListener("click", (event) => {
    const at = event.target.closest("[data-view], [data-document], [data-goto], #reset, #copy, #skip");
    if (!at) return;
    if (at.id === "skip") {
      event.preventDefault();
      byId("main").focus();
    } else if (at.dataset.goto) {
      byId(at.dataset.goto).focus();
    } else if (at.dataset.view) {
      event.preventDefault();
      go({ view: at.dataset.view });
    } else if (at.dataset.document) {
      take(at);
    } else if (at.id === "reset") {
      go({ tries: {} });
    } else {
      copy();
    }
  });

  document.addEventListener("submit", (event) => {
    event.preventDefault();
    save();
  });

  window.addEventListener("popstate", () => {
    read(location.hash);
    show(false);
  });

  window.addEventListener("beforeunload", (event) => {
    if (!saved && Object.keys(state.fields).some((name) => PERSONAL.has(name))) event.preventDefault();
  });

  state.home = byId("home").value;
  if (location.hash.length > 1) {
    read(location.hash);
    show(false);
  } else {
    begin({});
  }
})();
