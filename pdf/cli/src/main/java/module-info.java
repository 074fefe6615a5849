/** The command line. */
module io.github.brinewright.cli {
  requires static org.jspecify;
  requires io.github.brinewright.page;
  requires io.github.brinewright.pdf;
  requires io.github.brinewright.xlsx;
  requires info.picocli;

  opens io.github.brinewright.cli to
      info.picocli;
}
