/** The same programs as a module. */
module org.example.consumers {
  requires com.fasterxml.jackson.jr.ob;
  requires io.github.brinewright.pdf;
  requires java.net.http;
  requires java.sql;
  requires jdk.httpserver;
}
