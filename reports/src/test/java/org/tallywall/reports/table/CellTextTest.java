package org.tallywall.reports.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTextTest {
  private static final Column COUNT = Column.integer("games", "games", "Games played.");
  private static final Column POINTS = Column.decimal("points", "points", "Points won.");
  private static final Column RATE = Column.rate("wins", "share of games", "Games won.");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0|0",
        "999|999",
        "1000|1,000",
        "-999|-999",
        "-1000|-1,000",
        "1234567|1,234,567",
        "-9223372036854775808|-9,223,372,036,854,775,808"
      })
  void count_shown_hasItsThousandsApart(long value, String text) {
    assertThat(CellText.of(COUNT, Cell.whole(value))).isEqualTo(text);
  }

  @Test
  void number_withoutInterval_hasThePlacesOfItsColumn() {
    assertThat(CellText.of(POINTS, Cell.decimal(-1234.565))).isEqualTo("-1,234.57");
    assertThat(CellText.of(POINTS, Cell.decimal(-0.001))).isEqualTo("0.00");
    assertThat(CellText.of(POINTS.shownTo(0), Cell.decimal(12.5))).isEqualTo("13");
    assertThat(CellText.of(RATE, Cell.decimal(0.2237))).isEqualTo("22.4 %");
    assertThat(CellText.of(RATE.shownTo(0), Cell.decimal(1))).isEqualTo("100 %");
  }

  /** The Wilson example of {@link RoundingTest}, as a percentage. */
  @Test
  void share_withInterval_isAPercentageToTheSamePlace() {
    Column column = Column.rateInterval("wins", "share of games", "Games won.");
    assertThat(CellText.of(column, Cell.interval(0.2237, 0.2156393512, 0.2319728463)))
        .isEqualTo("22.37 % (21.56 % to 23.20 %)");
    assertThat(CellText.of(column, Cell.interval(0.5, -0.9, 1.9)))
        .isEqualTo("50 % (-90 % to 190 %)");
  }

  @Test
  void number_withInterval_isRoundedByIt() {
    Column column = Column.decimalInterval("points", "points", "Points won.");
    assertThat(CellText.of(column, Cell.interval(1234.5, 1100.1, 1340.2)))
        .isEqualTo("1,230 (1,100 to 1,350)");
    assertThat(CellText.of(column, Cell.decimal(1.005))).isEqualTo("1.01");
    assertThat(CellText.of(column, Cell.interval(3, 3, 3))).isEqualTo("3.00 (3.00 to 3.00)");
  }

  @Test
  void emptyCell_shown_isNoText() {
    assertThat(CellText.of(POINTS, Cell.empty())).isEmpty();
  }
}
