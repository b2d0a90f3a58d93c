package org.tallywall.experiments.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameRecord;
import org.tallywall.core.tile.Tile;
import org.tallywall.experiments.story.GameStory;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.SpokenTiles;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.html.Extras;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.html.Resource;
import org.tallywall.reports.markup.Element;
import org.tallywall.strategies.habit.KnowsHabit;
import tools.jackson.databind.json.JsonMapper;

/**
 * One game as one page that needs nothing else: a table with four racks round it, at which the
 * reader sits down at any seat and goes through the game step by step. The page holds the steps as
 * a list, each with what lies on the table then; a script draws it. Without scripts the page says
 * the same game in words.
 */
public final class GamePage {
  /** What a file says that it was made by, if it is such a page. */
  public static final String MAKER = "Tallywall, page of a game";

  private static final String LAST_HEADING = "The end";
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final GameRecord game;
  private final ConcreteHands hands;
  private final SeatNames seats;
  private final Commentary commentary;

  private GamePage(GameRecord game, ConcreteHands hands, SeatNames seats, Commentary commentary) {
    this.game = game;
    this.hands = hands;
    this.seats = seats;
    this.commentary = commentary;
  }

  /**
   * Writes the page of a game.
   *
   * @param game the record of a game that was played by the rules
   * @param hands the card on which it was played
   * @param seats what the seats are called
   * @param commentary what players say about their play
   * @return the whole file
   */
  public static String text(
      GameRecord game, ConcreteHands hands, SeatNames seats, Commentary commentary) {
    return text(game, hands, seats, commentary, List.of(), MAKER);
  }

  /**
   * Writes the page of a game with something above it.
   *
   * @param game the record of a game that was played by the rules
   * @param hands the card on which it was played
   * @param seats what the seats are called
   * @param commentary what players say about their play
   * @param before what stands above the game
   * @param maker what the file says that it was made by, as in {@link #MAKER}
   * @return the whole file
   */
  public static String text(
      GameRecord game,
      ConcreteHands hands,
      SeatNames seats,
      Commentary commentary,
      List<Part> before,
      String maker) {
    GamePage page = new GamePage(game, hands, seats, commentary);
    String script =
        Resource.text(GamePage.class, "table.js") + Resource.text(GamePage.class, "game.js");
    return PageWriter.text(
        page.document(before),
        new Extras(Resource.text(GamePage.class, "game.css"), script, maker));
  }

  private Document document(List<Part> before) {
    List<String> course = GameStory.of(game, hands.card(), seats, new TypedTiles());
    List<Part> parts = new ArrayList<>();
    parts.addAll(before);
    parts.add(new Part.Drawing(TileDrawings.all(), ""));
    parts.add(new Part.Drawing(table().add(end(course)), ""));
    parts.add(Part.Paragraph.of(who()));
    parts.add(new Part.Drawing(Legend.of(), ""));
    String story = String.join("\n", course).strip() + "\n";
    String title = "The whole game in words";
    parts.add(new Part.Section(title, Fold.CLOSED, List.of(new Part.Listing(title, story))));
    return new Document(title(), parts);
  }

  /** What the script reads: the game, and its steps in their order. */
  private Element table() {
    AimWords aims = new AimWords(hands, new TypedTiles());
    StepMaker maker = new StepMaker(game, hands.card(), seats, aims, commentary);
    Element list = Element.of("ol").with("class", "course");
    int number = 0;
    for (Step step : maker.steps()) {
      Element item = Element.of("li").with("class", step.kind());
      item.with("value", String.valueOf(++number));
      item.with("data-moment", MAPPER.writeValueAsString(step.table()));
      Element way = Element.of("a", step.title()).with("class", "title");
      list.add(item.add(way.with("href", "#step=" + number)));
    }
    Element box = Element.of("section").with("class", "course-box");
    box.add(Element.of("h2", "The course of the game")).add(list);
    Element whole = Element.of("div").with("class", "game");
    return whole.with("data-game", MAPPER.writeValueAsString(whole(maker))).add(box);
  }

  private static Element end(List<String> course) {
    Element box = Element.of("section").with("class", "ending").add(Element.of("h2", LAST_HEADING));
    course.subList(course.lastIndexOf(LAST_HEADING) + 1, course.size()).stream()
        .map(line -> Element.of("p", line.strip()))
        .forEach(box::add);
    return box;
  }

  private String title() {
    String study = game.header().study();
    return "Deal %s%s, %s"
        .formatted(
            game.header().deal(),
            study.isEmpty() ? ", seed " + game.header().seed() : " of " + study,
            game.header().card().card());
  }

  private String who() {
    List<String> players = new ArrayList<>();
    for (int seat = 0; seat < Seats.COUNT; seat++) {
      players.add(seats.of(seat) + " " + player(game.header().players().get(seat)));
    }
    String studied =
        game.header().arm().isEmpty()
            ? ""
            : " Way of playing: \u201c%s\u201d%s."
                .formatted(
                    game.header().arm(),
                    game.header().seat() < 0 ? "" : ", " + seats.of(game.header().seat()));
    return "Programmed players: " + String.join(", ", players) + "." + studied;
  }

  private static String player(Object written) {
    Object name = written instanceof Map<?, ?> map ? map.get("player") : written;
    boolean changed = written instanceof Map<?, ?> map && map.size() > 1;
    boolean sees = changed && KnowsHabit.isWrittenIn((Map<?, ?>) written);
    return name
        + (changed ? " with settings of its own" : "")
        + (sees ? " (" + KnowsHabit.MARK + ")" : "");
  }

  private Map<String, Object> whole(StepMaker maker) {
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("names", seats.names());
    whole.put("players", game.header().players().stream().map(GamePage::player).toList());
    whole.put("studied", game.header().seat());
    whole.put("thrown", maker.discards());
    SpokenTiles spoken = new SpokenTiles();
    Map<String, String> tiles = new LinkedHashMap<>();
    for (int kind = 0; kind < Tile.KINDS; kind++) {
      tiles.put(Tile.symbol(kind), spoken.tile(kind));
    }
    whole.put("tiles", tiles);
    return whole;
  }
}
