
(function () {
  "use strict";

  var whole = document.querySelector(".game");
  if (!whole) { return; }
  var game = JSON.parse(whole.getAttribute("data-game"));
  var box = document.querySelector(".steps");
  var moments = Array.prototype.slice.call(box.querySelectorAll(".moment"));
  var open = -1;
  var talk = true;

  function make(name, kind, text) {
    var element = document.createElement(name);
    if (kind) { element.className = kind; }
    if (text) { element.textContent = text; }
    return element;
  }

  function list(text) { return text ? text.split(" ") : []; }

  function upper(text) { return text.charAt(0).toUpperCase() + text.slice(1); }

  function tile(symbol, kind) { return make("span", "tile" + (kind ? " " + kind : ""), symbol); }

  function picture(kind, label, tiles) {
    var row = make("div", kind);
    row.setAttribute("role", "img");
    row.setAttribute("aria-label", label);
    tiles.forEach(function (one) { row.appendChild(one); });
    return row;
  }

  function rack(seat, seen) {
    var tiles = list(seat.rack);
    if (!seen) {
      return picture("rack", tiles.length + " tiles, closed",
        tiles.map(function () { return tile("\u00a0", "closed"); }));
    }
    var fresh = list(seat["new"]);
    return picture("rack", "Rack: " + seat.rack, tiles.map(function (symbol) {
      var at = fresh.indexOf(symbol);
      if (at >= 0) { fresh.splice(at, 1); }
      return tile(symbol, at >= 0 ? "fresh" : "");
    }));
  }

  function exposures(seat) {
    var row = make("div", "exposures");
    seat.open.forEach(function (group) {
      row.appendChild(picture("group", "Exposed: " + group,
        list(group).map(function (symbol) { return tile(symbol); })));
    });
    return row;
  }

  function said(place, seat) {
    if (seat.did) { place.appendChild(make("p", "did", upper(seat.did))); }
    if (!talk) { return; }
    place.appendChild(make("p", "aim", upper(seat.aim)));
    seat.why.forEach(function (reason) { place.appendChild(make("p", "why", "Why: " + reason)); });
  }

  function player(moment, number) {
    var seat = moment.seats[number];
    var seen = open < 0 || open === number || moment.shown === number;
    var place = make("section", "seat" + (moment.turn === number ? " on-turn" : ""));
    var name = upper(game.names[number]) + (game.studied === number ? " (studied)" : "");
    place.setAttribute("aria-label", name);
    var head = make("p", "name", name);
    head.appendChild(make("span", "who", " " + game.players[number]));
    if (moment.turn === number) { head.appendChild(make("span", "turn", " \u25c0 on turn")); }
    place.appendChild(head);
    if (seat.open.length) { place.appendChild(exposures(seat)); }
    place.appendChild(rack(seat, seen));
    if (seen) { said(place, seat); }
    return place;
  }

  function discards(moment, step) {
    var place = make("section", "discards");
    place.setAttribute("aria-label", "Discards");
    place.appendChild(make("p", "name", "Discards, in order \u00b7 " + moment.left +
      (moment.left === 1 ? " tile" : " tiles") + " left in the wall"));
    var row = make("ol");
    game.thrown.slice(0, moment.thrown).forEach(function (entry, at) {
      var called = entry[2] >= 0 && entry[2] <= step;
      var last = at === moment.thrown - 1;
      var one = make("li", (called ? "called" : "") + (last ? " last" : ""));
      one.appendChild(tile(entry[0], last && !called ? "fresh" : ""));
      one.appendChild(make("span", "by", short(entry[1])));
      if (called) { one.appendChild(make("span", "by", "called")); }
      row.appendChild(one);
    });
    place.appendChild(row);
    return place;
  }

  function short(seat) { return game.names[seat].split(" ")[0]; }

  function draw(place, step) {
    var moment = JSON.parse(place.getAttribute("data-moment"));
    place.textContent = "";
    for (var number = 0; number < 4; number++) { place.appendChild(player(moment, number)); }
    place.appendChild(discards(moment, step));
  }

  function refresh() {
    moments.forEach(function (place, step) {
      if (!place.closest(".steps > ol > li").hidden) { draw(place, step); }
    });
  }

  function choice() {
    var label = make("label", "", "Open racks ");
    var select = make("select");
    ["all four"].concat(game.names).forEach(function (name, at) {
      var one = make("option", "", at === 0 ? name : "only " + name);
      select.appendChild(one);
    });
    select.addEventListener("change", function () {
      open = select.selectedIndex - 1;
      refresh();
    });
    label.appendChild(select);
    return label;
  }

  function talking() {
    var label = make("label", "check");
    var check = make("input");
    check.type = "checkbox";
    check.checked = true;
    check.addEventListener("change", function () {
      talk = check.checked;
      refresh();
    });
    label.appendChild(check);
    label.appendChild(document.createTextNode(" show aims and reasons"));
    return label;
  }

  var tools = make("div", "tools");
  tools.appendChild(choice());
  tools.appendChild(talking());
  box.insertBefore(tools, box.querySelector("ol"));

  /* On paper stands what the reader has opened: a position can be handed out without its end. */
  document.body.classList.add("stepping");
  Array.prototype.slice.call(document.querySelectorAll("details > summary")).forEach(function (summary) {
    summary.addEventListener("click", function () {
      summary.parentElement.classList.toggle("opened", !summary.parentElement.open);
    });
  });

  var watcher = new MutationObserver(refresh);
  Array.prototype.slice.call(box.querySelector("ol").children).forEach(function (step) {
    watcher.observe(step, { attributes: true, attributeFilter: ["hidden"] });
  });
  refresh();
}());
