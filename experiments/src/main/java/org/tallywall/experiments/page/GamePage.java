package org.tallywall.experiments.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tallywall.core.hand.ConcreteHands;
import org.tallywall.core.play.Seats;
import org.tallywall.core.record.GameRecord;
import org.tallywall.experiments.story.GameStory;
import org.tallywall.experiments.story.SeatNames;
import org.tallywall.experiments.story.TypedTiles;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Fold;
import org.tallywall.reports.document.Part;
import org.tallywall.reports.html.Extras;
import org.tallywall.reports.html.PageWriter;
import org.tallywall.reports.markup.Element;
import tools.jackson.databind.json.JsonMapper;

/**
 * One game as one page that needs nothing else. A reader steps through it by keys and buttons and
 * sees all racks, or those of one player only. Tiles are small cards with the symbols of the
 * notation. Without scripts the page holds the same game in words.
 */
public final class GamePage {
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
    GamePage page = new GamePage(game, hands, seats, commentary);
    return PageWriter.text(page.document(), new Extras(resource("game.css"), resource("game.js")));
  }

  private Document document() {
    List<String> course = GameStory.of(game, hands.card(), seats, new TypedTiles());
    StepMaker maker = new StepMaker(game, seats, new AimWords(hands, new TypedTiles()), commentary);
    List<Part.Step> steps = new ArrayList<>();
    for (Step step : maker.steps()) {
      Element place = Element.of("div").with("class", "moment").with("aria-live", "off");
      place.with("data-moment", MAPPER.writeValueAsString(step.table()));
      steps.add(new Part.Step(step.title(), List.of(new Part.Drawing(place, ""))));
    }
    Element whole = Element.of("div").with("class", "game").with("hidden", "");
    whole.with("data-game", MAPPER.writeValueAsString(whole(maker)));
    List<Part> parts = new ArrayList<>();
    parts.add(Part.Paragraph.of(who()));
    parts.add(new Part.Drawing(whole, ""));
    parts.add(new Part.Steps("The game, step by step", steps));
    parts.add(
        Part.Paragraph.of(
            "Keys: arrow right and left for a step, Home and End for the first and the last. A tile"
                + " with a thick border has just come to the rack; a struck-out discard was called."));
    parts.add(section(LAST_HEADING, Fold.CLOSED, end(course)));
    parts.add(section("The whole game in words", Fold.CLOSED, String.join("\n", course).strip()));
    return new Document(title(), parts);
  }

  private static Part section(String title, Fold fold, String text) {
    return new Part.Section(title, fold, List.of(new Part.Listing(title, text + "\n")));
  }

  private static String end(List<String> course) {
    List<String> lines = course.subList(course.lastIndexOf(LAST_HEADING) + 1, course.size());
    return String.join("\n", lines.stream().map(String::strip).toList());
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
    return name + (changed ? " with settings of its own" : "");
  }

  private Map<String, Object> whole(StepMaker maker) {
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("names", seats.names());
    whole.put("players", game.header().players().stream().map(GamePage::player).toList());
    whole.put("studied", game.header().seat());
    whole.put("thrown", maker.discards());
    return whole;
  }

  private static String resource(String name) {
    try (InputStream in = GamePage.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("the file " + name + " lies beside this class");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
