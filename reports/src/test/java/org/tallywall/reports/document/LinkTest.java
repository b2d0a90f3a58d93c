package org.tallywall.reports.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinkTest {

  @ParameterizedTest
  @ValueSource(strings = {"study.json", "charts/wins.svg", "records/game 1 (East).html"})
  void target_besideThePage_isTaken(String target) {
    assertThat(new Link("words", target).target()).isEqualTo(target);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "/etc/passwd", "../other", "a/../b", "http://example.org", "//example.org/a",
        "javascript:alert(1)", "a\"b", "a//b", "a/", "#top", "mailto:a@example.org"
      })
  void target_elsewhere_isRefused(String target) {
    assertThatThrownBy(() -> new Link("words", target))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "a page links to files beside it, such as charts/wins.svg; not to \"" + target + "\"");
  }
}
