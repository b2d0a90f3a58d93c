/* Gives the texts of charts that leave their picture or cover one another, with the fonts at hand. */
var found = [];
document.querySelectorAll(".chart svg").forEach(function (svg) {
  if (svg.getBoundingClientRect().width === 0) { return; }
  var size = svg.viewBox.baseVal;
  var texts = Array.prototype.slice.call(svg.querySelectorAll("text"));
  var boxes = texts.map(function (text) {
    var box = text.getBBox();
    var letter = Number(text.getAttribute("font-size"));
    var base = Number(text.getAttribute("y"));
    return { words: text.textContent, left: box.x, right: box.x + box.width, top: base - letter * 0.7, bottom: base };
  });
  boxes.forEach(function (box, i) {
    if (box.left < size.x || box.right > size.x + size.width || box.bottom > size.height) {
      found.push(box.words + " leaves its picture");
    }
    boxes.slice(i + 1).forEach(function (other) {
      if (box.left < other.right && other.left < box.right && box.top < other.bottom && other.top < box.bottom) {
        found.push(box.words + " covers " + other.words);
      }
    });
  });
});
return found;
