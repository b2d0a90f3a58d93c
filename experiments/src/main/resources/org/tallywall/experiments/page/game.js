
/* Goes through a game: steps, seats, questions, the projector view, and the link to all of these. */
(function () {
  "use strict";

  var whole = document.querySelector(".game");
  if (!whole) { return; }
  var game = JSON.parse(whole.getAttribute("data-game"));
  var items = Array.prototype.slice.call(whole.querySelectorAll(".course > li"));
  var steps = items.map(function (item) { return JSON.parse(item.getAttribute("data-moment")); });
  var titles = items.map(function (item) { return item.textContent; });
  var kinds = items.map(function (item) { return item.className; });
  var LAST = steps.length - 1;

  var stage = document.createElement("div");
  stage.className = "stage";
  var table = gameTable(game, stage);
  var make = table.make;
  var talk = make("div", "talk");
  var controls = {};

  var state = {
    step: 0,
    own: Math.max(0, game.studied),
    racks: "all",
    quiz: false,
    says: true,
    big: false,
    asked: false
  };

  /* What is asked: the discards of the own seat. */
  function isQuestion(step) { return kinds[step] === "discard" && steps[step].turn === state.own; }

  function shown() { return state.asked ? state.step - 1 : state.step; }

  function sees(number) {
    return (!state.quiz && state.racks === "all") || number === state.own || steps[shown()].shown === number;
  }

  function aim(step, number) {
    for (var at = step; at >= 0; at--) {
      if (steps[at].seats[number].aim) { return steps[at].seats[number].aim; }
    }
    return "";
  }

  function words(step, number, thoughts) {
    var seat = steps[step].seats[number];
    var parts = seat.did ? [seat.did] : [];
    if (thoughts) {
      parts.push(aim(step, number));
      parts = parts.concat(seat.why || []);
    }
    return parts;
  }

  function answer() {
    var parts = [aim(state.step, state.own)].concat(steps[state.step].seats[state.own].why || []);
    return parts.map(table.upper).join(". ") + ".";
  }

  function drawTalk(revealed) {
    talk.textContent = "";
    for (var turn = 0; turn < 4; turn++) {
      var number = (state.own + turn) % 4;
      if (!sees(number)) { continue; }
      var parts = words(shown(), number, state.says && (!state.quiz || revealed));
      if (!parts.length) { continue; }
      var line = make("p", "", "");
      line.setAttribute("data-seat", number);
      line.appendChild(make("b", "", table.name(number)));
      line.appendChild(document.createTextNode(" " + parts.join("; ")));
      talk.appendChild(line);
    }
  }

  function refresh() {
    var question = state.quiz && isQuestion(state.step);
    var revealed = question && !state.asked;
    table.draw({
      moment: steps[shown()],
      step: shown(),
      title: state.asked ? "What would you throw?" : titles[state.step],
      answer: revealed ? answer() : "",
      button: state.asked ? controls.answer : null,
      own: state.own,
      sees: sees,
      big: state.big
    });
    drawTalk(revealed);
    items.forEach(function (item, at) {
      item.firstElementChild.setAttribute("aria-current", at === shown() ? "step" : "false");
      item.classList.toggle("later", at > shown());
    });
    controls.refresh();
  }

  function go(wanted) {
    var before = state.step;
    state.step = Math.max(0, Math.min(LAST, wanted));
    state.asked = state.quiz && state.step > before && isQuestion(state.step);
    changed();
  }

  function forward() {
    if (state.asked) {
      state.asked = false;
      changed();
    } else {
      go(state.step + 1);
    }
  }

  function nextCall() {
    var at = state.step + 1;
    while (at < LAST && kinds[at] !== "claim" && kinds[at] !== "mahjong") { at++; }
    go(at);
  }

  /* The link says where one is; what is as usual is left out of it. */
  function link() {
    return "#step=" + (state.step + 1) + "&seat=" + state.own +
      (state.racks === "own" ? "&racks=own" : "") + (state.quiz ? "&quiz=on" : "") +
      (state.big ? "&view=projector" : "");
  }

  function changed() {
    refresh();
    try { history.replaceState(null, "", link()); } catch (refused) { /* a viewer without history */ }
  }

  function number(text, least, most) {
    return /^\d{1,6}$/.test(text || "") && Number(text) >= least && Number(text) <= most ? Number(text) : null;
  }

  function follow() {
    var said = {};
    location.hash.slice(1).split("&").forEach(function (part) {
      var at = part.indexOf("=");
      if (at > 0) { said[part.slice(0, at)] = part.slice(at + 1); }
    });
    var step = number(said.step, 1, steps.length);
    if (step === null) { return; }
    var seat = number(said.seat, 0, 3);
    if (seat !== null) {
      state.own = seat;
      state.racks = said.racks === "own" ? "own" : "all";
      state.quiz = said.quiz === "on";
      show(said.view === "projector");
    }
    state.step = step - 1;
    state.asked = state.quiz && isQuestion(state.step);
    refresh();
  }

  /* The projector view fills the page, and the screen where the browser lets it. */
  function show(big) {
    state.big = big;
    document.body.classList.toggle("projector", big);
  }

  function project() {
    show(!state.big);
    changed();
    var screen = document.documentElement;
    if (state.big && screen.requestFullscreen) {
      screen.requestFullscreen().catch(function () { /* the page is full all the same */ });
    } else if (document.fullscreenElement) {
      document.exitFullscreen();
    }
  }

  document.addEventListener("fullscreenchange", function () {
    if (!document.fullscreenElement && state.big) {
      show(false);
      changed();
    }
  });

  function ask(on) {
    state.quiz = on;
    state.asked = on && isQuestion(state.step);
    changed();
  }

  function button(text, kind, action) {
    var made = make("button", kind, text);
    made.type = "button";
    made.addEventListener("click", action);
    return made;
  }

  function select(text, options, chosen) {
    var label = make("label", "", text + " ");
    var box = make("select");
    options.forEach(function (option) { box.appendChild(make("option", "", option)); });
    box.addEventListener("change", function () { chosen(box.selectedIndex); });
    label.appendChild(box);
    return label;
  }

  function check(text, chosen) {
    var label = make("label", "check");
    var box = make("input");
    box.type = "checkbox";
    box.addEventListener("change", function () { chosen(box.checked); });
    label.appendChild(box);
    label.appendChild(document.createTextNode(" " + text));
    return label;
  }

  function build() {
    var first = button("First", "rest", function () { go(0); });
    var back = button("Back", "", function () { go(state.step - 1); });
    var on = button("Forward", "", forward);
    var last = button("Last", "rest", function () { go(LAST); });
    var call = button("Next call", "", nextCall);
    var big = button("Projector", "", project);
    var count = make("span", "count");
    var steer = make("div", "tools steer");
    [first, back, on, last, call, big, count].forEach(function (one) { steer.appendChild(one); });
    var seat = select("Sit with", game.names, function (at) {
      state.own = at;
      state.asked = state.quiz && isQuestion(state.step);
      changed();
    });
    var racks = select("Racks", ["all four open", "mine only"], function (at) {
      state.racks = at ? "own" : "all";
      changed();
    });
    var quiz = check("What would you throw?", ask);
    var says = check("aims and reasons", function (now) {
      state.says = now;
      changed();
    });
    var choices = make("div", "tools choices");
    [seat, racks, quiz, says].forEach(function (one) { choices.appendChild(one); });
    controls.answer = button("Show the answer", "show", forward);
    controls.refresh = function () {
      count.textContent = (state.step + 1) + " of " + steps.length;
      first.setAttribute("aria-disabled", String(state.step === 0));
      back.setAttribute("aria-disabled", String(state.step === 0));
      on.setAttribute("aria-disabled", String(state.step === LAST && !state.asked));
      last.setAttribute("aria-disabled", String(state.step === LAST));
      call.setAttribute("aria-disabled", String(state.step === LAST));
      seat.lastElementChild.selectedIndex = state.own;
      racks.lastElementChild.selectedIndex = state.quiz || state.racks === "own" ? 1 : 0;
      racks.lastElementChild.disabled = state.quiz;
      quiz.firstElementChild.checked = state.quiz;
      says.firstElementChild.checked = state.says;
      big.textContent = state.big ? "Leave" : "Projector";
      document.body.classList.toggle("asking", state.quiz);
      document.body.classList.toggle("ended", state.step === LAST);
    };
    var keys = make("p", "keys", "Keys: right arrow or space goes on, left arrow back, Home and End to" +
      " the first and the last step, c to the next call, q asks what you would throw, p fills the" +
      " screen. A click on the table goes on, too.");
    var box = whole.querySelector(".course-box");
    [steer, choices, stage, talk, keys].forEach(function (one) { whole.insertBefore(one, box); });
  }

  var KEYS = {
    ArrowRight: forward,
    " ": forward,
    ArrowLeft: function () { go(state.step - 1); },
    Home: function () { go(0); },
    End: function () { go(LAST); },
    c: nextCall,
    q: function () { ask(!state.quiz); },
    p: project,
    Escape: function () { if (state.big) { project(); } }
  };

  document.addEventListener("keydown", function (event) {
    var name = event.target.tagName;
    var busy = name === "SELECT" || event.target.closest("pre");
    var itsOwn = event.key === " " && /^(BUTTON|A|SUMMARY|INPUT)$/.test(name);
    if (busy || itsOwn || event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) { return; }
    if (!Object.prototype.hasOwnProperty.call(KEYS, event.key)) { return; }
    event.preventDefault();
    KEYS[event.key]();
  });

  stage.addEventListener("click", function (event) {
    if (!event.target.closest("button, a")) { forward(); }
  });

  items.forEach(function (item, at) {
    item.firstElementChild.addEventListener("click", function (event) {
      event.preventDefault();
      go(at);
    });
  });

  window.addEventListener("hashchange", follow);
  window.addEventListener("resize", function () { if (state.big) { refresh(); } });

  document.body.classList.add("stepping");
  /* A long game is printed smaller, so that it fits on its sheet. */
  document.body.classList.toggle("long", game.thrown.length > 60);
  build();
  refresh();
  follow();
}());
