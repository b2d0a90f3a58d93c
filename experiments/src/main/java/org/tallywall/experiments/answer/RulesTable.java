package org.tallywall.experiments.answer;

import java.util.Map;
import org.tallywall.core.rules.TableRules;
import org.tallywall.reports.schema.RuleColumns;
import org.tallywall.reports.table.Row;
import org.tallywall.reports.table.Table;
import org.tallywall.reports.table.TableBuilder;

/** Every switch of the rules that were played, beside how it usually is. */
final class RulesTable {
  private RulesTable() {}

  static Table of(TableRules rules) {
    Map<String, Object> usual = TableRules.STANDARD.switches();
    TableBuilder table =
        Table.builder(RuleColumns.FILE, "The rules of the table, every switch")
            .columns(RuleColumns.all());
    rules
        .switches()
        .forEach(
            (name, value) -> {
              String played = String.valueOf(value);
              String standard = String.valueOf(usual.get(name));
              table.row(
                  new Row()
                      .set(RuleColumns.SWITCH, name)
                      .set(RuleColumns.VALUE, played)
                      .set(RuleColumns.USUAL, standard)
                      .set(RuleColumns.CHANGED, played.equals(standard) ? "" : "changed"));
            });
    return table.build();
  }
}
