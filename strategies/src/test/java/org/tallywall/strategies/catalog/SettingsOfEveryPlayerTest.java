package org.tallywall.strategies.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tallywall.core.text.Faults;
import org.tallywall.core.text.LocatedJson;
import org.tallywall.core.text.Node;
import org.tallywall.strategies.setting.Setting;

/** Every setting of every player, and the places of faults in a study. */
class SettingsOfEveryPlayerTest {
  private final Catalog catalog = Catalog.standard();
  private final Faults faults = new Faults();

  private PlayerSpec read(String json) {
    Node node = LocatedJson.read("{\"p\": " + json + "}", faults);
    return catalog.read(((Node.Fields) node.value()).values().get("p"), faults);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "nearst" | 7
          {"player": "random"} | 18
          {"plays": "nearest"} | 7
          7 | 7
          {"player": "nearest", "speed": 3} | 29
          """)
  void fault_isNamedWithItsPlace(String json, int column) {
    assertThat(read(json)).isNull();
    assertThat(faults.faults()).hasSize(1);
    assertThat(faults.faults().get(0).column()).isEqualTo(column);
    assertThat(faults.faults().get(0).line()).isEqualTo(1);
  }

  @Test
  void everySetting_isReadByItsFullNameAndRefusedOutOfItsRange() {
    for (PlayerType type : catalog.types()) {
      for (Setting<?> setting : type.settings()) {
        String value =
            setting.standard() instanceof String word
                ? "\"" + word + "\""
                : setting.standard() + "";
        String object = "{\"player\": \"" + type.id() + "\", \"" + setting.name() + "\": ";
        PlayerSpec spec = read(object + value + "}");
        assertThat(faults.faults()).as(setting.name()).isEmpty();
        Object changed = spec.changed().get(setting.name());
        assertThat(plain(changed)).isEqualTo(plain(setting.standard()));
        Faults out = new Faults();
        String wrong = setting.allows("no such value") ? "7" : "\"no such value\"";
        Node node = LocatedJson.read("{\"p\": " + object + wrong + "}}", out);
        assertThat(catalog.read(((Node.Fields) node.value()).values().get("p"), out)).isNull();
        assertThat(out.faults().get(0).message())
            .contains("the setting \"" + setting.name() + "\" is " + setting.range());
      }
    }
  }

  private static String plain(Object value) {
    return value instanceof BigDecimal number
        ? number.stripTrailingZeros().toPlainString()
        : String.valueOf(value);
  }

  @Test
  void unknownSettingOfAPlayerWithSome_isRefusedWithTheNearest() {
    for (PlayerType type : catalog.types()) {
      if (!type.settings().isEmpty()) {
        String name = type.settings().get(0).name();
        Faults out = new Faults();
        String json = "{\"p\": {\"player\": \"%s\", \"%sx\": 1}}".formatted(type.id(), name);
        Node node = LocatedJson.read(json, out);
        assertThat(catalog.read(((Node.Fields) node.value()).values().get("p"), out)).isNull();
        assertThat(out.faults().get(0).message()).contains("did you mean \"" + name + "\"");
      }
    }
  }
}
