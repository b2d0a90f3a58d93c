package org.tallywall.reports.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.table.Column;
import org.tallywall.reports.table.ColumnType;

/** Every column that is declared is judged in the file that has it. */
class SchemaTest {
  @Test
  void column_declaredAnywhere_belongsToAFile() throws IOException, ReflectiveOperationException {
    Set<Column> judged = new HashSet<>();
    Schema.files().forEach(file -> judged.addAll(Schema.columns(file)));
    List<Column> declared = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("src/main/java/org/tallywall/reports/schema"))) {
      for (Path file : files.filter(one -> one.toString().endsWith("Columns.java")).toList()) {
        String name = file.getFileName().toString().replace(".java", "");
        Class<?> columns = Class.forName("org.tallywall.reports.schema." + name);
        for (Field field : columns.getFields()) {
          if (field.get(null) instanceof Column column) {
            declared.add(column);
          } else if (field.getName().equals("FILE")) {
            assertThat(Schema.files()).contains((String) field.get(null));
          }
        }
      }
    }
    assertThat(declared).hasSizeGreaterThan(150);
    assertThat(judged).containsAll(declared);
  }

  @Test
  void sum_ofParts_isOfCountsOfItsFile() {
    for (String file : Schema.files()) {
      for (Sum sum : Schema.sums(file)) {
        assertThat(Schema.columns(file)).contains(sum.whole()).containsAll(sum.parts());
        assertThat(sum.whole().type()).isEqualTo(ColumnType.INTEGER);
        assertThat(sum.parts()).allMatch(part -> part.type() == ColumnType.INTEGER);
      }
    }
  }
}
