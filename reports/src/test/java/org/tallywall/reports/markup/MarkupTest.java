package org.tallywall.reports.markup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkupTest {

  @Test
  void text_withMarks_isEscaped() {
    assertThat(Markup.html(Element.of("p", "<b> & \"it's\" </p>")))
        .isEqualTo("<p>&lt;b&gt; &amp; \"it's\" &lt;/p&gt;</p>\n");
  }

  @Test
  void attribute_withQuotationMark_staysAnAttribute() {
    Element element = Element.of("p").with("title", "\" onclick=\"x\n<");
    assertThat(Markup.html(element)).isEqualTo("<p title=\"&#34; onclick=&#34;x&#10;&lt;\"></p>\n");
  }

  /** Not allowed by XML 1.0, section 2.2, or discouraged there. */
  @ParameterizedTest
  @ValueSource(strings = {"\u0000", "\u0007", "\u001b", "\u007f", "\u0085", "\uFFFE", "\ud800"})
  void letter_thatXmlForbids_isWrittenAsItsNumber(String letter) {
    assertThat(Markup.html(Element.of("p", "a" + letter + "b")))
        .isEqualTo("<p>a\\u{" + Integer.toHexString(letter.charAt(0)) + "}b</p>\n");
  }

  @Test
  void letters_beyondTheBasicPlane_stay() {
    assertThat(Markup.html(Element.of("p", "\ud83c\udc04 雀 é")))
        .isEqualTo("<p>\ud83c\udc04 雀 é</p>\n");
  }

  @Test
  void element_withoutChildren_closesAsItsLanguageWants() {
    Element outer = Element.of("td").add(Element.of("br")).add(Element.of("p"));
    assertThat(Markup.xml(outer)).isEqualTo("<td>\n<br/>\n<p/>\n</td>\n");
    assertThat(Markup.html(outer)).isEqualTo("<td>\n<br>\n<p></p>\n</td>\n");
  }

  @Test
  void phrases_inALine_getNoBlanksBetween() {
    Element line = Element.of("p").add(Element.of("b", "a")).add(Element.of("sup", "1"));
    assertThat(Markup.html(line)).isEqualTo("<p><b>a</b><sup>1</sup></p>\n");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "1a", "a b", "a>", "a=\"", "é"})
  void name_ofAnotherForm_isRefused(String name) {
    assertThatThrownBy(() -> Element.of(name)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Element.of("p").with(name, ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("not the name of an element or attribute: " + name);
  }
}
