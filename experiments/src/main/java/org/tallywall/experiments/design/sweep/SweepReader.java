package org.tallywall.experiments.design.sweep;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.FieldReader;
import org.tallywall.core.text.Nearest;
import org.tallywall.core.text.Node;
import org.tallywall.core.text.Shown;
import org.tallywall.experiments.design.PlayersReader;
import org.tallywall.experiments.design.arms.ArmsDesign;
import org.tallywall.experiments.design.arms.Streams;
import org.tallywall.experiments.study.Arm;
import org.tallywall.experiments.study.Bounds;
import org.tallywall.strategies.catalog.Catalog;
import org.tallywall.strategies.catalog.PlayerSpec;
import org.tallywall.strategies.setting.Setting;

/** Reads the design {@code sweep}: one setting at several values. */
final class SweepReader {
  private static final String NONE = "none";
  private static final List<String> KNOWN = List.of("player", "setting", "values", "baseline");

  private final FieldReader study;
  private final FieldReader fields;
  private final Faults faults;
  private final Catalog catalog;

  SweepReader(FieldReader study, Faults faults, Catalog catalog) {
    this.study = study;
    this.fields = new FieldReader(study.node("sweep"), "\"sweep\"", faults, KNOWN);
    this.faults = faults;
    this.catalog = catalog;
  }

  /** The design, or null where it has a fault. */
  SweepDesign read() {
    int before = faults.findings();
    PlayersReader common = new PlayersReader(study, faults, catalog);
    PlayerSpec others = common.others();
    List<Integer> seats = common.seats();
    Streams streams = Streams.read(study);
    fields.require("player", "whose setting it is, as in \"player\": \"watchful\"");
    fields.require("setting", "the setting's name, as in \"setting\": \"aim.targets\"");
    fields.require("values", "its values, as in \"values\": [1, 2, 3]");
    fields.require("baseline", "the value that the others are compared with");
    if (faults.findings() > before) {
      return null;
    }
    PlayerSpec player = common.honest(fields.node("player"));
    Optional<Setting<?>> setting = player == null ? Optional.empty() : setting(player);
    if (setting.isEmpty()) {
      return null;
    }
    List<Object> values = values(setting.get());
    Object baseline = value(setting.get(), fields.node("baseline"));
    int at = baseline == null ? -1 : values.indexOf(baseline);
    if (baseline != null && at < 0) {
      fields.fault("baseline", "the value compared with must be one of \"values\"");
    }
    if (faults.findings() > before) {
      return null;
    }
    List<Arm> arms = new ArrayList<>();
    for (Object value : values) {
      arms.add(new Arm(name(value), player.with(setting.get().name(), value)));
    }
    return new SweepDesign(
        player, setting.get().name(), values, new ArmsDesign(arms, at, others, seats, streams));
  }

  private Optional<Setting<?>> setting(PlayerSpec player) {
    String name = fields.text("setting", "");
    List<Setting<?>> all = player.type().settings();
    Optional<Setting<?>> found = all.stream().filter(s -> s.name().equals(name)).findFirst();
    if (found.isEmpty()) {
      List<String> names = all.stream().map(Setting::name).toList();
      fields.fault(
          "setting",
          names.isEmpty()
              ? "the player \"%s\" has no settings".formatted(player.type().id())
              : "the player \"%s\" has no setting \"%s\"%s (all: tallywall players %s)"
                  .formatted(
                      player.type().id(), name, Nearest.hint(name, names), player.type().id()));
    }
    return found;
  }

  private List<Object> values(Setting<?> setting) {
    Set<Object> values = new LinkedHashSet<>();
    Set<String> names = new HashSet<>();
    if (fields.list("values").size() > Bounds.MOST_WAYS) {
      fields.fault("values", "a sweep takes " + Bounds.MOST_WAYS + " values at most");
      return List.of();
    }
    for (Node node : fields.list("values")) {
      Object value = value(setting, node);
      if (value != null && (!values.add(value) || !names.add(name(value)))) {
        faults.fault(node.place(), "the value %s stands twice".formatted(Shown.word(name(value))));
      }
    }
    if (values.size() < 2) {
      fields.fault("values", "a sweep takes two values or more");
    }
    return List.copyOf(values);
  }

  /** What a value is called; one that names nothing has a name too. */
  private static String name(Object value) {
    return "".equals(value) ? NONE : String.valueOf(value);
  }

  private Object value(Setting<?> setting, Node node) {
    Object value = node.value() instanceof BigDecimal number ? Setting.plain(number) : node.value();
    if (value == null || !setting.allows(value)) {
      faults.fault(
          node.place(), "the setting \"%s\" is %s".formatted(setting.name(), setting.range()));
      return null;
    }
    return value;
  }
}
