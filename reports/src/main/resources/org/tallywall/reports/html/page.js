
(function () {
  "use strict";

  function make(name, text, type) {
    var element = document.createElement(name);
    if (text) { element.textContent = text; }
    if (type) { element.type = type; }
    return element;
  }

  function all(root, query) { return Array.prototype.slice.call(root.querySelectorAll(query)); }

  /* A line that a screen reader reads out when it changes. */
  function speaker(tools) {
    var said = make("span");
    said.className = "said";
    said.setAttribute("role", "status");
    tools.appendChild(said);
    return function (words) { said.textContent = words; };
  }

  /* Sorting: numbers by their full value, words as people count, empty cells always last. */
  var words = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

  function compare(a, b, number, direction) {
    var left = number ? a.getAttribute("data-value") : a.textContent;
    var right = number ? b.getAttribute("data-value") : b.textContent;
    if (!left || !right) { return (left ? 0 : 1) - (right ? 0 : 1); }
    return direction * (number ? Number(left) - Number(right) : words.compare(left, right));
  }

  function sort(table, column, direction) {
    var body = table.tBodies[0];
    var number = /number|limit/.test(table.tHead.rows[0].cells[column].className);
    var rows = Array.prototype.slice.call(body.rows);
    rows.sort(function (a, b) {
      return compare(a.cells[column], b.cells[column], number, direction);
    });
    rows.forEach(function (row) { body.appendChild(row); });
  }

  function sortable(table, say) {
    var heads = Array.prototype.slice.call(table.tHead.rows[0].cells);
    heads.forEach(function (head, column) {
      var name = head.textContent;
      var button = make("button", name, "button");
      head.textContent = "";
      head.appendChild(button);
      head.setAttribute("aria-sort", "none");
      button.addEventListener("click", function () {
        var ascending = head.getAttribute("aria-sort") !== "ascending";
        heads.forEach(function (other) { other.setAttribute("aria-sort", "none"); });
        head.setAttribute("aria-sort", ascending ? "ascending" : "descending");
        sort(table, column, ascending ? 1 : -1);
        say("Sorted by " + name + (ascending ? ", lowest first" : ", highest first"));
      });
    });
  }

  /* Filtering: a row stays if its words (not its numbers) hold every word typed. */
  function lettering(row) {
    var cells = all(row, "th, td:not(.number):not(.limit)");
    return cells.map(function (cell) { return cell.textContent.toLowerCase(); }).join(" ");
  }

  function filterable(table, tools, say) {
    var label = make("label", "Show rows with ");
    var input = make("input", "", "search");
    label.appendChild(input);
    tools.appendChild(label);
    var rows = Array.prototype.slice.call(table.tBodies[0].rows);
    input.addEventListener("input", function () {
      var wanted = input.value.toLowerCase().split(/\s+/);
      var seen = 0;
      rows.forEach(function (row) {
        var text = lettering(row);
        var stays = wanted.every(function (word) { return text.indexOf(word) >= 0; });
        row.hidden = !stays;
        seen += stays ? 1 : 0;
      });
      say(seen + " of " + rows.length + " rows");
    });
  }

  /* Copying: what is seen, in its order, as lines with tabs and as a table. */
  function clean(text) { return text.replace(/\s+/g, " ").trim(); }

  function copied(table) {
    var plain = [];
    var copy = make("table");
    copy.setAttribute("border", "1");
    all(table, "tr").forEach(function (row) {
      if (row.hidden) { return; }
      var line = copy.insertRow();
      var cells = Array.prototype.slice.call(row.cells);
      plain.push(cells.map(function (cell) { return clean(cell.textContent); }).join("\t"));
      cells.forEach(function (cell) {
        var place = line.appendChild(make(cell.tagName, clean(cell.textContent)));
        if (/number|limit/.test(cell.className)) { place.setAttribute("align", "right"); }
      });
    });
    return { plain: plain.join("\n") + "\n", html: copy.outerHTML };
  }

  function copyable(table, tools, say) {
    var button = make("button", "Copy table", "button");
    tools.appendChild(button);
    button.addEventListener("click", function () {
      var content = copied(table);
      var done = false;
      function put(event) {
        event.clipboardData.setData("text/plain", content.plain);
        event.clipboardData.setData("text/html", content.html);
        event.preventDefault();
        done = true;
      }
      document.addEventListener("copy", put);
      try { document.execCommand("copy"); } finally { document.removeEventListener("copy", put); }
      say(done ? "Copied" : "This browser does not let a page copy: select the table instead");
    });
  }

  /* Where columns stand beyond the right edge, a line says so. */
  function overflowing(scroll) {
    var hint = make("p", "Move the table sideways to see its other columns.");
    hint.className = "hint";
    scroll.parentNode.insertBefore(hint, scroll);
    function look() { hint.hidden = scroll.scrollWidth <= scroll.clientWidth + 1; }
    window.addEventListener("resize", look);
    new ResizeObserver(look).observe(scroll);
    look();
  }

  all(document, ".grid").forEach(function (grid) {
    var table = grid.querySelector("table");
    var tools = make("div");
    tools.className = "tools";
    var filters = grid.hasAttribute("data-filter");
    var told = make("div");
    var say = speaker(told);
    if (grid.hasAttribute("data-sort")) { sortable(table, say); }
    if (filters) { filterable(table, tools, say); }
    copyable(table, tools, say);
    tools.appendChild(told);
    grid.insertBefore(tools, filters ? grid.firstChild : grid.querySelector(".scroll").nextSibling);
    overflowing(grid.querySelector(".scroll"));
  });

  /* A way into a folded section unfolds it. */
  function unfold() {
    var target = location.hash ? document.getElementById(location.hash.slice(1)) : null;
    for (; target; target = target.parentElement) {
      if (target.tagName === "DETAILS") { target.open = true; }
    }
  }
  window.addEventListener("hashchange", unfold);
  unfold();
}());
