package io.github.brinewright.area;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.brinewright.area.Totals.Count;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spark adds up what a plain loop does, bit for bit, from every form of a table. */
class SparkAreaTest {
  private static final int HOMES = 300;
  private static final InventedTown TOWN = new InventedTown(7);
  private static final AreaStudy STUDY = new AreaStudy(new Assumed(7, 3, 11));

  private static SparkSession session;
  private static SparkArea area;
  private static Town loop;

  @TempDir Path folder;

  @BeforeAll
  static void start() {
    session =
        SparkSession.builder().master("local[2]").config("spark.ui.enabled", "false").getOrCreate();
    area = new SparkArea(session);
    loop = STUDY.of(TOWN.rows(0, HOMES));
  }

  @AfterAll
  static void stop() {
    session.stop();
  }

  @Test
  void invented_where_they_are_studied() {
    Town spark = area.study(area.invented(TOWN, HOMES, 7), STUDY);
    assertThat(spark.all().of(Count.ROWS)).isEqualTo(HOMES);
    assertThat(spark).isEqualTo(loop);
    assertThat(AreaCsv.of(spark)).isEqualTo(AreaCsv.of(loop));
  }

  @Test
  void written_and_read_as_csv_and_as_parquet() {
    for (String name : new String[] {"town", "town.parquet"}) {
      String place = folder.resolve(name).toString();
      area.invent(TOWN, HOMES, 5, place);
      assertThat(area.study(area.read(place), STUDY)).as(name).isEqualTo(loop);
    }
  }

  @Test
  void no_table_is_written_over() {
    String place = folder.resolve("town").toString();
    area.invent(TOWN, 4, 1, place);
    assertThatThrownBy(() -> area.invent(TOWN, 4, 1, place)).hasMessageContaining("exists");
  }

  @Test
  void rows_with_errors_are_counted_and_told_by_their_home() throws Exception {
    Path file = folder.resolve("homes.csv");
    Files.writeString(
        file,
        """
        site_id,district,people,hardness_gpg,present_control,present_days,present_rated_grains
        A1,North,3,18,clock,4,32000
        A2,North,three,18,clock,4,32000
        A3,"North, upper",3,18,,,
        """);
    Town town = area.study(area.read(file.toString()), STUDY);
    assertThat(town.names()).containsExactly("North", "North, upper");
    assertThat(town.all().of(Count.ROWS)).isEqualTo(3);
    assertThat(town.all().of(Count.REFUSED)).isEqualTo(1);
    assertThat(town.of("North, upper").of(Count.WITHOUT_SOFTENER)).isEqualTo(1);
    assertThat(town.problems()).singleElement().asString().contains("A2", "people", "three");
    assertThat(AreaCsv.of(town)).contains("\"North, upper\",as_found,salt_mg,0,0");
  }

  @Test
  void columns_that_are_not_known_are_named() throws Exception {
    Path file = folder.resolve("wrong.csv");
    Files.writeString(file, "site_id,people,hardness_gpg,softness\nA1,3,18,7\n");
    assertThatThrownBy(() -> area.read(file.toString()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContainingAll("softness", "district", "wrong.csv");
  }

  @Test
  void the_command_writes_its_files_and_leaves_no_parts() throws Exception {
    Path out = folder.resolve("out");
    String[] study = {"study", "--invented", "40", "--draws", "2", "--out", out.toString()};
    assertThat(Main.run(study)).isZero();
    try (Stream<Path> files = Files.list(out)) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("area.csv", "area.pdf");
    }
    assertThat(Main.run("study", "--out", out.toString())).isEqualTo(2);
    start();
  }
}
