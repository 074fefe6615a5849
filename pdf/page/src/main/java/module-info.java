/** A job on screen, served on this machine alone. */
module io.github.brinewright.page {
  requires static org.jspecify;
  requires transitive io.github.brinewright.pdf;
  requires com.fasterxml.jackson.jr.ob;
  requires jdk.httpserver;

  exports io.github.brinewright.page;
}
