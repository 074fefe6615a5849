package io.github.brinewright.area;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;

/**
 * The same study over a table in parts, each part by one executor. What travels is strings in and
 * sums out.
 *
 * @param spark the session
 */
record SparkArea(SparkSession spark) {

  /** How a table is written. */
  enum Form {
    CSV,
    PARQUET;

    static Form of(String name) {
      return name.endsWith(".parquet") ? PARQUET : CSV;
    }
  }

  /** A table of CSV or Parquet, a file or a folder of parts; every cell is taken as text. */
  Dataset<Row> read(String place) {
    Dataset<Row> table =
        Form.of(place) == Form.PARQUET
            ? spark.read().parquet(place)
            : spark.read().option("header", true).option("escape", "\"").csv(place);
    HomeReader.check(place, List.of(table.columns()));
    return table;
  }

  /** The sums over a table. */
  Town study(Dataset<Row> table, AreaStudy study) {
    String[] columns = table.columns();
    Town none = new Town(study.assumed().draws());
    return table
        .javaRDD()
        .mapPartitions(rows -> List.of(study.of(new Cells(rows, columns))).iterator())
        .treeAggregate(none, Town::add, Town::add);
  }

  /** The filled cells of rows, by column. */
  private record Cells(Iterator<Row> rows, String[] columns)
      implements Iterator<Map<String, String>> {
    @Override
    public boolean hasNext() {
      return rows.hasNext();
    }

    @Override
    public Map<String, String> next() {
      Row row = rows.next();
      Map<String, String> cells = new LinkedHashMap<>();
      for (int i = 0; i < columns.length; i++) {
        Object value = row.get(i);
        if (value != null && !value.toString().isBlank()) {
          cells.put(columns[i], value.toString().strip());
        }
      }
      return cells;
    }
  }

  /** Writes invented homes, each part by itself. */
  void invent(InventedTown town, long homes, int parts, String place) {
    Dataset<Row> table = invented(town, homes, parts);
    var writer = table.write().mode(SaveMode.ErrorIfExists);
    if (Form.of(place) == Form.PARQUET) {
      writer.parquet(place);
    } else {
      writer.option("header", true).csv(place);
    }
  }

  /** Invented homes that are made where they are studied, so that no table is needed. */
  Dataset<Row> invented(InventedTown town, long homes, int parts) {
    MapFunction<Long, Row> row = index -> row(town.row(index));
    StructType columns =
        new StructType(
            InventedTown.COLUMNS.stream()
                .map(name -> DataTypes.createStructField(name, DataTypes.StringType, true))
                .toArray(StructField[]::new));
    return spark.range(0, homes, 1, parts).map(row, Encoders.row(columns));
  }

  private static Row row(Map<String, String> cells) {
    return RowFactory.create(InventedTown.COLUMNS.stream().map(cells::get).toArray());
  }
}
