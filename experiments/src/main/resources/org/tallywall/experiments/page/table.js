
/* Draws one moment of a game as one sits at the table: the own seat below, who plays next at the right. */
var gameTable = function (game, stage) {
  "use strict";

  var PLACES = ["own", "right", "across", "left"];
  var ARROWS = ["\u25bc", "\u25b6", "\u25b2", "\u25c0"];
  var SVG = "http://www.w3.org/2000/svg";

  function make(name, kind, text) {
    var element = document.createElement(name);
    if (kind) { element.className = kind; }
    if (text) { element.textContent = text; }
    return element;
  }

  function list(text) { return text ? text.split(" ") : []; }

  function upper(text) { return text.charAt(0).toUpperCase() + text.slice(1); }

  function tile(symbol, kind) {
    var drawing = document.createElementNS(SVG, "svg");
    drawing.setAttribute("class", "tile" + (kind ? " " + kind : ""));
    drawing.setAttribute("viewBox", "0 0 60 80");
    drawing.setAttribute("data-tile", symbol);
    drawing.setAttribute("aria-hidden", "true");
    var use = document.createElementNS(SVG, "use");
    use.setAttribute("href", "#tile-" + symbol);
    drawing.appendChild(use);
    return drawing;
  }

  function spoken(symbols) {
    return symbols.map(function (symbol) { return game.tiles[symbol]; }).join(", ");
  }

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
      return picture("rack closed", tiles.length + " tiles, closed",
        tiles.map(function () { return tile("back"); }));
    }
    var fresh = list(seat["new"]);
    return picture("rack", "Rack: " + spoken(tiles), tiles.map(function (symbol) {
      var at = fresh.indexOf(symbol);
      if (at >= 0) { fresh.splice(at, 1); }
      return tile(symbol, at >= 0 ? "fresh" : "");
    }));
  }

  function exposures(seat) {
    var row = make("div", "exposures");
    (seat.open || []).forEach(function (group) {
      row.appendChild(picture("group", "Exposed: " + spoken(list(group)),
        list(group).map(function (symbol) { return tile(symbol); })));
    });
    return row;
  }

  function name(number) { return upper(game.names[number]); }

  function signed(points) { return (points > 0 ? "+" : points < 0 ? "\u2212" : "") + Math.abs(points); }

  function player(moment, number, own, seen) {
    var seat = moment.seats[number];
    var turns = moment.turn === number;
    var place = make("section", "seat " + PLACES[(number - own + 4) % 4] + (turns ? " on-turn" : ""));
    place.setAttribute("aria-label", name(number));
    place.setAttribute("data-seat", number);
    var head = make("p", "name", name(number));
    head.appendChild(make("span", "who", " " + game.players[number] +
      (game.studied === number ? ", studied" : "")));
    if (turns && !moment.points) { head.appendChild(make("span", "turn", " \u25c6 on turn")); }
    if ((moment.dead || []).indexOf(number) >= 0) { head.appendChild(make("span", "turn", " hand dead")); }
    if (moment.points) { head.appendChild(make("span", "turn", " " + signed(moment.points[number]))); }
    place.appendChild(head);
    place.appendChild(rack(seat, seen));
    place.appendChild(exposures(seat));
    return place;
  }

  function discards(moment, step, own) {
    var row = make("ol", "discards");
    row.setAttribute("aria-label", "Discards in their order");
    game.thrown.slice(0, moment.thrown).forEach(function (entry, at) {
      var called = entry[2] >= 0 && entry[2] <= step;
      var last = at === moment.thrown - 1 && !called;
      var one = make("li", (called ? "called" : "") + (last ? "last" : ""));
      one.appendChild(tile(entry[0]));
      var by = make("span", "by", ARROWS[(entry[1] - own + 4) % 4]);
      by.setAttribute("aria-hidden", "true");
      one.appendChild(by);
      one.appendChild(make("span", "unseen", game.tiles[entry[0]] + ", " + game.names[entry[1]] +
        (called ? ", called" : "")));
      row.appendChild(one);
    });
    return row;
  }

  /* The largest tiles with which all discards fit into a height; grown in steps, so that they keep still. */
  function fit(row) {
    var count = Math.max(24, Math.ceil(row.children.length / 8) * 8);
    for (var width = 110; width > 16; width -= 2) {
      var across = Math.floor(row.clientWidth / (width + 8));
      var down = Math.ceil(count / Math.max(1, across));
      if (down * (width * 4 / 3 + 20) <= row.clientHeight) { break; }
    }
    row.style.setProperty("--d", width + "px");
  }

  /* Draws; says by a function which racks are seen. */
  function draw(view) {
    var middle = make("section", "middle");
    middle.setAttribute("aria-label", "The middle of the table");
    var now = make("p", "now", view.title);
    now.setAttribute("role", "status");
    middle.appendChild(now);
    if (view.answer) { middle.appendChild(make("p", "answer-why", view.answer)); }
    if (view.button) { middle.appendChild(view.button); }
    middle.appendChild(make("p", "left-over", view.moment.left +
      (view.moment.left === 1 ? " tile" : " tiles") + " left in the wall"));
    var row = discards(view.moment, view.step, view.own);
    middle.appendChild(row);
    stage.textContent = "";
    /* In the order of play, beginning with the own seat, the middle last. */
    for (var turn = 0; turn < 4; turn++) {
      var number = (view.own + turn) % 4;
      stage.appendChild(player(view.moment, number, view.own, view.sees(number)));
    }
    stage.appendChild(middle);
    if (view.big) { fit(row); }
  }

  return { draw: draw, make: make, name: name, upper: upper };
};
