package org.tallywall.reports.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableTest {
  private static final Column ARM = Column.text("arm", "The way of playing.");
  private static final Column WINS = Column.integer("wins", "games", "Games won.");
  private static final Column RATE = Column.rate("rate", "share of games", "Games won.");
  private static final Column POINTS =
      Column.decimalInterval("points", "points per game", "Mean points.");

  private static TableBuilder started() {
    return Table.builder("some-table", "Some table").columns(ARM, WINS, RATE, POINTS);
  }

  @Test
  void row_tooShort_isRefusedWithItsPlace() {
    TableBuilder table = started().row(Cell.empty(), Cell.empty(), Cell.empty(), Cell.empty());
    assertThatThrownBy(() -> table.row(Cell.text("a"), Cell.whole(1)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("table some-table, row 2: expected 4 cells, got 2");
  }

  static List<Arguments> misfits() {
    return List.of(
        Arguments.of(0, Cell.whole(3), "column arm: expected text, got the whole number 3"),
        Arguments.of(1, Cell.text("x"), "column wins: expected a whole number, got the text \"x\""),
        Arguments.of(
            1, Cell.decimal(1.5), "column wins: expected a whole number, got the number 1.5"),
        Arguments.of(
            2,
            Cell.decimal(1.25),
            "column rate: expected a share from 0 to 1, got the number 1.25"),
        Arguments.of(
            2,
            Cell.decimal(-0.5),
            "column rate: expected a share from 0 to 1, got the number -0.5"),
        Arguments.of(
            2,
            Cell.interval(0.5, 0.25, 0.75),
            "column rate: expected a share from 0 to 1, got the number 0.5 with its interval"
                + " 0.25 to 0.75"),
        Arguments.of(
            3,
            Cell.whole(4),
            "column points: expected a number, with or without its interval, got the whole"
                + " number 4"),
        Arguments.of(1, null, "column wins: expected a whole number, got no cell at all"));
  }

  @ParameterizedTest
  @MethodSource("misfits")
  void cell_ofAnotherType_isRefusedWithItsPlace(int column, Cell cell, String message) {
    List<Cell> row =
        new ArrayList<>(List.of(Cell.empty(), Cell.empty(), Cell.empty(), Cell.empty()));
    row.set(column, cell);
    assertThatThrownBy(() -> started().row(row))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("table some-table, row 1, " + message);
  }

  @Test
  void shareInterval_beyondOne_isAllowedButNotItsEstimate() {
    ColumnType type = ColumnType.RATE_INTERVAL;
    assertThat(type.accepts(Cell.interval(0.875, 0.5, 1.25))).isTrue();
    assertThat(type.accepts(Cell.interval(1.125, 0.5, 1.75))).isFalse();
  }

  @Test
  void columns_afterRows_areRefused() {
    TableBuilder table = started().row(Cell.empty(), Cell.empty(), Cell.empty(), Cell.empty());
    assertThatThrownBy(() -> table.columns(ARM))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("table some-table: columns come before rows");
  }

  @Test
  void columns_thatWouldShareAName_areRefused() {
    Column clash = Column.decimal("points-low", "points", "Another.");
    assertThatThrownBy(() -> started().columns(clash).build())
        .hasMessage("table some-table has two columns named points-low");
  }

  @Test
  void table_withoutColumnsOrTitle_isRefused() {
    assertThatThrownBy(() -> Table.builder("t", "T").build()).hasMessage("table t lacks columns");
    assertThatThrownBy(() -> Table.builder("t", " ").columns(ARM).build())
        .hasMessage("table t lacks a title");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "Win", "win_rate", "-win", "win-", "win--rate", "../win", "wín"})
  void name_ofAnotherForm_isRefused(String name) {
    assertThatThrownBy(() -> Column.text(name, "A meaning."))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("small letters, digits and single hyphens")
        .hasMessageEndingWith("not \"" + name + "\"");
    assertThatThrownBy(() -> Table.builder(name, "T").columns(ARM).build())
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void column_withoutWordsOrWithOddPlaces_isRefused() {
    assertThatThrownBy(() -> Column.text("arm", "")).hasMessage("column arm lacks a meaning");
    assertThatThrownBy(() -> Column.integer("n", " ", "M.")).hasMessage("column n lacks a unit");
    assertThatThrownBy(() -> ARM.headed("")).hasMessage("column arm lacks a heading");
    assertThatThrownBy(() -> RATE.shownTo(16))
        .hasMessage("column rate: decimal places go from 0 to 15, not 16");
  }

  @Test
  void table_spread_hasOneValueACell() {
    Table table =
        started()
            .row(Cell.text("a"), Cell.whole(1), Cell.ratio(1, 4), Cell.interval(1, 0.5, 2))
            .row(Cell.text("b"), Cell.empty(), Cell.ratio(0, 0), Cell.decimal(3))
            .row(Cell.text("c"), Cell.empty(), Cell.empty(), Cell.empty())
            .build()
            .spread();
    assertThat(table.columns())
        .extracting(Column::name)
        .containsExactly("arm", "wins", "rate", "points", "points-low", "points-high");
    assertThat(table.rows().get(0).subList(2, 6))
        .containsExactly(Cell.decimal(0.25), Cell.decimal(1), Cell.decimal(0.5), Cell.decimal(2));
    assertThat(table.rows().get(1).subList(2, 6))
        .containsExactly(Cell.empty(), Cell.decimal(3), Cell.empty(), Cell.empty());
    assertThat(table.rows().get(2).subList(2, 6)).containsOnly(Cell.empty());
  }

  @Test
  void table_afterItsBuilderWentOn_isUnchanged() {
    TableBuilder builder = Table.builder("t", "T").columns(WINS).row(Cell.whole(1));
    Table table = builder.build();
    builder.row(Cell.whole(2)).note("More.").build();
    assertThat(table.rows()).hasSize(1);
    assertThat(table.notes()).isEmpty();
  }

  @Test
  void cell_withoutProperNumbers_isRefused() {
    assertThatThrownBy(() -> Cell.decimal(Double.NaN)).hasMessageContaining("finite numbers");
    assertThatThrownBy(() -> Cell.interval(1, Double.NEGATIVE_INFINITY, 2))
        .hasMessageContaining("finite numbers");
    assertThatThrownBy(() -> Cell.interval(1, 2, 0.5))
        .hasMessage("the lower limit 2 is above the upper limit 0.5");
    assertThatThrownBy(() -> Cell.ratio(1, -1)).hasMessage("a count cannot be negative: -1");
    assertThat(Cell.decimal(OptionalDouble.empty())).isEqualTo(Cell.empty());
    assertThat(Cell.decimal(OptionalDouble.of(2))).isEqualTo(Cell.decimal(2));
  }
}
